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

    /// The results as they are read: a doubt stands behind the number it is the doubt of, and each
    /// has a name of its own. One alone has the name of what was asked.
    public List<Line> lines(Calculation asked) {
      List<Line> lines = new ArrayList<>();
      for (Amount result : results) {
        boolean doubt = result.name().equals("doubt") || result.name().endsWith("-doubt");
        if (doubt && !lines.isEmpty()) {
          Line last = lines.removeLast();
          lines.add(new Line(last.name(), last.amount(), Optional.of(result)));
        } else {
          String name = results.size() == 1 ? alone(asked, result) : Labels.apart(result, results);
          lines.add(new Line(name, result, Optional.empty()));
        }
      }
      return lines;
    }

    private static String alone(Calculation asked, Amount result) {
      return Labels.alone(asked.name(), result.name());
    }
  }

  /// One result by the name it is told by, and by how much it may be off where that is reckoned
  /// too.
  record Line(String name, Amount amount, Optional<Amount> giveOrTake) {
    /// Name and number in words: `mean: 66.1 °C, give or take 0.3 K`.
    public String words() {
      return name
          + ": "
          + amount.shown()
          + giveOrTake.map(doubt -> ", give or take " + doubt.shown()).orElse("");
    }
  }

  /// Why there is no answer, in one sentence.
  record Unanswered(String sentence) implements Reckoning {}
}
