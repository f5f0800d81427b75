package gylebook.interchange;

import gylebook.recipe.Boil;
import gylebook.recipe.Hop.When;
import gylebook.recipe.Stand;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/// The boil of a foreign file as a course of steps, and where an addition falls in it.
///
/// @param boil the boil itself
/// @param stands hot stands after it
/// @param steps as the file counts them, from 1
@AnyUnit("times come as typed amounts")
record BoilCourse(Boil boil, List<Stand> stands, List<Step> steps) {
  private static final double NEAR_SEC = 1;
  private static final Unit MINUTE = Unit.known(Quantity.TIME, "min");

  /// What a step of the boil is for.
  enum Kind {
    RAMP,
    BOIL,
    STAND,
    CHILL
  }

  /// One step of the file.
  ///
  /// @param kind what it is for
  /// @param holdSec how long it takes
  /// @param standNumber which stand it is, from 0; else -1
  /// @param boilAfterSec boil that follows it
  record Step(Kind kind, double holdSec, int standNumber, double boilAfterSec) {}

  /// Where an addition in the boil falls.
  ///
  /// @param left time before the end of its step, if said
  /// @param stepNumber its step from 1, if said
  When when(Optional<Entered> left, OptionalInt stepNumber, String path, Ledger ledger) {
    Optional<Step> step = step(stepNumber, path, ledger);
    if (step.isEmpty()) {
      return inBoil(left, 0, path, ledger);
    }
    Step found = step.get();
    return switch (found.kind()) {
      case RAMP -> firstWort(left, found, path, ledger);
      case BOIL -> inBoil(left, found.boilAfterSec(), path, ledger);
      case STAND -> atStand(left, found, path, ledger);
      case CHILL -> {
        ledger.says(path, "Goes in while the wort is chilled; taken as at flame-out.");
        yield new When.FlameOut();
      }
    };
  }

  private Optional<Step> step(OptionalInt stepNumber, String path, Ledger ledger) {
    if (stepNumber.isEmpty()) {
      return Optional.empty();
    }
    int number = stepNumber.getAsInt();
    if (number >= 1 && number <= steps.size()) {
      return Optional.of(steps.get(number - 1));
    }
    ledger.says(
        path,
        steps.isEmpty()
            ? "Names step " + number + ", but the boil has no steps; the whole boil is taken."
            : "Names step "
                + number
                + " of "
                + steps.size()
                + ", which does not exist; the whole boil is taken.");
    return Optional.empty();
  }

  private static When firstWort(Optional<Entered> left, Step step, String path, Ledger ledger) {
    if (left.isPresent() && left.get().inside() > step.holdSec() + NEAR_SEC) {
      ledger.says(
          path,
          left.get().asTyped()
              + " is longer than the step it is in; taken as a first-wort"
              + " addition, from the start of the ramp.");
    }
    return new When.FirstWort();
  }

  private static When atStand(Optional<Entered> left, Step step, String path, Ledger ledger) {
    if (left.isPresent() && Math.abs(left.get().inside() - step.holdSec()) > NEAR_SEC) {
      ledger.says(
          path,
          "Goes in "
              + left.get().asTyped()
              + " before the end of the stand; here an addition"
              + " goes in at its start.");
    }
    return new When.AtStand(step.standNumber());
  }

  private When inBoil(Optional<Entered> left, double laterSec, String path, Ledger ledger) {
    double holdSec = boil.holdSec().inside();
    if (left.isEmpty()) {
      ledger.says(path, "Says no time in the boil; taken as in it from the start.");
      return new When.InBoil(boil.holdSec());
    }
    double leftSec = left.get().inside() + laterSec;
    if (leftSec > holdSec + NEAR_SEC) {
      ledger.says(
          path,
          left.get().asTyped()
              + " is longer than the boil; shortened to "
              + boil.holdSec().asTyped()
              + ".");
      return new When.InBoil(boil.holdSec());
    }
    if (leftSec == 0) {
      return new When.FlameOut();
    }
    return new When.InBoil(
        laterSec > 0 ? Entered.of(MINUTE.fromInside(leftSec), MINUTE) : left.get());
  }
}
