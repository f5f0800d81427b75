package gylebook.science;

/// What dry hops take from the beer and what they start in it.
///
/// One to three days are enough: hydrocarbons of the oil peak within hours, its alcohols after a
/// day; longer buys creep, not aroma. After every dry hop the beer counts as unfinished again: wait
/// for two equal readings and repeat the diacetyl test.
public final class DryHop {
  private static final double PERCENT_NUMBER = 100;
  private static final double G_PER_KG = 1000;

  private DryHop() {}

  /// What creep makes.
  ///
  /// @param gasGPerL carbon dioxide
  /// @param gasVol the same in volumes
  /// @param alcoholByVolumeFrac alcohol by volume that is added
  public record Creep(double gasGPerL, double gasVol, double alcoholByVolumeFrac) {}

  /// What goes from the hops into the beer, or is lost on the way, between pilot and brewery.
  ///
  /// @param solidsGPerL hop matter that dissolves
  /// @param leastAlphaMgPerL alpha acid that leaves the hops, pilot scale
  /// @param mostAlphaMgPerL the same, industrial scale
  /// @param leastOilFrac share of the oil that leaves the hops, pilot scale
  /// @param mostOilFrac the same, industrial scale
  public record Extracted(
      double solidsGPerL,
      double leastAlphaMgPerL,
      double mostAlphaMgPerL,
      double leastOilFrac,
      double mostOilFrac) {}

  /// What dry hops give off in a day.
  ///
  /// `solids = dose/3`; of the alpha acid 23 to 48 %, of the oil 49 to 67 % leave the hops
  ///
  /// - Valid: one day at 13 C and 3.9 g/L, as measured; goes on with no better number elsewhere.
  ///   What leaves the hops is not all in the glass: yeast, walls and gas take their share. Refused
  ///   above 100 g/L.
  /// - Source: Hauser and others 2019 (abstract).
  @Reckoned(
      name = "dry-hop-extraction",
      says = "What dry hops give off in a day: dissolved matter, alpha acid, oil.",
      equation = "solids = dose/3; alpha 0.23 to 0.48, oil 0.49 to 0.67 of what was there",
      range = "measured for a day at 13 C and 3.9 g/L; not all of it reaches the glass")
  @Source(key = "hauser2019", at = "abstract", trust = Trust.READ)
  public static Extracted extracted(
      @Span(least = 0, most = 20, beyond = "it was measured at 3.9 g/L; it goes on in proportion")
          double doseGPerL,
      @Usually(0.10) double alphaFrac) {
    Require.within("dose in g/L", doseGPerL, 0, 100);
    double alpha = doseGPerL * G_PER_KG * Require.within("alpha as a share", alphaFrac, 0, 0.3);
    return new Extracted(doseGPerL / 3, 0.23 * alpha, 0.48 * alpha, 0.49, 0.67);
  }

  /// Share of the beer that dry hops keep.
  ///
  /// `loss = dose absorbed`
  ///
  /// - Valid: loose pellets 5 to 10 L/kg, 7.5 when unknown (a US gallon a pound is 8.35); less when
  ///   bagged or chilled first. Refused above 100 g/L and above all of the beer.
  /// - Source: a supplier's trial of 2019, second-hand: 2 % at 2.5 g/L, 14 % at 20 g/L.
  @Reckoned(
      name = "dry-hop-loss",
      says = "What share of the beer dry hops keep back.",
      equation = "loss = dose x absorbed",
      range = "loose pellets, 5 to 10 L/kg; less when bagged or chilled first")
  @Source(key = "dry-hop-trial2019", trust = Trust.SECOND_HAND)
  public static double lossFrac(
      double doseGPerL,
      @Span(least = 5, most = 10, beyond = "loose pellets were found to keep 5 to 10 L/kg")
          @Usually(7.5)
          double absorbedLPerKg) {
    Require.within("dose in g/L", doseGPerL, 0, 100);
    Require.within("beer absorbed in L/kg", absorbedLPerKg, 0, 20);
    double lost = doseGPerL / G_PER_KG * absorbedLPerKg;
    return Require.within("share of the beer lost", lost, 0, 1);
  }

  /// What hop creep makes of extract that was thought unfermentable.
  ///
  /// `gas = dRE rho 0.46286`, `alcohol = dRE rho 0.48391`
  ///
  /// - Valid: 10 g/L of hops at 20 C with yeast took 1 P in 5 days and 2 P in 40; cooler and
  ///   shorter gives less. In a closed package this bursts bottles.
  /// - Source: Kirkpatrick and Shellhammer 2018 (abstract) for the drop; Balling for what it makes.
  @Reckoned(
      name = "hop-creep",
      says = "The gas and alcohol that hop creep makes in dry-hopped beer.",
      equation = "gas = dRE rho 0.46286; alcohol = dRE rho 0.48391 / 0.78924",
      range = "1 P in 5 days and 2 P in 40 were seen at 10 g/L and 20 C")
  @Source(key = "kirkpatrick2018", at = "abstract", trust = Trust.READ)
  @Source(key = "speers-calculations", at = "Balling's constants", trust = Trust.READ)
  public static Creep creep(double realDropPlato, @Usually(1.01) double beerKgPerL) {
    Require.within("drop of real extract in P", realDropPlato, 0, 10);
    Require.within("density of the beer in kg/L", beerKgPerL, 0.9, 1.2);
    double extract = realDropPlato / PERCENT_NUMBER * beerKgPerL * G_PER_KG;
    double gas = extract * Balling.GAS_PER_EXTRACT_RATIO;
    double alcohol = extract * Balling.ALCOHOL_PER_EXTRACT_RATIO;
    return new Creep(
        gas, gas / CarbonDioxide.VOLUME_G_PER_L_VOL, alcohol / EthanolWater.ETHANOL_KG_PER_M3);
  }
}
