package gylebook.simulate;

import gylebook.recipe.Hop;
import gylebook.science.HopAge;
import gylebook.units.Entered;

/// What is left of the alpha acid that a packet names.
///
/// By the variety nobody says how fast; so a middling one is assumed, with the loss of half a year
/// in the open at room temperature as the trade's lists have it. Sealed hops do better, so what is
/// left is rather more than less.
public final class AgedHop {
  /// Where hops stood that nobody says of: the room. It is the careful answer.
  public static final double USUAL_C = 20;

  private static final double KNOWN_LOSS_FRAC = 0.35;
  private static final double KNOWN_DAY = 180;
  private static final double KNOWN_C = 20;
  private static final double SEC_PER_DAY = 86_400;
  private static final double SEALED_FACTOR = 0.5;
  private static final double OPENED_FACTOR = 0.75;
  private static final double LOOSE_FACTOR = 1;
  private static final double COLDEST_C = -30;
  private static final double HOTTEST_C = 40;

  private AgedHop() {}

  /// The share of the packet's alpha acid that is left; all of it where no age is said.
  ///
  /// A store colder or hotter than the law was found for counts as its end.
  public static double leftFrac(Hop hop) {
    if (hop.agedSec().isEmpty()) {
      return 1;
    }
    double storedDay = hop.agedSec().get().inside() / SEC_PER_DAY;
    double storeC = hop.storedC().map(Entered::inside).orElse(USUAL_C);
    double heldC = Math.clamp(storeC, COLDEST_C, HOTTEST_C);
    return HopAge.leftFrac(
        KNOWN_LOSS_FRAC, KNOWN_DAY, KNOWN_C, heldC, storedDay, packingFactor(hop.wrap()));
  }

  private static double packingFactor(Hop.Wrap wrap) {
    return switch (wrap) {
      case SEALED -> SEALED_FACTOR;
      case OPENED -> OPENED_FACTOR;
      case LOOSE -> LOOSE_FACTOR;
    };
  }
}
