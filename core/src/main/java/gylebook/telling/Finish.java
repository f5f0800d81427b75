package gylebook.telling;

import gylebook.plan.Figure;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.recipe.Ferment;
import gylebook.recipe.Recipe;
import java.util.Optional;

/// When to begin for a wanted end: of the brew day, and of the ferment.
///
/// The length of the day is a band: whoever begins its longer end before the hour is in time 19
/// days in 20; whoever begins its middle before is late every second day.
public final class Finish {
  private static final double SEC_PER_DAY = 86_400;

  private Finish() {}

  /// When to begin for a wanted end.
  ///
  /// @param doneBy the end, in words
  /// @param inTime begin then to be in time 19 days in 20
  /// @param evenly begin then and every second day is late
  public record Begin(String doneBy, String inTime, String evenly) {
    String says() {
      return "To be done by "
          + doneBy
          + ", begin at "
          + inTime
          + " (in time 19 days in 20); beginning at "
          + evenly
          + " is late every second day.";
    }
  }

  /// By which day to brew.
  ///
  /// @param readyOn the day on which the beer is wanted
  /// @param day the last day to brew
  /// @param fermentDays so many days before; what it takes to carbonate comes on top
  public record BrewBy(String readyOn, String day, long fermentDays) {
    String says() {
      return "To be ready on "
          + readyOn
          + ", brew by "
          + day
          + ", "
          + fermentDays
          + " days before: so long is its ferment; what it takes to carbonate comes on top.";
    }
  }

  /// When to begin for the recipe's own end of the day; empty without a plan or an hour.
  public static Optional<Begin> begin(Planned planned, Recipe recipe) {
    return appointment(recipe.aim().doneBy())
        .filter(end -> end.hour().isPresent())
        .flatMap(end -> begin(planned, end));
  }

  private static Optional<Begin> begin(Planned planned, Appointment end) {
    if (!(planned instanceof Planned.Feasible(Plan plan))) {
      return Optional.empty();
    }
    return plan.forecast()
        .figure("daySec")
        .map(Figure::band)
        .map(band -> new Begin(end.words(), end.begin(band.high()), end.begin(band.middle())));
  }

  /// When to begin the brew day, in one sentence; empty when there is no plan.
  ///
  /// @param end with an hour
  public static String says(Planned planned, Appointment end) {
    return begin(planned, end).map(Begin::says).orElse("");
  }

  /// All that the recipe's own wishes come to: when to begin the day and by which day to brew.
  /// Words that are no day or hour say nothing; they may be of an older edition, or a stranger's.
  public static String says(Planned planned, Recipe recipe) {
    String day = begin(planned, recipe).map(Begin::says).orElse("");
    String ready = brewBy(recipe).map(BrewBy::says).orElse("");
    return (day + " " + ready).strip();
  }

  private static Optional<Appointment> appointment(String words) {
    return Appointment.read(words) instanceof Filled.Done<Appointment>(Appointment found)
        ? Optional.of(found)
        : Optional.empty();
  }

  /// By which day to brew, for a beer that is wanted on a day; empty without a day or a ferment.
  public static Optional<BrewBy> brewBy(Recipe recipe) {
    double courseSec =
        recipe.ferment().steps().stream()
            .map(Ferment.Step::holdSec)
            .mapToDouble(held -> held.inside())
            .sum();
    long days = (long) Math.ceil(courseSec / SEC_PER_DAY - 1e-9);
    return appointment(recipe.aim().readyBy())
        .filter(_ -> days > 0)
        .flatMap(wanted -> wanted.daysBefore(days).map(day -> new BrewBy(day(wanted), day, days)));
  }

  private static String day(Appointment wanted) {
    return new Appointment(wanted.date(), wanted.weekday(), Optional.empty()).words();
  }
}
