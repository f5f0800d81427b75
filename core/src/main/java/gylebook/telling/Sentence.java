package gylebook.telling;

import java.util.List;
import java.util.stream.Collectors;

/// One sentence, words and values in reading order.
///
/// @param pieces in order; they bring their own spaces
public record Sentence(List<Piece> pieces) {

  /// Copies the list.
  public Sentence {
    pieces = List.copyOf(pieces);
  }

  /// The sentence as it is read.
  public String text() {
    return pieces.stream().map(Piece::text).collect(Collectors.joining());
  }
}
