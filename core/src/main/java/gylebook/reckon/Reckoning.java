package gylebook.reckon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

    /// The results as they are read: a doubt stands behind the number it is the doubt of.
    public List<Line> lines() {
      List<Line> lines = new ArrayList<>();
      for (Amount result : results) {
        boolean doubt = result.name().equals("doubt") || result.name().endsWith("-doubt");
        if (doubt && !lines.isEmpty()) {
          Line last = lines.removeLast();
          lines.add(new Line(last.amount(), Optional.of(result)));
        } else {
          lines.add(new Line(result, Optional.empty()));
        }
      }
      return lines;
    }
  }

  /// One result, and by how much it may be off where that is reckoned too.
  record Line(Amount amount, Optional<Amount> giveOrTake) {
    /// Name and number in words: `mean: 66.1 °C, give or take 0.3 K`.
    public String words() {
      return amount.name()
          + ": "
          + amount.shown()
          + giveOrTake.map(doubt -> ", give or take " + doubt.shown()).orElse("");
    }
  }

  /// Why there is no answer, in one sentence.
  record Unanswered(String sentence) implements Reckoning {}
}
