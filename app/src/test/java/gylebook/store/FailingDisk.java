package gylebook.store;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Set;

/// A disk that fails at the n-th thing it is asked to do, once, and works again afterwards.
///
/// Everything goes to a real file; only the n-th execution or commit throws, before or after the
/// real thing was done: both happen to real disks.
final class FailingDisk {
  private static final Set<String> COUNTED =
      Set.of("execute", "executeQuery", "executeUpdate", "commit", "prepareStatement");

  private final Path file;
  private final boolean afterwards;
  private int left;
  private boolean failed;

  FailingDisk(Path file, int failsAt, boolean afterwards) {
    this.file = file;
    this.left = failsAt;
    this.afterwards = afterwards;
  }

  boolean failed() {
    return failed;
  }

  Connection open() throws SQLException {
    return watched(Connection.class, DriverManager.getConnection("jdbc:sqlite:" + file));
  }

  private <T> T watched(Class<T> kind, T real) {
    return kind.cast(
        Proxy.newProxyInstance(
            FailingDisk.class.getClassLoader(),
            new Class<?>[] {kind},
            (_, method, arguments) -> {
              boolean now = COUNTED.contains(method.getName()) && left-- == 0;
              if (now && !afterwards) {
                failed = true;
                throw new SQLException("the disk failed (made so by the test)");
              }
              Object result;
              try {
                result = method.invoke(real, arguments);
              } catch (InvocationTargetException failure) {
                throw failure.getCause();
              }
              if (now) {
                failed = true;
                throw new SQLException("the disk failed afterwards (made so by the test)");
              }
              return switch (result) {
                case PreparedStatement prepared -> watched(PreparedStatement.class, prepared);
                case Statement statement -> watched(Statement.class, statement);
                case null, default -> result;
              };
            }));
  }
}
