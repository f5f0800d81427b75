package gylebook.interchange;

import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.units.AnyUnit;
import gylebook.units.ExtractScale;
import java.util.Locale;
import java.util.OptionalDouble;

/// What both standards leave open about a line of the grist, and how it is settled here.
@AnyUnit("yields stand as the files write them")
final class GristRules {
  /// Litres in a US gallon over kilograms in a pound: both exact definitions.
  private static final double L_PER_KG_OF_A_POUND_IN_A_GALLON = 3.785411784 / 0.45359237;

  /// Density of water at 20 °C, kg/L: specific gravity 20/20 times this is the density.
  private static final double WATER_KG_PER_L = 0.99820;

  /// An assumption of ours: kilned malt is paler than this, caramel malt paler than the other.
  private static final double BASE_EBC = 25;

  private static final double CARAMEL_EBC = 500;

  private GristRules() {}

  /// The kind of a grain that the file calls nothing but grain: by its name, else by its colour.
  static Goods.Kind grain(String name, double colourEbc) {
    String words = name.toLowerCase(Locale.ROOT);
    if (words.contains("flake") || words.contains("torrified")) {
      return Goods.Kind.FLAKED;
    }
    if (words.contains("crystal") || words.contains("caramel")) {
      return Goods.Kind.CARAMEL_MALT;
    }
    if (words.contains("roast") || words.contains("black") || words.contains("chocolate")) {
      return Goods.Kind.ROASTED;
    }
    if (colourEbc <= BASE_EBC) {
      return Goods.Kind.BASE_MALT;
    }
    return colourEbc <= CARAMEL_EBC ? Goods.Kind.CARAMEL_MALT : Goods.Kind.ROASTED;
  }

  /// Extract as it comes, from the gravity of a pound of it in a US gallon of water.
  ///
  /// The gallon is the wort's, so extract = gravity x water's density x Plato x gallon / pound.
  static double extractFrac(double potentialSg) {
    double platoFrac = ExtractScale.platoFromSg(potentialSg) / 100;
    return potentialSg * WATER_KG_PER_L * platoFrac * L_PER_KG_OF_A_POUND_IN_A_GALLON;
  }

  /// The gravity that extract gives, by halving: the inverse of the above.
  static double potentialSg(double extractFrac) {
    double low = 1;
    double high = 1.2;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (extractFrac(middle) < extractFrac) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /// Extract on dry matter of a yield that counts the goods as they come.
  static double dryFrac(double asItComesFrac, double moistureFrac) {
    return Math.min(1, asItComesFrac / Math.max(0.01, 1 - moistureFrac));
  }

  /// The figures of a lot; where the file is silent the usual ones of its kind stand in.
  ///
  /// @param kind what it is
  /// @param extractFrac on dry matter, if the file says one
  /// @param moistureFrac if the file says one
  /// @param colourEbc colour
  /// @param doubtFrac one standard deviation of the extract
  static Analysis analysis(
      Goods.Kind kind,
      OptionalDouble extractFrac,
      OptionalDouble moistureFrac,
      double colourEbc,
      double doubtFrac) {
    Analysis usual = kind.usual();
    return new Analysis(
        Math.clamp(moistureFrac.orElse(usual.moistureFrac()), 0, 1),
        Math.clamp(extractFrac.orElse(usual.extractFrac()), 0, 1),
        extractFrac.isPresent() ? doubtFrac : usual.extractDoubtFrac(),
        colourEbc,
        0,
        extractFrac.isPresent());
  }
}
