package gylebook.interchange;

import gylebook.interchange.BoilCourse.Kind;
import gylebook.interchange.BoilCourse.Step;
import gylebook.recipe.Boil;
import gylebook.recipe.Stand;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// The boil out of the open JSON standard: ramp, boil, hot stands and chilling told apart by their
/// temperatures, for the standard has no other words for them.
@AnyUnit("steps of a file as read")
final class JsonBoil {
  private static final Unit MINUTE = Unit.known(Quantity.TIME, "min");

  /// Assumptions of ours: from here up a step boils, and below here it is chilled, not stood.
  private static final double BOILING_C = 95;

  static final double CHILLED_C = 45;
  private static final double USUAL_MIN = 60;

  private final double longestSec;
  private final List<Stand> stands = new ArrayList<>();

  /// @param longestSec the longest time that an addition spends in the boil
  JsonBoil(double longestSec) {
    this.longestSec = longestSec;
  }

  private record Raw(JsonThing thing, Kind kind, Entered holdSec, Optional<Entered> endC) {}

  BoilCourse read(JsonThing recipe) {
    Optional<JsonThing> boil = recipe.thing("boil");
    Entered holdSec =
        boil.flatMap(b -> b.amount("boil_time", Quantity.TIME)).orElseGet(() -> assumed(recipe));
    List<Raw> raws = boil.map(b -> raws(b, holdSec.inside())).orElse(List.of());
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < raws.size(); i++) {
      steps.add(step(raws, i));
    }
    return new BoilCourse(
        new Boil(holdSec, Optional.empty(), Optional.empty()),
        List.copyOf(stands),
        List.copyOf(steps));
  }

  private Entered assumed(JsonThing recipe) {
    double minutes = Math.max(USUAL_MIN, MINUTE.fromInside(longestSec));
    Entered hold = Entered.of(minutes, MINUTE);
    recipe.says(
        "boil", "Says no length; " + hold.asTyped() + " is assumed, as is common practice.");
    return hold;
  }

  private static List<Raw> raws(JsonThing boil, double holdSec) {
    List<Raw> raws = new ArrayList<>();
    double boiledSec = 0;
    double nowC = Double.NaN;
    boolean begun = false;
    boil.noted("name");
    for (JsonThing step : boil.things("boil_steps")) {
      step.noted("name");
      Optional<Entered> startC = step.amount("start_temperature", Quantity.TEMPERATURE);
      Optional<Entered> endC = step.amount("end_temperature", Quantity.TEMPERATURE);
      double fromC = startC.map(Entered::inside).orElse(nowC);
      double toC = endC.map(Entered::inside).orElse(fromC);
      Kind kind = kind(fromC, toC, begun, boiledSec >= holdSec && holdSec > 0);
      Optional<Entered> ramp = step.amount("ramp_time", Quantity.TIME);
      Entered hold =
          step.amount("step_time", Quantity.TIME)
              .or(() -> ramp)
              .orElseGet(() -> Entered.of(0, MINUTE));
      raws.add(new Raw(step, kind, hold, endC.or(() -> startC)));
      boiledSec += kind == Kind.BOIL ? hold.inside() : 0;
      begun |= kind == Kind.BOIL;
      nowC = toC;
    }
    return raws;
  }

  private static Kind kind(double fromC, double toC, boolean begun, boolean boiled) {
    if (toC < CHILLED_C) {
      return Kind.CHILL;
    }
    if (!begun && fromC < BOILING_C && toC > fromC) {
      return Kind.RAMP;
    }
    if (toC < BOILING_C || toC < fromC || boiled) {
      return Kind.STAND;
    }
    return Kind.BOIL;
  }

  private Step step(List<Raw> raws, int at) {
    Raw raw = raws.get(at);
    double laterSec =
        raws.subList(at + 1, raws.size()).stream()
            .filter(later -> later.kind() == Kind.BOIL)
            .mapToDouble(later -> later.holdSec().inside())
            .sum();
    int standNumber = -1;
    if (raw.kind() == Kind.STAND) {
      standNumber = stands.size();
      Entered targetC =
          raw.endC().orElseGet(() -> Entered.of(100, Unit.known(Quantity.TEMPERATURE, "°C")));
      stands.add(new Stand(targetC, raw.holdSec()));
    }
    if (raw.kind() == Kind.CHILL) {
      raw.thing().says("", "Is chilling; how long it takes is worked out from the chiller here.");
    }
    return new Step(raw.kind(), raw.holdSec().inside(), standNumber, laterSec);
  }
}
