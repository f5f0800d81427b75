package gylebook.science;

import gylebook.science.Species.Master;
import java.util.EnumMap;
import java.util.Map;

/// Plain waters: nothing in them but bicarbonate, a little acid, and the air.
public final class CarbonateWater {
  static final double ATM_KPA = 101.325;
  static final double MOL_PER_MMOL = 1e-3;

  private CarbonateWater() {}

  /// pH of soda and hydrochloric acid in water that cannot lose its carbon dioxide.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "bradley-pitzer-1979", at = "water as a dielectric", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "soda-water-ph-closed",
      says = "The pH of water with sodium bicarbonate and hydrochloric acid, nothing gassing off.",
      equation = "sum z m = 0 with mass action and activities",
      range = "0 to 100 C, to about 0.1 mol/kg")
  public static double closedPh(
      @Usually(25) double waterC, double sodaMmolPerKg, @Usually(0) double hydrochloricMmolPerKg) {
    Map<Master, Double> totals = soda(sodaMmolPerKg);
    double acid = Require.within("acid in mmol/kg", hydrochloricMmolPerKg, 0, 200);
    totals.put(Master.CHLORIDE, acid * MOL_PER_MMOL);
    return new Speciation(waterC).closed(totals).ph();
  }

  /// pH of soda in water that has come to rest with the air.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "bradley-pitzer-1979", at = "water as a dielectric", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "soda-water-ph-open",
      says = "The pH of water with sodium bicarbonate, or of pure water, open to the air.",
      equation = "sum z m = 0, m(CO2) = K p(CO2)",
      range = "0 to 100 C, to about 0.1 mol/kg")
  public static double openPh(
      @Usually(25) double waterC,
      @Usually(0.0425) double carbonDioxideKpa,
      @Usually(0) double sodaMmolPerKg) {
    double pressure = Require.within("carbon dioxide in kPa", carbonDioxideKpa, 1e-6, 200);
    return new Speciation(waterC).open(soda(sodaMmolPerKg), pressure / ATM_KPA).ph();
  }

  private static Map<Master, Double> soda(double sodaMmolPerKg) {
    double soda = Require.within("soda in mmol/kg", sodaMmolPerKg, 0, 200) * MOL_PER_MMOL;
    Map<Master, Double> totals = new EnumMap<>(Master.class);
    totals.put(Master.SODIUM, soda);
    totals.put(Master.CARBON, soda);
    return totals;
  }

  /// Sodium hydroxide that brings phosphoric acid to a pH.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "bradley-pitzer-1979", at = "water as a dielectric", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "phosphoric-acid-neutralised",
      says = "The sodium hydroxide that brings phosphoric acid in water to a pH.",
      equation = "sum z m = 0 at the pH",
      range = "0 to 100 C, to about 0.1 mol/kg, pH 3 to 11")
  public static double sodiumMmolPerKg(
      @Usually(25) double waterC, double phosphoricMmolPerKg, @Usually(5.4) double targetPh) {
    Require.within("phosphoric acid in mmol/kg", phosphoricMmolPerKg, 1e-3, 200);
    Require.within("target pH", targetPh, 3, 11);
    var speciation = new Speciation(waterC);
    Map<Master, Double> totals = new EnumMap<>(Master.class);
    totals.put(Master.PHOSPHATE, phosphoricMmolPerKg * MOL_PER_MMOL);
    double sodium = 0;
    for (int round = 0; round < 60; round++) {
      // What charge is missing is sodium; a little of it is paired, hence the rounds.
      sodium -= speciation.at(targetPh, totals, Double.NaN).charge();
      totals.put(Master.SODIUM, sodium);
    }
    return sodium / MOL_PER_MMOL;
  }

  /// Share of a water's alkalinity that is used up when it is brought to a pH.
  ///
  /// `used = 1 - a1 - 2 a2`, `a1 = 1/(1 + 10^(pK1 - pH) + 10^(pH - pK2))`, `a2` the carbonate share
  ///
  /// At pH 5.40 and 25 C a tenth of the bicarbonate is left, so that only 90 % of the alkalinity
  /// has been used. Dilute water, ion pairs and the loss of carbon dioxide left out.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Reckoned(
      name = "alkalinity-used-at-ph",
      says = "How much of a water's alkalinity acid has used up at a pH.",
      equation = "used = 1 - a1 - 2 a2, a1 = 1/(1 + 10^(pK1 - pH) + 10^(pH - pK2))",
      range = "dilute water of 0 to 100 C, pH 3 to 8.3, refused outside; nothing gassing off")
  public static double usedFrac(@Usually(25) double waterC, @Usually(5.4) double targetPh) {
    double h = Require.within("target pH", targetPh, 3, 8.3);
    Dissociation.Carbonic pk = Dissociation.carbonic(waterC);
    double pk1 = pk.firstNumber();
    double pk2 = pk.secondNumber();
    double acid = Math.pow(10, pk1 - h);
    double base = Math.pow(10, h - pk2);
    return 1 - (1 + 2 * base) / (1 + acid + base);
  }
}
