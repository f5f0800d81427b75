package gylebook.telling;

import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.recipe.Ferment;
import gylebook.recipe.Recipe;
import java.util.Locale;
import java.util.Optional;

/// When to begin for a wanted end: of the brew day, and of the ferment.
///
/// The length of the day is a band: whoever begins its longer end before the hour is in time 19
/// days in 20; whoever begins its middle before is late every second day.
public final class Finish {
  private static final double SEC_PER_DAY = 86_400;

  private Finish() {}

  /// When to begin the brew day, in one sentence; empty when there is no plan.
  ///
  /// @param end with an hour
  public static String says(Planned planned, Appointment end) {
    return planned instanceof Planned.Feasible(Plan plan) ? says(plan.forecast(), end) : "";
  }

  /// All that the recipe's own wishes come to: when to begin the day and by which day to brew.
  /// Words that are no day or hour say nothing; they may be of an older edition, or a stranger's.
  public static String says(Planned planned, Recipe recipe) {
    String day =
        appointment(recipe.aim().doneBy())
            .filter(end -> end.hour().isPresent())
            .map(end -> says(planned, end))
            .orElse("");
    String ready = appointment(recipe.aim().readyBy()).map(end -> brewBy(recipe, end)).orElse("");
    return (day + " " + ready).strip();
  }

  private static Optional<Appointment> appointment(String words) {
    return Appointment.read(words) instanceof Filled.Done<Appointment>(Appointment found)
        ? Optional.of(found)
        : Optional.empty();
  }

  private static String says(Forecast forecast, Appointment end) {
    return forecast
        .figure("daySec")
        .map(Figure::band)
        .map(
            band ->
                "To be done by "
                    + end.words()
                    + ", begin at "
                    + end.begin(band.high())
                    + " (in time 19 days in 20); beginning at "
                    + end.begin(band.middle())
                    + " is late every second day.")
        .orElse("");
  }

  /// By which day to brew, for a beer that is wanted on a day.
  private static String brewBy(Recipe recipe, Appointment wanted) {
    double courseSec =
        recipe.ferment().steps().stream()
            .map(Ferment.Step::holdSec)
            .mapToDouble(held -> held.inside())
            .sum();
    long days = (long) Math.ceil(courseSec / SEC_PER_DAY - 1e-9);
    String ready = "To be ready on " + day(wanted) + ", brew by ";
    return wanted
        .daysBefore(days)
        .filter(_ -> days > 0)
        .map(
            day ->
                String.format(
                    Locale.ROOT,
                    "%s%s, %d days before: so long is its ferment; what it takes to carbonate"
                        + " comes on top.",
                    ready,
                    day,
                    days))
        .orElse("");
  }

  private static String day(Appointment wanted) {
    return new Appointment(wanted.date(), wanted.weekday(), Optional.empty()).words();
  }
}
