package gylebook.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.locks.LockSupport;

/// A book whose n-th write is the end of the whole process: it kills itself with signal 9, which
/// nothing can catch, at one of three moments of that write.
///
/// A write is one transaction that lays out or inserts something. All others go to a real file.
public final class DyingDisk {
  /// Where in its last write the process dies.
  public enum Moment {
    /// Nothing of it was handed to the database yet.
    BEFORE,
    /// Everything of it was handed over, and it is not committed.
    UNCOMMITTED,
    /// It is committed; nobody was told.
    UNTOLD
  }

  private final Path file;
  private final int lastWrite;
  private final Moment moment;
  private int write;
  private boolean writing;

  private DyingDisk(Path file, int lastWrite, Moment moment) {
    this.file = file;
    this.lastWrite = lastWrite;
    this.moment = moment;
  }

  /// Opens a book.
  ///
  /// @param lastWrite the number of the write that is the end, from 0; a negative one never comes
  public static DiskJournal open(Path file, int lastWrite, Moment moment) {
    DyingDisk disk = new DyingDisk(file, lastWrite, moment);
    DiskJournal journal = new DiskJournal(file.toString(), disk::connection);
    journal.entries(Long.MAX_VALUE - 1);
    return journal;
  }

  private Connection connection() throws SQLException {
    return watched(Connection.class, DriverManager.getConnection("jdbc:sqlite:" + file));
  }

  private <T> T watched(Class<T> kind, T real) {
    return kind.cast(
        Proxy.newProxyInstance(
            DyingDisk.class.getClassLoader(),
            new Class<?>[] {kind},
            (_, method, arguments) -> {
              boolean commits = method.getName().equals("commit") && writing;
              if (!writing && begins(arguments)) {
                reached(Moment.BEFORE);
                writing = true;
              } else if (commits) {
                reached(Moment.UNCOMMITTED);
              }
              Object result;
              try {
                result = method.invoke(real, arguments);
              } catch (InvocationTargetException failure) {
                throw failure.getCause();
              }
              if (commits) {
                reached(Moment.UNTOLD);
                writing = false;
                write++;
              }
              return switch (result) {
                case PreparedStatement prepared -> watched(PreparedStatement.class, prepared);
                case Statement statement -> watched(Statement.class, statement);
                case null, default -> result;
              };
            }));
  }

  private static boolean begins(Object[] arguments) {
    return arguments != null
        && arguments.length > 0
        && arguments[0] instanceof String sql
        && (sql.startsWith("INSERT") || sql.startsWith("CREATE"));
  }

  private void reached(Moment here) {
    if (write == lastWrite && here == moment) {
      die();
    }
  }

  private static void die() {
    String self = Long.toString(ProcessHandle.current().pid());
    try {
      new ProcessBuilder("kill", "-KILL", self).start();
    } catch (IOException failure) {
      throw new UncheckedIOException("there is no kill here", failure);
    }
    while (true) {
      // Nothing goes on with the book until the signal comes.
      LockSupport.park();
    }
  }
}
