package gylebook.simulate;

import gylebook.recipe.Goods;
import java.util.Locale;

/// The pH that a malt gives with distilled water, by its kind and colour.
///
/// Starting values from memory (pilsner 5.7 to 5.8, pale 5.6 to 5.75, Vienna and Munich 5.4 to 5.6,
/// crystal 4.6 to 5.2 falling with colour, roasted 4.4 to 4.8), put on straight lines over the
/// colour. Two lots of a kind differ by a tenth; readings correct it.
final class MaltSourness {
  private static final double PALEST_EBC = 3;
  private static final double PALEST_PH = 5.76;
  private static final double DARKER_PH_PER_EBC = 0.012;
  private static final double DARKEST_BASE_PH = 5.4;
  private static final double CRYSTAL_PALE_PH = 5.2;
  private static final double CRYSTAL_DARK_PH = 4.6;
  private static final double CRYSTAL_PALE_EBC = 20;
  private static final double CRYSTAL_DARK_EBC = 300;
  private static final double ROASTED_PH = 4.6;
  // Unmalted grain has made no acid yet: as the palest malt (assumed).
  private static final double UNMALTED_PH = 5.8;
  // A maltster's rule reckons acidulated malt with 2 % lactic acid: 0.222 mol/kg, 97 % of it given.
  private static final double SOURED_MEQ_PER_KG = 216;

  private MaltSourness() {}

  static double maltPh(Goods line) {
    double maltEbc = line.analysis().colourEbc();
    return switch (line.kind()) {
      case BASE_MALT -> basePh(maltEbc);
      case CARAMEL_MALT -> crystalPh(maltEbc);
      case ROASTED -> ROASTED_PH;
      default -> UNMALTED_PH;
    };
  }

  private static double basePh(double maltEbc) {
    double overEbc = Math.max(0, maltEbc - PALEST_EBC);
    return Math.max(DARKEST_BASE_PH, PALEST_PH - DARKER_PH_PER_EBC * overEbc);
  }

  private static double crystalPh(double maltEbc) {
    double wayFrac = (maltEbc - CRYSTAL_PALE_EBC) / (CRYSTAL_DARK_EBC - CRYSTAL_PALE_EBC);
    double darkFrac = Math.clamp(wayFrac, 0, 1);
    return CRYSTAL_PALE_PH + darkFrac * (CRYSTAL_DARK_PH - CRYSTAL_PALE_PH);
  }

  /// Lactic acid that soured malt brings along; 0 for every other.
  static double acidMeqPerKg(Goods line) {
    String name = line.name().toLowerCase(Locale.ROOT);
    return name.contains("acidulated") || name.contains("soured malt") ? SOURED_MEQ_PER_KG : 0;
  }
}
