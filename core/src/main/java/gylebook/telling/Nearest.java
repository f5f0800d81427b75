package gylebook.telling;

import gylebook.plan.Figure;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.recipe.Rest;
import gylebook.units.ReadingUnits;
import java.util.Optional;

/// What can be brewed where what is wanted cannot, in one sentence.
public final class Nearest {
  private Nearest() {}

  /// The sentence; empty where nothing near can be brewed.
  public static Optional<String> says(Planned.Impossible impossible, ReadingUnits units) {
    Shown shown = new Shown(units);
    return impossible
        .nearest()
        .flatMap(plan -> litres(plan, shown).map(said -> said + rests(impossible, plan, shown)));
  }

  private static Optional<String> litres(Plan plan, Shown shown) {
    return plan.forecast()
        .figure("fermenterL")
        .map(Figure::band)
        .map(
            band ->
                "The nearest that can be brewed: "
                    + shown.value("fermenterL", band.middle())
                    + " into the fermenter");
  }

  private static String rests(Planned.Impossible impossible, Plan plan, Shown shown) {
    double hottestC =
        plan.recipe().rests().stream()
            .map(Rest::targetC)
            .mapToDouble(target -> target.inside())
            .max()
            .orElse(Double.NaN);
    return impossible.limit().equals("boilsTooCool")
        ? ", no rest above " + shown.value("restC", hottestC) + "."
        : ".";
  }
}
