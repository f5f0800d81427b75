package gylebook.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/// The one table, and what the file promises about it.
///
/// The triggers make the file itself refuse to change or lose an entry, whatever program opens it.
final class Layout {
  /// Bytes 68 to 71 of the file's head: the letters Gyle, so that another database is told apart.
  private static final int APPLICATION = 0x47796c65;

  private static final int LAYOUT = 1;

  private static final List<String> FIRST =
      List.of(
          """
          CREATE TABLE entry (
            seq INTEGER PRIMARY KEY AUTOINCREMENT,
            gyle TEXT NOT NULL,
            at TEXT NOT NULL,
            noted TEXT NOT NULL,
            type TEXT NOT NULL,
            version INTEGER NOT NULL,
            body TEXT NOT NULL,
            once TEXT NOT NULL,
            part INTEGER NOT NULL
          ) STRICT""",
          "CREATE INDEX entry_gyle ON entry (gyle, seq)",
          "CREATE UNIQUE INDEX entry_once ON entry (once, part) WHERE once <> ''",
          "CREATE TRIGGER entry_stays BEFORE UPDATE ON entry"
              + " BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END",
          "CREATE TRIGGER entry_kept BEFORE DELETE ON entry"
              + " BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END",
          "PRAGMA application_id = " + APPLICATION,
          "PRAGMA user_version = " + LAYOUT);

  private Layout() {}

  /// Sets what holds for each connection, and lays the table out in an empty file.
  static void prepare(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      // One program a book: a second one must hear so at once, not when it writes.
      statement.execute("PRAGMA locking_mode = EXCLUSIVE");
      statement.execute("PRAGMA journal_mode = WAL");
      statement.execute("PRAGMA synchronous = FULL");
      statement.execute("PRAGMA trusted_schema = OFF");
    }
    connection.setAutoCommit(false);
    try (Statement statement = connection.createStatement()) {
      int layout = number(statement, "PRAGMA user_version");
      if (layout == 0 && number(statement, "SELECT count(*) FROM sqlite_schema") == 0) {
        for (String step : FIRST) {
          statement.execute(step);
        }
      } else if (number(statement, "PRAGMA application_id") != APPLICATION) {
        throw new SQLException("it is not a Gylebook book");
      } else if (layout > LAYOUT) {
        throw new SQLException("it was written by a newer Gylebook");
      }
    }
    connection.commit();
  }

  private static int number(Statement statement, String question) throws SQLException {
    try (ResultSet row = statement.executeQuery(question)) {
      return row.next() ? row.getInt(1) : 0;
    }
  }
}
