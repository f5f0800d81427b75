package gylebook.simulate;

import gylebook.science.Require;

/// What the brewer sets on the day: the planner's answer.
///
/// @param liquorL cold liquor into the kettle
/// @param strikeC reading at which the malt goes in
/// @param mashOffsetK set points of the mash lie this much above the wanted rests
/// @param gristFactor every line of the grist times this
/// @param hopFactor every addition before the ferment times this
/// @param boilDutyFrac duty in the boil
/// @param topUpL cold liquor held back and added when the bag is out
public record Settings(
    double liquorL,
    double strikeC,
    double mashOffsetK,
    double gristFactor,
    double hopFactor,
    double boilDutyFrac,
    double topUpL) {

  /// Refuses what cannot be set.
  public Settings {
    Require.above0("The liquor", liquorL);
    Require.above0("The grist's factor", gristFactor);
    if (!(boilDutyFrac >= 0 && boilDutyFrac <= 1)) {
      throw new IllegalArgumentException(
          "The boil's duty is " + boilDutyFrac + "; it must lie between 0 and 1.");
    }
    if (!(hopFactor >= 0) || !(topUpL >= 0) || !Double.isFinite(strikeC + mashOffsetK)) {
      throw new IllegalArgumentException(
          "Hops times "
              + hopFactor
              + ", top-up "
              + topUpL
              + " L, strike "
              + strikeC
              + " C: each must be a number, and the first two not below 0.");
    }
  }

  /// The same with other liquor.
  public Settings withLiquor(double newLiquorL, double newTopUpL) {
    return new Settings(
        newLiquorL, strikeC, mashOffsetK, gristFactor, hopFactor, boilDutyFrac, newTopUpL);
  }
}
