package gylebook.brewday;

import gylebook.estimate.Held;
import gylebook.units.AnyUnit;

/// One number of a day as it was foreseen.
///
/// @param point the point of the day it belongs to; [#DAY] for what comes out of the whole day
/// @param key what is foreseen, ending in its unit: `atSec`, `hotL`, `strengthPlato`
/// @param held middle, doubt and the range that holds nine in ten
@AnyUnit("the key names the unit")
public record Foreseen(String point, String key, Held held) {
  /// What belongs to no single point.
  public static final String DAY = "day";

  /// When a point comes.
  public static final String AT = "atSec";

  /// Whether it is the same number of the day.
  public boolean isOf(String ofPoint, String ofKey) {
    return point.equals(ofPoint) && key.equals(ofKey);
  }
}
