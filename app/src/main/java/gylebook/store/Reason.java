package gylebook.store;

import java.sql.SQLException;
import java.util.Objects;
import org.sqlite.SQLiteException;

/// Why the disk said no, in words that a brewer can act on.
final class Reason {
  private static final int PRIMARY_MASK = 0xff;
  private static final int BUSY = 5;
  private static final int LOCKED = 6;
  private static final int READ_ONLY = 8;
  private static final int IO_ERROR = 10;
  private static final int CORRUPT = 11;
  private static final int FULL = 13;
  private static final int CANNOT_OPEN = 14;
  private static final int NOT_A_DATABASE = 26;

  private Reason() {}

  static String of(SQLException failure) {
    if (!(failure instanceof SQLiteException ofSqlite)) {
      return Objects.requireNonNullElse(failure.getMessage(), "no reason was given");
    }
    // The primary result codes of https://www.sqlite.org/rescode.html.
    return switch (ofSqlite.getResultCode().code & PRIMARY_MASK) {
      case BUSY, LOCKED -> "another Gylebook has it open; end that one first";
      case READ_ONLY -> "it may only be read; look at the rights of the file and its folder";
      case IO_ERROR -> "the disk reports an error; look at the disk and its cable";
      case CORRUPT, NOT_A_DATABASE -> "the file is damaged or is no Gylebook book";
      case FULL -> "the disk is full; make room";
      case CANNOT_OPEN -> "the file cannot be opened; look at its folder and its rights";
      default -> Objects.requireNonNullElse(failure.getMessage(), "no reason was given");
    };
  }
}
