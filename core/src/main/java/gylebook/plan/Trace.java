package gylebook.plan;

import gylebook.units.AnyUnit;
import java.util.List;

/// One line of the day chart: a band through the day and a few single days.
///
/// @param key what it shows, ending in its unit: `wortC`
/// @param low 5 % at each point of the time grid; NaN where no day has a value
/// @param middle the median
/// @param high 95 %
/// @param days a few single days
@AnyUnit("the key names the unit")
@SuppressWarnings("ArrayRecordComponent") // hundreds of numbers a line; nobody compares traces
public record Trace(String key, double[] low, double[] middle, double[] high, List<double[]> days) {

  /// Copies the list of days.
  public Trace {
    days = List.copyOf(days);
  }
}
