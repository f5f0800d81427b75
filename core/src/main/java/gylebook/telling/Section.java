package gylebook.telling;

import java.util.List;
import java.util.stream.Collectors;

/// What is said of one thing: the grist, the hops, the kettle.
///
/// @param heading what it is about
/// @param sentences in order
public record Section(String heading, List<Sentence> sentences) {

  /// Copies the list.
  public Section {
    sentences = List.copyOf(sentences);
  }

  /// The section as it is read.
  public String text() {
    return sentences.stream().map(Sentence::text).collect(Collectors.joining(" "));
  }
}
