package gylebook.telling;

import gylebook.plan.Figure;
import gylebook.plan.Plan;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// The "if you are off" list in a reader's units: what a round deviation does, and how far that
/// holds.
@AnyUnit("deviations and changes of every figure")
public final class OffBy {
  /// Said wherever the list is shown.
  public static final String CAUTION =
      "Good near the plan, and small slips add up. It fails for large ones: then plan again.";

  private OffBy() {}

  /// One deviation.
  ///
  /// @param what what is off, and which way
  /// @param by by how much
  /// @param then what changes, and by how much, each a text
  /// @param within how far it holds
  public record Line(String what, String by, List<String> then, String within) {
    /// Copies the changes.
    public Line {
      then = List.copyOf(then);
    }
  }

  /// The list of a plan.
  public static List<Line> of(Plan plan, Shown shown) {
    Map<String, List<Plan.Slope>> together = new LinkedHashMap<>();
    for (Plan.Slope slope : plan.slopes()) {
      together.computeIfAbsent(slope.what(), _ -> new ArrayList<>()).add(slope);
    }
    return together.values().stream().map(slopes -> line(plan, shown, slopes)).toList();
  }

  private static Line line(Plan plan, Shown shown, List<Plan.Slope> slopes) {
    Plan.Slope first = slopes.getFirst();
    double roundNumber = shown.round(first.offKey(), first.offNumber());
    double times = roundNumber / first.offNumber();
    List<String> then = new ArrayList<>();
    for (Plan.Slope slope : slopes) {
      Figure figure = plan.forecast().figure(slope.figureKey()).orElse(null);
      double near = figure == null ? 0 : figure.band().middle();
      String says = figure == null ? slope.figureKey() : shortly(figure);
      String change = shown.change(slope.figureKey(), near, times * slope.changeNumber());
      then.add(says + " " + change);
    }
    return new Line(
        first.what(),
        shown.span(first.offKey(), roundNumber),
        then,
        shown.span(first.offKey(), shown.roundDown(first.offKey(), first.withinNumber())));
  }

  /// The list has little room: the figures on it have shorter names here.
  private static String shortly(Figure figure) {
    return switch (figure.key()) {
      case "strengthPlato" -> "strength";
      case "fermenterL" -> "in the fermenter";
      case "attenuationFrac" -> "attenuation";
      case "alcoholByVolumeFrac" -> "alcohol";
      case "bitternessMgPerL" -> "bitterness";
      default -> figure.says();
    };
  }
}
