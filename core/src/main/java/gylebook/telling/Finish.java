package gylebook.telling;

import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Optional;

/// When to begin for a wanted end of the day.
///
/// The length of the day is a band: whoever begins its longer end before the hour is in time 19
/// days in 20; whoever begins its middle before is late every second day.
public final class Finish {
  private static final long SEC_PER_DAY = 86_400;

  private Finish() {}

  /// An hour of the day as typed: `18:00`, `18`, `6.30`.
  ///
  /// @return empty when it is none
  public static Optional<LocalTime> hour(String typed) {
    String[] parts = typed.strip().replace('.', ':').replace('h', ':').split(":", -1);
    try {
      int hours = Integer.parseInt(parts[0].strip());
      int minutes = parts.length < 2 || parts[1].isBlank() ? 0 : Integer.parseInt(parts[1].strip());
      return parts.length > 2 ? Optional.empty() : Optional.of(LocalTime.of(hours, minutes));
    } catch (NumberFormatException | DateTimeException _) {
      return Optional.empty();
    }
  }

  /// When to begin, in one sentence; empty when there is no plan.
  public static String says(Planned planned, LocalTime end) {
    return planned instanceof Planned.Feasible(Plan plan) ? says(plan.forecast(), end) : "";
  }

  private static String says(Forecast forecast, LocalTime end) {
    return forecast
        .figure("daySec")
        .map(Figure::band)
        .map(
            band ->
                "To be done by "
                    + end
                    + ", begin at "
                    + begin(end, band.high())
                    + " (in time 19 days in 20); beginning at "
                    + begin(end, band.middle())
                    + " is late every second day.")
        .orElse("");
  }

  /// The hour that lies so long before another, to the minute and never later.
  private static String begin(LocalTime end, double daySec) {
    long before = (long) Math.ceil(daySec / 60) * 60;
    LocalTime start = end.minusSeconds(before % SEC_PER_DAY);
    boolean dayBefore = before % SEC_PER_DAY > end.toSecondOfDay() || before >= SEC_PER_DAY;
    return start.withSecond(0) + (dayBefore ? " the day before" : "");
  }
}
