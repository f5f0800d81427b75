package gylebook.store;

import gylebook.journal.Addition;
import gylebook.journal.Entry;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.JournalUnavailable;
import gylebook.journal.Overtaken;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.sqlite.JDBC;

/// The book in one SQLite file.
///
/// Every addition is one transaction, written ahead and flushed (WAL, synchronous FULL) before
/// [#append] returns. After a failure the file is opened anew, so that a disk that works again is
/// used again.
public final class DiskJournal implements Journal, AutoCloseable {
  /// The second condition is always true here, and without it the database does not see that the
  /// index over named entries holds all that is asked for: it would read the whole book at each
  /// write.
  static final String BY_ONCE = "SELECT * FROM entry WHERE once = ? AND once <> '' ORDER BY part";

  static final String AFTER = "SELECT * FROM entry WHERE seq > ? ORDER BY seq";
  static final String LAST_OF = "SELECT coalesce(max(seq), 0) FROM entry WHERE gyle = ?";

  private final String name;
  private final Opening opening;
  private @Nullable Connection connection;

  DiskJournal(String name, Opening opening) {
    this.name = name;
    this.opening = opening;
  }

  /// Opens a book, or begins one where there is none.
  ///
  /// @param file where it lies; its folder is made
  /// @throws JournalUnavailable when it cannot be opened, with the reason
  public static DiskJournal open(Path file) {
    try {
      Path folder = file.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      begin(file);
    } catch (IOException failure) {
      throw new JournalUnavailable(
          "The book '" + file + "' cannot be begun: " + failure.getMessage(), failure);
    }
    // The driver is asked by its name: looking for one opens every archive of the class path.
    DiskJournal journal =
        new DiskJournal(
            file.toString(), () -> JDBC.createConnection(JDBC.PREFIX + file, new Properties()));
    journal.entries(Long.MAX_VALUE - 1);
    return journal;
  }

  /// A new book is for its owner's eyes, where the file system knows such rights: logins stand in
  /// it. One that is there keeps the rights that somebody gave it.
  private static void begin(Path file) throws IOException {
    boolean rights = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    if (rights && Files.notExists(file)) {
      Files.createFile(
          file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    }
  }

  @Override
  public synchronized List<Entry> append(Addition addition) {
    try {
      Connection open = opened();
      List<Entry> before = byOnce(open, addition.once());
      if (!before.isEmpty()) {
        open.commit();
        return before;
      }
      long lastSeq = lastSeq(open, addition.gyleId());
      if (lastSeq != addition.afterSeq()) {
        open.commit();
        throw new Overtaken(addition.gyleId(), addition.afterSeq(), lastSeq);
      }
      List<Entry> added = new ArrayList<>();
      for (Event event : addition.events()) {
        added.add(insert(open, addition, event, added.size()));
      }
      open.commit();
      return List.copyOf(added);
    } catch (SQLException failure) {
      throw unavailable("written", failure);
    }
  }

  @Override
  public synchronized List<Entry> entries(long afterSeq) {
    try {
      Connection open = opened();
      try (PreparedStatement asked = open.prepareStatement(AFTER)) {
        asked.setLong(1, afterSeq);
        List<Entry> entries = read(asked);
        open.commit();
        return entries;
      }
    } catch (SQLException failure) {
      throw unavailable("read", failure);
    }
  }

  @Override
  public synchronized boolean has(String once) {
    try {
      Connection open = opened();
      boolean there = !byOnce(open, once).isEmpty();
      open.commit();
      return there;
    } catch (SQLException failure) {
      throw unavailable("read", failure);
    }
  }

  /// When the newest entry was written; the beginning of time in an empty book.
  public synchronized Instant newest() {
    try (PreparedStatement asked =
            opened().prepareStatement("SELECT noted FROM entry ORDER BY seq DESC LIMIT 1");
        ResultSet row = asked.executeQuery()) {
      Instant noted = row.next() ? Instant.parse(row.getString("noted")) : Instant.EPOCH;
      opened().commit();
      return noted;
    } catch (SQLException failure) {
      throw unavailable("read", failure);
    }
  }

  @Override
  public synchronized void close() {
    drop();
  }

  private Connection opened() throws SQLException {
    if (connection == null) {
      Connection open = opening.open();
      connection = open;
      Layout.prepare(open);
    }
    return connection;
  }

  private static List<Entry> byOnce(Connection open, String once) throws SQLException {
    if (once.isEmpty()) {
      return List.of();
    }
    try (PreparedStatement asked = open.prepareStatement(BY_ONCE)) {
      asked.setString(1, once);
      return read(asked);
    }
  }

  private static long lastSeq(Connection open, String gyleId) throws SQLException {
    try (PreparedStatement asked = open.prepareStatement(LAST_OF)) {
      asked.setString(1, gyleId);
      try (ResultSet row = asked.executeQuery()) {
        return row.next() ? row.getLong(1) : 0;
      }
    }
  }

  private static Entry insert(Connection open, Addition addition, Event event, int part)
      throws SQLException {
    EventForm form = EventForm.of(event);
    try (PreparedStatement insert =
        open.prepareStatement(
            "INSERT INTO entry (gyle, at, noted, type, version, body, once, part)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?) RETURNING seq")) {
      insert.setString(1, addition.gyleId());
      insert.setString(2, addition.at().toString());
      insert.setString(3, addition.noted().toString());
      insert.setString(4, form.type());
      insert.setInt(5, form.version());
      insert.setString(6, EventText.body(event));
      insert.setString(7, addition.once());
      insert.setInt(8, part);
      try (ResultSet row = insert.executeQuery()) {
        if (!row.next()) {
          throw new SQLException("the entry got no number");
        }
        return new Entry(row.getLong(1), addition.gyleId(), addition.at(), addition.noted(), event);
      }
    }
  }

  private static List<Entry> read(PreparedStatement asked) throws SQLException {
    List<Entry> entries = new ArrayList<>();
    try (ResultSet row = asked.executeQuery()) {
      while (row.next()) {
        entries.add(
            new Entry(
                row.getLong("seq"),
                row.getString("gyle"),
                Instant.parse(row.getString("at")),
                Instant.parse(row.getString("noted")),
                EventText.event(
                    row.getString("type"), row.getInt("version"), row.getString("body"))));
      }
    }
    return List.copyOf(entries);
  }

  private JournalUnavailable unavailable(String done, SQLException failure) {
    drop();
    return new JournalUnavailable(
        "The book '" + name + "' cannot be " + done + ": " + Reason.of(failure) + ".", failure);
  }

  /// Lets go of the file; an open transaction is rolled back with it.
  private void drop() {
    Connection held = connection;
    connection = null;
    if (held == null) {
      return;
    }
    try {
      held.close();
    } catch (SQLException _) {
      // It is given up anyway; what was committed is on the disk.
    }
  }
}
