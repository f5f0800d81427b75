package gylebook.store;

import java.sql.Connection;
import java.sql.SQLException;

/// Opens the file; a test hands in one that fails.
@FunctionalInterface
interface Opening {
  Connection open() throws SQLException;
}
