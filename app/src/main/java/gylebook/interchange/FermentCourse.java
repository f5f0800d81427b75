package gylebook.interchange;

import gylebook.recipe.Ferment;
import gylebook.recipe.Hop.When;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/// The ferment of a foreign file, and where a dry addition falls in it.
///
/// @param ferment its steps
@AnyUnit("times come as typed amounts")
record FermentCourse(Ferment ferment) {
  private static final Unit DAY = Unit.known(Quantity.TIME, "d");

  /// Where an addition in the fermenter falls.
  ///
  /// @param after since the start of its step, if said
  /// @param hold how long it stays in, if said
  /// @param stepNumber its step from 1, if said
  When when(
      Optional<Entered> after,
      Optional<Entered> hold,
      OptionalInt stepNumber,
      String path,
      Ledger ledger) {
    double startSec = startSec(stepNumber, path, ledger);
    double endSec = endSec();
    Entered afterSec =
        after.isPresent()
            ? later(after.get(), startSec)
            : days(Math.max(startSec, endSec - hold.map(Entered::inside).orElse(0.0)));
    if (after.isEmpty()) {
      ledger.says(
          path,
          "Does not say when it goes in; taken as "
              + afterSec.asTyped()
              + " after pitching"
              + (hold.isPresent() ? ", so that it comes out as the ferment ends." : "."));
    }
    Entered holdSec = hold.orElseGet(() -> days(Math.max(0, endSec - afterSec.inside())));
    if (hold.isEmpty()) {
      ledger.says(
          path,
          "Does not say how long it stays in; taken as " + holdSec.asTyped() + ", to the end.");
    }
    return new When.Dry(afterSec, holdSec);
  }

  /// When the ferment ends, if its steps say so.
  double endSec() {
    return ferment.steps().stream().mapToDouble(step -> step.holdSec().inside()).sum();
  }

  private double startSec(OptionalInt stepNumber, String path, Ledger ledger) {
    if (stepNumber.isEmpty()) {
      return 0;
    }
    int number = stepNumber.getAsInt();
    List<Ferment.Step> steps = ferment.steps();
    if (number < 1 || number > steps.size()) {
      ledger.says(
          path,
          "Names step "
              + number
              + " of a ferment with "
              + steps.size()
              + "; counted from pitching instead.");
      return 0;
    }
    return steps.subList(0, number - 1).stream().mapToDouble(step -> step.holdSec().inside()).sum();
  }

  private static Entered later(Entered after, double startSec) {
    return startSec > 0 ? days(after.inside() + startSec) : after;
  }

  private static Entered days(double sec) {
    return Entered.of(DAY.fromInside(sec), DAY);
  }
}
