package gylebook.telling;

import gylebook.estimate.Finding;
import gylebook.estimate.Held;
import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/// What a finished day says of the rig, in the words of the rig's own page.
@AnyUnit("shows amounts of every quantity")
public final class LearntWords {
  private static final double PERCENT = 100;
  private static final int FIGURES = 3;

  private LearntWords() {}

  /// One number that the day said something of.
  ///
  /// @param name what it is
  /// @param before what it was held to be before the day
  /// @param after what would be carried on
  /// @param left how much of the doubt is left
  public record Line(String name, Value before, Value after, String left) {}

  /// A value with its range.
  ///
  /// @param middle the value
  /// @param range nine times in ten between these
  public record Value(String middle, String range) {}

  /// What the day said something of, the most telling first.
  public static List<Line> seen(List<Finding> findings, Rig rig, ReadingUnits units) {
    Map<String, String> names = names(rig, units);
    return findings.stream()
        .filter(Finding::seen)
        .sorted(Comparator.comparingDouble(Finding::leftRatio))
        .map(
            each ->
                new Line(
                    names.getOrDefault(each.path(), each.path()),
                    value(each.path(), each.before(), units),
                    value(each.path(), each.after(), units),
                    "%d %%".formatted(Math.round(PERCENT * each.leftRatio()))))
        .toList();
  }

  /// What the day could not tell.
  public static List<String> unseen(List<Finding> findings, Rig rig, ReadingUnits units) {
    Map<String, String> names = names(rig, units);
    return findings.stream()
        .filter(each -> !each.seen() && names.containsKey(each.path()))
        .map(each -> names.getOrDefault(each.path(), each.path()))
        .toList();
  }

  /// The rig's page names every number of it; a number that has no place there has no name.
  private static Map<String, String> names(Rig rig, ReadingUnits units) {
    return RigWords.of(rig, units).stream()
        .flatMap(section -> section.sentences().stream())
        .flatMap(sentence -> sentence.pieces().stream())
        .filter(Piece.Slot.class::isInstance)
        .map(Piece.Slot.class::cast)
        .collect(Collectors.toMap(Piece.Slot::slot, Piece.Slot::hint, (one, _) -> one));
  }

  private static Value value(String path, Parameter parameter, ReadingUnits units) {
    String name = path.substring(path.lastIndexOf('.') + 1);
    String low = shown(name, parameter.at(-Held.NINE_IN_TEN), units);
    String high = shown(name, parameter.at(Held.NINE_IN_TEN), units);
    int space = low.indexOf(' ');
    boolean alike = space > 0 && high.endsWith(low.substring(space));
    return new Value(
        shown(name, parameter.value(), units),
        (alike ? low.substring(0, space) : low) + " to " + high);
  }

  /// To three figures: the doubt says more than a fourth. A share beyond a whole is none.
  private static String shown(String name, double value, ReadingUnits units) {
    double held = name.endsWith("Frac") ? Math.clamp(value, 0, 1) : value;
    double rounded = new BigDecimal(held).round(new MathContext(FIGURES)).doubleValue();
    return Amounts.shown(name, rounded, units);
  }
}
