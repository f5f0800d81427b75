package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;

/// A day's actions with the changes that were decided on.
@AnyUnit("actions of every quantity")
final class Course {
  private Course() {}

  /// The planned actions with changes; what is put in comes right after its milestone, so the
  /// places of what comes before it stay.
  static List<Action> changed(
      List<Action> planned, List<Change> changes, Member member, Lots lots) {
    if (changes.isEmpty()) {
      return planned;
    }
    List<Action> course = new ArrayList<>(planned);
    for (Change change : changes) {
      switch (change) {
        case Change.Lasts lasts ->
            course.replaceAll(a -> a instanceof Leg leg ? lasting(leg, lasts) : a);
        case Change.HopsTimes hops ->
            course.replaceAll(a -> a instanceof Action.AddHops add ? times(add, hops) : a);
        case Change.Deed deed -> course.add(place(course, deed.after()), of(deed, member, lots));
      }
    }
    return course;
  }

  private static Leg lasting(Leg leg, Change.Lasts lasts) {
    if (!leg.key().equals(lasts.key()) || !(leg.until() instanceof Leg.Until.After after)) {
      return leg;
    }
    double holdSec = Math.max(0, after.holdSec() + lasts.bySec());
    return leg.until(new Leg.Until.After(holdSec), Math.max(leg.mostSec(), holdSec));
  }

  private static Action times(Action.AddHops add, Change.HopsTimes hops) {
    return new Action.AddHops(
        add.hopNumber(), add.alphaMg() * hops.factor(), add.wortKg() * hops.factor());
  }

  private static int place(List<Action> course, String after) {
    for (int i = 0; i < course.size(); i++) {
      if (course.get(i) instanceof Leg leg && leg.key().equals(after)) {
        return i + 1;
      }
    }
    throw new IllegalArgumentException("The day has no milestone '" + after + "'.");
  }

  /// The deed in the numbers of one member: the brewer's jug errs, the tap is as cold as it is.
  static Action.Deed of(Change.Deed deed, Member member, Lots lots) {
    return switch (deed) {
      case Change.Pours pours -> new Action.TopUp(waterKg(pours.liquorL(), lots), member.tapC);
      case Change.Dilutes dilutes ->
          new Action.Dilute(waterKg(dilutes.liquorL(), lots), member.tapC);
      case Change.Sweetens sweetens -> {
        double waterKg = sweetens.goodsKg() * sweetens.moistureFrac();
        yield new Action.AddExtract(
            sweetens.goodsKg() - waterKg, waterKg, sweetens.fermentableFrac());
      }
      case Change.TakesOut takes -> new Action.TakeOut(takes.wortL());
    };
  }

  private static double waterKg(double liquorL, Lots lots) {
    return liquorL * Flows.LIQUOR_KG_PER_L * lots.liquorFactor;
  }
}
