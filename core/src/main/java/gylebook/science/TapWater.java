package gylebook.science;

import gylebook.science.Species.Master;
import java.util.EnumMap;
import java.util.Map;

/// A brewing liquor from its analysis: what is in it, what acid does to it, what heating does to
/// it.
///
/// The analysis holds at 25 C. Chloride is not asked for: it is what makes the charges balance (or
/// sodium, where an analysis has more anions than cations). A litre is taken as a kilogram of
/// water, right to 0.3 %.
public final class TapWater {
  private static final double SAMPLE_C = 25;
  private static final double MG_PER_G = 1000;
  private static final double MMOL_PER_MOL = 1000;
  private static final double CALCIUM_G_PER_MOL = 40.078;
  private static final double MAGNESIUM_G_PER_MOL = 24.305;
  private static final double SODIUM_G_PER_MOL = 22.990;
  private static final double SULFATE_G_PER_MOL = 96.056;
  private static final double CARBONATE_MG_PER_MEQ = 50.043;

  /// Carbon dioxide of the air, 420 ppm of an atmosphere.
  private static final double AIR_KPA = 4.2e-4 * CarbonateWater.ATM_KPA;

  private TapWater() {}

  /// A liquor's species.
  ///
  /// @param indexNumber calcite: logarithm of how often it is oversaturated
  /// @param conductanceUsPerCm specific conductance at 25 C
  public record Analysed(
      double carbonMmolPerKg,
      double bicarbonateMmolPerKg,
      double dioxideMmolPerKg,
      double sulfatePairMmolPerKg,
      double chlorideMmolPerKg,
      double strengthMolPerKg,
      double indexNumber,
      double conductanceUsPerCm) {}

  /// What heating does to a liquor: kept closed, open to the air, and after chalk has fallen out.
  public record Heated(
      double closedPh,
      double closedIndexNumber,
      double openPh,
      double limedPh,
      double limedAlkalinityMeqPerKg,
      double limedCalciumMmolPerKg) {}

  /// The species of a liquor by its analysis at 25 C.
  ///
  /// @param alkalinityMgPerL as calcium carbonate
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "robinson-stokes", at = "conductance", trust = Trust.MEMORY)
  @Source(key = "appelo2017", at = "weights in a mixture", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "liquor-species",
      says = "What is dissolved in a liquor, and its conductance, from an analysis.",
      equation = "sum z m = 0 with mass action and activities",
      range = "25 C, to about 0.1 mol/kg, pH 4 to 11")
  public static Analysed analysed(
      double calciumMgPerL,
      double magnesiumMgPerL,
      double sodiumMgPerL,
      double sulfateMgPerL,
      double alkalinityMgPerL,
      double samplePh) {
    Map<Master, Double> totals =
        totals(
            calciumMgPerL,
            magnesiumMgPerL,
            sodiumMgPerL,
            sulfateMgPerL,
            alkalinityMgPerL,
            samplePh);
    Speciation.Solution solution = new Speciation(SAMPLE_C).at(samplePh, totals, Double.NaN);
    return new Analysed(
        solution.total(Master.CARBON) * MMOL_PER_MOL,
        solution.of(Species.HCO3) * MMOL_PER_MOL,
        solution.of(Species.CO2) * MMOL_PER_MOL,
        solution.of(Species.CASO4) * MMOL_PER_MOL,
        solution.total(Master.CHLORIDE) * MMOL_PER_MOL,
        solution.strength(),
        solution.calciteIndex(),
        Conductance.of(solution));
  }

  /// pH of a liquor after lactic acid, at 25 C, no carbon dioxide lost.
  ///
  /// @param alkalinityMgPerL as calcium carbonate
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "llnl-organics", at = "lactate", trust = Trust.READ)
  @Reckoned(
      name = "liquor-ph-with-lactic-acid",
      says = "The pH of a liquor after lactic acid, nothing gassing off.",
      equation = "sum z m = 0 with mass action and activities",
      range = "25 C, to about 0.1 mol/kg; stirring out carbon dioxide raises the pH")
  public static double lacticPh(
      double calciumMgPerL,
      double magnesiumMgPerL,
      double sodiumMgPerL,
      double sulfateMgPerL,
      double alkalinityMgPerL,
      double samplePh,
      double lacticMmolPerL) {
    Require.within("lactic acid in mmol/L", lacticMmolPerL, 0, 200);
    Map<Master, Double> totals =
        totals(
            calciumMgPerL,
            magnesiumMgPerL,
            sodiumMgPerL,
            sulfateMgPerL,
            alkalinityMgPerL,
            samplePh);
    totals.put(Master.LACTATE, lacticMmolPerL / MMOL_PER_MOL);
    return new Speciation(SAMPLE_C).closed(totals).ph();
  }

  /// A liquor heated from 25 C: closed; open to air of 420 ppm; and with chalk in equilibrium.
  ///
  /// The last two are where long heating leads; a kettle gets there in part.
  ///
  /// @param alkalinityMgPerL as calcium carbonate
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Reckoned(
      name = "liquor-heated",
      says = "What heating does to a liquor: pH, and the chalk that can fall out.",
      equation = "sum z m = 0, m(CO2) = K p(CO2), calcite at or below saturation",
      range = "0 to 100 C, to about 0.1 mol/kg; equilibrium, not the way there")
  public static Heated heated(
      double calciumMgPerL,
      double magnesiumMgPerL,
      double sodiumMgPerL,
      double sulfateMgPerL,
      double alkalinityMgPerL,
      double samplePh,
      double heatedC) {
    Map<Master, Double> totals =
        totals(
            calciumMgPerL,
            magnesiumMgPerL,
            sodiumMgPerL,
            sulfateMgPerL,
            alkalinityMgPerL,
            samplePh);
    var hot = new Speciation(heatedC);
    Speciation.Solution closed = hot.closed(totals);
    Speciation.Solution open = hot.open(totals, AIR_KPA / CarbonateWater.ATM_KPA);
    Speciation.Solution limed = hot.limed(totals, AIR_KPA / CarbonateWater.ATM_KPA);
    return new Heated(
        closed.ph(),
        closed.calciteIndex(),
        open.ph(),
        limed.ph(),
        limed.alkalinity() * MMOL_PER_MOL,
        limed.total(Master.CALCIUM) * MMOL_PER_MOL);
  }

  private static Map<Master, Double> totals(
      double calciumMgPerL,
      double magnesiumMgPerL,
      double sodiumMgPerL,
      double sulfateMgPerL,
      double alkalinityMgPerL,
      double samplePh) {
    Require.within("calcium in mg/L", calciumMgPerL, 0, 2000);
    Require.within("magnesium in mg/L", magnesiumMgPerL, 0, 2000);
    Require.within("sodium in mg/L", sodiumMgPerL, 0, 4000);
    Require.within("sulfate in mg/L", sulfateMgPerL, 0, 4000);
    Require.within("alkalinity in mg/L", alkalinityMgPerL, 0, 2000);
    Require.within("pH of the sample", samplePh, 4, 11);
    Map<Master, Double> totals = new EnumMap<>(Master.class);
    totals.put(Master.CALCIUM, calciumMgPerL / MG_PER_G / CALCIUM_G_PER_MOL);
    totals.put(Master.MAGNESIUM, magnesiumMgPerL / MG_PER_G / MAGNESIUM_G_PER_MOL);
    totals.put(Master.SODIUM, sodiumMgPerL / MG_PER_G / SODIUM_G_PER_MOL);
    totals.put(Master.SULFATE, sulfateMgPerL / MG_PER_G / SULFATE_G_PER_MOL);
    complete(totals, alkalinityMgPerL / CARBONATE_MG_PER_MEQ, samplePh);
    return totals;
  }

  /// Finds the carbon behind the alkalinity, and the chloride behind the charges.
  private static void complete(
      Map<Master, Double> totals, double alkalinityMeqPerL, double samplePh) {
    double wanted = alkalinityMeqPerL / MMOL_PER_MOL;
    var speciation = new Speciation(SAMPLE_C);
    totals.put(Master.CARBON, Math.max(wanted, 1e-9));
    for (int round = 0; round < 80; round++) {
      Speciation.Solution trial = speciation.at(samplePh, totals, Double.NaN);
      double carbon = totals.getOrDefault(Master.CARBON, 0.0);
      double perMol = carbonMeqPerKg(trial) / MMOL_PER_MOL / carbon;
      double missing = wanted - trial.alkalinity();
      totals.put(Master.CARBON, Math.max(carbon + missing / perMol, 1e-12));
      double chloride = totals.getOrDefault(Master.CHLORIDE, 0.0) + trial.charge();
      if (chloride < 0) {
        totals.merge(Master.SODIUM, -chloride, Double::sum);
      }
      totals.put(Master.CHLORIDE, Math.max(chloride, 0));
    }
  }

  private static double carbonMeqPerKg(Speciation.Solution solution) {
    double sum = 0;
    for (Species species : Species.values()) {
      if (species.holds(Master.CARBON)) {
        sum += solution.of(species) * species.alkalinity();
      }
    }
    return sum * MMOL_PER_MOL;
  }

  /// Salts in pure water.
  ///
  /// @param strengthMolPerKg ionic strength
  /// @param conductanceUsPerCm specific conductance
  /// @param gypsumIndexNumber logarithm of how often gypsum is oversaturated; above 0 a part of it
  ///   stays at the bottom
  public record Salted(
      double strengthMolPerKg,
      double conductanceUsPerCm,
      double saltedPh,
      double gypsumIndexNumber) {}

  /// Water without minerals after weighed salts, at 25 C: what a conductivity meter should show.
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "robinson-stokes", at = "conductance", trust = Trust.MEMORY)
  @Source(key = "appelo2017", at = "weights in a mixture", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "salted-water",
      says = "Ionic strength and conductance of pure water after brewing salts.",
      equation = "I = sum m z^2/2 over ions, pairs counted; conductance from their diffusion",
      range = "25 C, to about 0.1 mol/kg; gypsum dissolves to 2.6 g/L in pure water")
  public static Salted salted(
      @Span(
              least = 0,
              most = 2.6,
              beyond = "pure water of 25 C dissolves no more gypsum; beside other calcium less")
          @Usually(0)
          double gypsumGPerL,
      @Usually(0) double calciumChlorideDihydrateGPerL,
      @Usually(0) double epsomGPerL,
      @Usually(0) double tableSaltGPerL,
      @Usually(0) double sodaGPerL) {
    double gypsum = Salt.GYPSUM.molPerL(gypsumGPerL);
    double chloride = Salt.CALCIUM_CHLORIDE_DIHYDRATE.molPerL(calciumChlorideDihydrateGPerL);
    double epsom = Salt.EPSOM.molPerL(epsomGPerL);
    double table = Salt.TABLE_SALT.molPerL(tableSaltGPerL);
    double soda = Salt.SODA.molPerL(sodaGPerL);
    Map<Master, Double> totals = new EnumMap<>(Master.class);
    totals.put(Master.CALCIUM, gypsum + chloride);
    totals.put(Master.MAGNESIUM, epsom);
    totals.put(Master.SODIUM, table + soda);
    totals.put(Master.SULFATE, gypsum + epsom);
    totals.put(Master.CHLORIDE, 2 * chloride + table);
    totals.put(Master.CARBON, soda);
    Speciation.Solution solution = new Speciation(SAMPLE_C).closed(totals);
    return new Salted(
        solution.strength(), Conductance.of(solution), solution.ph(), solution.gypsumIndex());
  }
}
