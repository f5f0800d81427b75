package gylebook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.journal.Addition;
import gylebook.journal.Entry;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.JournalUnavailable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DiskJournalTest extends JournalContract {
  @TempDir Path folder;
  private DiskJournal journal;
  private Path file;

  @BeforeEach
  void open() {
    file = folder.resolve("deep").resolve("book.sqlite");
    journal = DiskJournal.open(file);
  }

  @AfterEach
  void close() {
    journal.close();
  }

  @Override
  Journal journal() {
    return journal;
  }

  private static Addition three(long afterSeq, String name) {
    return new Addition(
        "a",
        afterSeq,
        name,
        AT,
        NOTED,
        List.of(
            new Event.GyleOpened(name, false),
            new Event.RecipeKept("{\"of\":\"" + name + "\"}", name),
            new Event.UnitsChosen("", "metric")));
  }

  @Test
  void aNewBookIsForItsOwnersEyesAndAnOldOneKeepsTheRightsItWasGiven() throws IOException {
    journal.append(three(0, "one"));
    for (String beside : List.of("", "-wal")) {
      Path one = file.resolveSibling(file.getFileName() + beside);
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(one)))
          .as(beside)
          .isEqualTo("rw-------");
    }
    journal.close();
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    journal = DiskJournal.open(file);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
  }

  /// What is asked at every write must not take longer the more a book holds.
  @ParameterizedTest
  @ValueSource(strings = {DiskJournal.BY_ONCE, DiskJournal.AFTER, DiskJournal.LAST_OF})
  void nothingThatAWriteAsksReadsTheWholeBook(String asked) throws SQLException {
    journal.append(three(0, "one"));
    journal.close();
    try (Connection open = DriverManager.getConnection("jdbc:sqlite:" + file);
        PreparedStatement plan = open.prepareStatement("EXPLAIN QUERY PLAN " + asked)) {
      plan.setString(1, "1");
      StringBuilder steps = new StringBuilder();
      try (ResultSet row = plan.executeQuery()) {
        while (row.next()) {
          steps.append(row.getString("detail")).append('\n');
        }
      }
      assertThat(steps.toString()).contains("SEARCH entry USING").doesNotContain("SCAN");
    }
  }

  @Test
  void aBookThatIsClosedAndOpenedHoldsTheSame() {
    List<Entry> added = journal.append(three(0, "first"));
    journal.close();
    journal = DiskJournal.open(file);

    assertThat(journal.entries(0)).isEqualTo(added);
  }

  @Test
  void theFileItselfRefusesToChangeOrLoseAnEntry() throws SQLException {
    journal.append(three(0, "first"));
    journal.close();

    try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = other.createStatement()) {
      assertThatThrownBy(() -> statement.execute("UPDATE entry SET body = '{}'"))
          .hasMessageContaining("never changed");
      assertThatThrownBy(() -> statement.execute("DELETE FROM entry WHERE seq = 1"))
          .hasMessageContaining("never removed");
    }
  }

  @Test
  void aSecondProgramOnTheSameBookIsTurnedAway() {
    journal.append(three(0, "first"));

    assertThatThrownBy(() -> DiskJournal.open(file))
        .isInstanceOf(JournalUnavailable.class)
        .hasMessageContaining("another Gylebook");
  }

  @Test
  void aFileThatIsNoBookIsLeftAlone() throws IOException, SQLException {
    Path text = Files.writeString(folder.resolve("letter.txt"), "Dear aunt, ".repeat(500));
    assertThatThrownBy(() -> DiskJournal.open(text)).isInstanceOf(JournalUnavailable.class);
    assertThat(text).hasContent("Dear aunt, ".repeat(500));

    Path foreign = folder.resolve("stamps.sqlite");
    try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + foreign);
        Statement statement = other.createStatement()) {
      statement.execute("CREATE TABLE stamp (name TEXT)");
    }
    assertThatThrownBy(() -> DiskJournal.open(foreign))
        .isInstanceOf(JournalUnavailable.class)
        .hasMessageContaining("not a Gylebook book");
  }

  @Test
  void aFullDiskAddsNothingAndSaysSo() throws SQLException {
    DiskJournal full =
        new DiskJournal(
            "small",
            () -> {
              Connection open = DriverManager.getConnection("jdbc:sqlite:" + folder + "/small");
              try (Statement statement = open.createStatement()) {
                statement.execute("PRAGMA max_page_count = 20");
              }
              return open;
            });
    try (full) {
      List<Entry> kept = new ArrayList<>(full.append(three(0, "first")));
      Event big = new Event.RecipeKept("x".repeat(400_000), "too big");

      assertThatThrownBy(() -> full.append(addition("a", 3, big)))
          .isInstanceOf(JournalUnavailable.class)
          .hasMessageContaining("full");
      assertThat(full.entries(0)).isEqualTo(kept);
      kept.addAll(full.append(addition("a", 3, new Event.Undone(2))));
      assertThat(full.entries(0)).isEqualTo(kept);
    }
  }

  /// Every n, failing before and after the act; then the sender tries again as the Clerk does.
  @Test
  void aDiskThatFailsAtTheNthActLosesNothingAndDoublesNothing() {
    for (boolean afterwards : List.of(false, true)) {
      int n = 0;
      boolean reached = true;
      while (reached) {
        Path book = folder.resolve("fails-" + afterwards + "-" + n + ".sqlite");
        var disk = new FailingDisk(book, n, afterwards);
        try (DiskJournal failing = new DiskJournal("failing", disk::open)) {
          List<Entry> acknowledged = new ArrayList<>();
          for (int i = 0; i < 3; i++) {
            acknowledged.addAll(insisted(failing, three(3L * i, "day-" + i)));
          }
          assertThat(acknowledged).as("fails at %d, %s", n, afterwards).hasSize(9);
        }
        try (DiskJournal again = DiskJournal.open(book)) {
          assertThat(again.entries(0)).extracting(Entry::seq).doesNotHaveDuplicates().hasSize(9);
        }
        reached = disk.failed();
        n++;
      }
      assertThat(n).as("acts of the disk").isGreaterThan(20);
    }
  }

  private static List<Entry> insisted(DiskJournal journal, Addition addition) {
    try {
      return journal.append(addition);
    } catch (JournalUnavailable _) {
      return journal.append(addition);
    }
  }

  /// A power cut leaves the log that is written ahead cut off anywhere: what is read is a whole
  /// number of additions, from the first on.
  @Test
  void aLogCutOffAnywhereHoldsWholeAdditionsOnly() throws IOException {
    for (int i = 0; i < 6; i++) {
      journal.append(three(3L * i, "day-" + i));
    }
    Path log = file.resolveSibling("book.sqlite-wal");
    byte[] whole = Files.readAllBytes(log);
    int most = 0;
    for (int length = 0; length <= whole.length; length += 1031) {
      Path cut = folder.resolve("cut.sqlite");
      Files.copy(file, cut, StandardCopyOption.REPLACE_EXISTING);
      Files.deleteIfExists(folder.resolve("cut.sqlite-shm"));
      byte[] part = java.util.Arrays.copyOf(whole, length);
      Files.write(folder.resolve("cut.sqlite-wal"), part);
      try (DiskJournal after = DiskJournal.open(cut)) {
        int count = after.entries(0).size();
        assertThat(count % 3).as("log cut at byte %d", length).isZero();
        assertThat(count).as("log cut at byte %d", length).isGreaterThanOrEqualTo(most);
        most = count;
      }
    }
    assertThat(most).isGreaterThanOrEqualTo(15);
  }
}
