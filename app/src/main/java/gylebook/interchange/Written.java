package gylebook.interchange;

import java.util.List;

/// A recipe in the form of the open JSON standard.
///
/// @param json the file's text
/// @param lost what the standard has no place for, to be shown before the file is given away
public record Written(String json, List<Remark> lost) {
  /// Copies the remarks.
  public Written {
    lost = List.copyOf(lost);
  }
}
