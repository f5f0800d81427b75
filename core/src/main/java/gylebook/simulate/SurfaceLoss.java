package gylebook.simulate;

import gylebook.science.Evaporation;
import gylebook.science.LatentHeat;
import gylebook.science.Saturation;
import gylebook.units.AnyUnit;

/// Steam and its heat from this member's open surface, tabulated over temperature.
///
/// The formula for quiet air costs several exponentials; a table 1 K apart costs nothing and is
/// within 3e-4 of it.
final class SurfaceLoss {
  private static final int LEAST_C = 0;
  private static final int COUNT = 109;
  private static final double SPACING_K = 1;
  static final RateTable SATURATION_KPA = new RateTable(0.1, SurfaceLoss::saturationKpa);
  private static final RateTable LATENT_J_PER_KG = new RateTable(1, SurfaceLoss::latentJPerKg);

  private final double[] steamKgPerSec = new double[COUNT];
  private final double[] steamW = new double[COUNT];

  private static double saturationKpa(double waterC) {
    return Saturation.saturationKpa(Math.max(0.01, waterC));
  }

  private static double latentJPerKg(double waterC) {
    return LatentHeat.latentJPerKg(Math.max(0.01, waterC));
  }

  void reckon(Member member) {
    double roomVapourKpa = member.roomHumidityFrac * SATURATION_KPA.at(member.roomC);
    // The formula has a pole at the boil; above a kelvin below it the boil itself decides.
    double mostC = member.waterBoilsC - 1;
    for (int i = 0; i < COUNT; i++) {
      double waterC = Math.min(LEAST_C + i, mostC);
      double kgPerM2Sec =
          Math.max(
              0,
              Evaporation.openKgPerM2Sec(
                  SATURATION_KPA.at(waterC),
                  waterC,
                  roomVapourKpa,
                  member.roomC,
                  member.pressureKpa));
      steamKgPerSec[i] = kgPerM2Sec * member.surfaceM2 * member.steamKgPerSecFactor;
      steamW[i] = steamKgPerSec[i] * LATENT_J_PER_KG.at(waterC);
    }
  }

  double steamKgPerSec(double wortC) {
    return Row.at(steamKgPerSec, wortC);
  }

  double steamW(double wortC) {
    return Row.at(steamW, wortC);
  }

  double steamWPerK(double wortC) {
    int i = Row.index(wortC);
    return (steamW[i + 1] - steamW[i]) / SPACING_K;
  }

  /// Looks up one row of the table.
  @AnyUnit("rows of steam and of its heat")
  private static final class Row {
    private Row() {}

    static double at(double[] row, double wortC) {
      int i = index(wortC);
      return row[i] + (wortC - LEAST_C - i) * (row[i + 1] - row[i]);
    }

    static int index(double wortC) {
      return Math.max(0, Math.min((int) (wortC - LEAST_C), COUNT - 2));
    }
  }
}
