package gylebook.telling;

import java.util.List;

/// A piece of a sentence that is also a form: words, or a value that can be changed where it
/// stands.
public sealed interface Piece {

  /// What is read, in the reader's units.
  String text();

  /// Words that cannot be changed.
  ///
  /// @param words as read
  record Words(String words) implements Piece {
    @Override
    public String text() {
      return words;
    }
  }

  /// A value in its place. Filling it with `shown` or with `typed` changes nothing.
  ///
  /// @param slot its name, by which it is filled: `aim.length`
  /// @param shown in the reader's units
  /// @param typed as somebody typed it; the same as `shown` when nobody did
  /// @param kind `amount`, `choice`, `words` or `date`
  /// @param choices what a choice chooses from; empty otherwise
  /// @param hint what it is, for a reader who hears the page: `length of the brew`
  record Slot(
      String slot, String shown, String typed, String kind, List<String> choices, String hint)
      implements Piece {
    /// Copies the list.
    public Slot {
      choices = List.copyOf(choices);
    }

    @Override
    public String text() {
      return shown;
    }
  }
}
