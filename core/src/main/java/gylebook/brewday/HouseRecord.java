package gylebook.brewday;

import gylebook.science.ForecastScore;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/// How good the forecasts of many days were, number by number.
///
/// Ranges of one day hang together: one that runs late misses several. So whether as many held as
/// should is asked of each number alone, where each gyle counts once.
///
/// @param gyles days that were judged
/// @param byPlan as the plans had it; the plainer rival is what came on the same rig last time
/// @param last as it was foreseen last; the plainer rival is the day's own plan
@AnyUnit("each line's key names its unit")
public record HouseRecord(int gyles, List<Line> byPlan, List<Line> last) {
  private static final double CLAIMED_FRAC = 0.9;

  /// Copies the lists.
  public HouseRecord {
    byPlan = List.copyOf(byPlan);
    last = List.copyOf(last);
  }

  /// A day and the rig it was brewed on.
  ///
  /// @param rig by what the same rig is known again
  public record OnRig(String rig, DayJudged day) {}

  /// One number over many days.
  ///
  /// @param point the point it belongs to
  /// @param key its key
  /// @param ranges how many were given
  /// @param verdict how many held, and whether that is like honest ranges
  /// @param cameMean mean of what came
  /// @param score mean ranked probability score
  /// @param besideRival mean score of those alone that have a rival
  /// @param rival mean score of the plainer forecasts; empty when there was none
  public record Line(
      String point,
      String key,
      int ranges,
      ForecastScore.Held verdict,
      double cameMean,
      double score,
      OptionalDouble besideRival,
      OptionalDouble rival) {

    /// How many ranges held.
    public int held() {
      return (int) Math.round(verdict.heldFrac() * ranges);
    }

    /// How much better than the plainer forecast, 1 for perfect, 0 for no better; empty without a
    /// rival, or when the rival was right to the last digit.
    public OptionalDouble skillRatio() {
      return rival.isPresent() && besideRival.isPresent() && rival.getAsDouble() > 1e-9
          ? OptionalDouble.of(
              ForecastScore.skillRatio(besideRival.getAsDouble(), rival.getAsDouble()))
          : OptionalDouble.empty();
    }
  }

  /// One judged forecast, and the score of a plainer one.
  private record Beside(Judged judged, OptionalDouble rival) {}

  /// Over these days, in whatever order.
  public static HouseRecord of(List<OnRig> days) {
    List<OnRig> inOrder =
        days.stream().sorted(Comparator.comparing(one -> one.day().began())).toList();
    List<Beside> byPlan = new ArrayList<>();
    List<Beside> last = new ArrayList<>();
    for (int i = 0; i < inOrder.size(); i++) {
      for (DayJudged.Row number : inOrder.get(i).day().numbers()) {
        Optional<Came> before = before(inOrder.subList(0, i), inOrder.get(i).rig(), number);
        number.byPlan().ifPresent(one -> byPlan.add(new Beside(one, miss(before, one.came()))));
        number.last().ifPresent(one -> last.add(new Beside(one, score(number.byPlan()))));
      }
    }
    return new HouseRecord(inOrder.size(), lines(byPlan), lines(last));
  }

  private static OptionalDouble score(Optional<Judged> plan) {
    return plan.isPresent() ? OptionalDouble.of(plan.get().score()) : OptionalDouble.empty();
  }

  /// The score of a forecast that is sure is its error.
  private static OptionalDouble miss(Optional<Came> before, Came came) {
    return before.isPresent()
        ? OptionalDouble.of(Math.abs(before.get().value() - came.value()))
        : OptionalDouble.empty();
  }

  /// What came on the same rig last time.
  private static Optional<Came> before(List<OnRig> days, String rig, DayJudged.Row of) {
    return days.reversed().stream()
        .filter(one -> one.rig().equals(rig))
        .flatMap(one -> one.day().numbers().stream())
        .filter(one -> one.point().equals(of.point()) && one.key().equals(of.key()))
        .flatMap(one -> one.came().stream())
        .findFirst();
  }

  private static List<Line> lines(List<Beside> all) {
    // In the order of the day.
    Set<String> names = new LinkedHashSet<>();
    all.forEach(one -> names.add(name(one)));
    return names.stream()
        .map(name -> line(all.stream().filter(one -> name(one).equals(name)).toList()))
        .toList();
  }

  private static String name(Beside one) {
    return one.judged().foreseen().point() + " " + one.judged().foreseen().key();
  }

  private static Line line(List<Beside> alike) {
    Foreseen of = alike.getFirst().judged().foreseen();
    int held = (int) alike.stream().filter(one -> one.judged().held()).count();
    List<Beside> rivalled = alike.stream().filter(one -> one.rival().isPresent()).toList();
    return new Line(
        of.point(),
        of.key(),
        alike.size(),
        ForecastScore.held(held, alike.size(), CLAIMED_FRAC),
        alike.stream().mapToDouble(one -> one.judged().came().value()).average().orElseThrow(),
        alike.stream().mapToDouble(one -> one.judged().score()).average().orElseThrow(),
        rivalled.stream().mapToDouble(one -> one.judged().score()).average(),
        rivalled.stream().mapToDouble(one -> one.rival().orElseThrow()).average());
  }

  /// Ranges over all numbers.
  public static int ranges(List<Line> lines) {
    return lines.stream().mapToInt(Line::ranges).sum();
  }

  /// Ranges that held over all numbers.
  public static int held(List<Line> lines) {
    return lines.stream().mapToInt(Line::held).sum();
  }
}
