package gylebook.plan;

import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.units.AnyUnit;

/// One point of the day.
///
/// @param key its name in code and files: `doughIn`
/// @param says in a brewer's words: "malt in"
/// @param atSec after the start
/// @param wortC in the kettle
/// @param grainC in the grain; the kettle's when the bag is out
/// @param hotL in the kettle as it stands, goods and all
/// @param coldL the liquid alone, at 20 C
/// @param wortPlato strength
/// @param hands how many are needed here: 0, 1 or 2
/// @param doing what they do; empty for none
@AnyUnit("bands of several quantities; each component names its unit")
public record Milestone(
    String key,
    String says,
    Band atSec,
    Band wortC,
    Band grainC,
    Band hotL,
    Band coldL,
    Band wortPlato,
    int hands,
    String doing) {

  /// A point of a day in a brewer's words, where no forecast of the day is at hand.
  public static String says(String key, Recipe recipe, Rig rig) {
    return Naming.of(key, recipe, rig).says();
  }
}
