package gylebook.reckon;

import java.util.List;

/// What came of asking for one calculation.
public sealed interface Reckoning {
  /// The numbers it was reckoned from, the results, further words (yes or no, names), what to be
  /// careful about, and the sources.
  record Answer(
      List<Amount> inputs,
      List<Amount> results,
      List<String> remarks,
      List<String> cautions,
      List<Origin> sources)
      implements Reckoning {
    /// Keeps the lists from being changed.
    public Answer {
      inputs = List.copyOf(inputs);
      results = List.copyOf(results);
      remarks = List.copyOf(remarks);
      cautions = List.copyOf(cautions);
      sources = List.copyOf(sources);
    }
  }

  /// Why there is no answer, in one sentence.
  record Unanswered(String sentence) implements Reckoning {}
}
