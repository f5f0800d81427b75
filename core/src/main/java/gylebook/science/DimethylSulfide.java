package gylebook.science;

/// Dimethyl sulfide and what it comes from, S-methylmethionine (SMM), in the boil and after it.
///
/// Two first-order steps: the precursor splits, free dimethyl sulfide leaves with the vapour. After
/// flame-out nothing leaves any more while the precursor still splits.
public final class DimethylSulfide {
  private static final double BOIL_C = 100;
  private static final double DOUBLING_K = 6;

  /// Half-lives at the boil that Dickenson 1979 is quoted with.
  private static final double LOW_PH = 5.2;

  private static final double LOW_PH_HALF_LIFE_MIN = 38;
  private static final double HIGH_PH = 5.5;
  private static final double HIGH_PH_HALF_LIFE_MIN = 32.5;
  private static final double USUAL_PH = 5.35;

  /// Free dimethyl sulfide leaves at 0.18/min when 17 % of the wort evaporates in an hour.
  private static final double STRIPPING_PER_MIN = 0.18;

  private static final double STRIPPING_FRAC_PER_HR = 0.17;

  /// Temperatures between the two quoted half-lives.
  public static final Validity RANGE =
      new Validity(
          "wort temperature in C",
          82,
          101,
          "the half-life of the precursor is extrapolated by doubling every 6 K");

  /// Worts of the two quoted half-lives, a little widened.
  public static final Validity PH_RANGE =
      new Validity("pH of the wort", 5.0, 5.7, "the half-life was quoted for pH 5.2 and 5.5 only");

  private DimethylSulfide() {}

  /// Half-life of the precursor: 38 min at pH 5.2 and 32.5 min at pH 5.5 at the boil, doubled for
  /// every 6 K below.
  ///
  /// - Between and beyond the two pH: straight in the logarithm.
  /// - Valid: 82 to 101 C, pH 5.0 to 5.7; extrapolated beyond.
  @Source(key = "dickenson1979", at = "half-lives by pH; doubling", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "precursor-half-life",
      says = "The half-life of the precursor of dimethyl sulfide in hot wort.",
      equation = "t = 38 min (32.5/38)^((pH - 5.2)/0.3) 2^((100 - T)/6)",
      range = "82 to 101 C, pH 5.0 to 5.7; 0 to 110 C and pH 4 to 7 answered")
  public static double halfLifeMin(@Usually(100) double wortC, @Usually(5.35) double wortPh) {
    Require.within("pH of the wort", wortPh, 4, 7);
    double place = (wortPh - LOW_PH) / (HIGH_PH - LOW_PH);
    double atBoil =
        LOW_PH_HALF_LIFE_MIN * Math.pow(HIGH_PH_HALF_LIFE_MIN / LOW_PH_HALF_LIFE_MIN, place);
    return halfLifeFromBoilMin(wortC, atBoil);
  }

  /// The same from a half-life known at 100 C.
  @Source(key = "dickenson1979", at = "doubling per 6 K", trust = Trust.SECOND_HAND)
  @Source(key = "wilson-booer1979", at = "abstract: 35 min", trust = Trust.READ)
  @Reckoned(
      name = "precursor-half-life-from-boil",
      says = "The half-life of the precursor below the boil, from the one at 100 C.",
      equation = "t = t100 2^((100 - T)/6)",
      range = "82 to 101 C; 0 to 110 C answered")
  public static double halfLifeFromBoilMin(double wortC, @Usually(35) double boilHalfLifeMin) {
    Require.within("wort temperature in C", wortC, 0, 110);
    Require.above0("half-life at the boil in min", boilHalfLifeMin);
    return boilHalfLifeMin * Math.pow(2, (BOIL_C - wortC) / DOUBLING_K);
  }

  /// Precursor split per second, as a share of what is left.
  @Source(key = "dickenson1979", at = "half-lives by pH; doubling", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "precursor-split-rate",
      says = "How fast the precursor of dimethyl sulfide splits in hot wort.",
      equation = "k = ln 2/half-life",
      range = "82 to 101 C, pH 5.0 to 5.7; 0 to 110 C and pH 4 to 7 answered")
  public static double precursorPerSec(double wortC, @Usually(5.35) double wortPh) {
    return Math.log(2) / (halfLifeMin(wortC, wortPh) * Minutes.SEC_PER_MIN);
  }

  /// Free dimethyl sulfide that leaves per second, as a share of what is there.
  ///
  /// Proportional to the share of the wort that evaporates: `0.18/min` at 17 %/h.
  @Source(key = "wilson-booer1979", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "dimethyl-sulfide-stripping",
      says = "How fast the boil drives free dimethyl sulfide off.",
      equation = "k = 0.18/min evaporation/(0.17/h)",
      range = "open kettle at the boil; measured at 17 %/h; taken as proportional")
  public static double strippingPerSec(double evaporationFracPerHr) {
    Require.notBelow0("evaporation as a share per hour", evaporationFracPerHr);
    return STRIPPING_PER_MIN / Minutes.SEC_PER_MIN * evaporationFracPerHr / STRIPPING_FRAC_PER_HR;
  }

  /// What is left after a boil.
  ///
  /// @param precursorMgPerL precursor, counted as the dimethyl sulfide it can become
  /// @param freeMgPerL free dimethyl sulfide
  public record Left(double precursorMgPerL, double freeMgPerL) {}

  /// Precursor and free dimethyl sulfide after a boil with constant rates.
  ///
  /// `dS/dt = -ks S`, `dD/dt = ks S - kd D`
  @Source(key = "wilson-booer1979", at = "abstract", trust = Trust.READ)
  @Reckoned(
      name = "dimethyl-sulfide-after-boil",
      says = "Precursor and free dimethyl sulfide after a boil.",
      equation = "dS/dt = -ks S, dD/dt = ks S - kd D",
      range = "constant temperature and evaporation; precursor counted as dimethyl sulfide")
  public static Left afterBoil(
      double precursorMgPerL,
      @Usually(0) double freeMgPerL,
      @Usually(35) double halfLifeMin,
      @Usually(0.18) double strippingPerMin,
      @Usually(60) double boiledMin) {
    Require.notBelow0("precursor in mg/L", precursorMgPerL);
    Require.notBelow0("free dimethyl sulfide in mg/L", freeMgPerL);
    Require.above0("half-life in min", halfLifeMin);
    Require.notBelow0("stripping per min", strippingPerMin);
    Require.notBelow0("boil in min", boiledMin);
    double ks = Math.log(2) / halfLifeMin;
    double kept = Math.exp(-ks * boiledMin);
    double unstripped = Math.exp(-strippingPerMin * boiledMin);
    double gap = strippingPerMin - ks;
    // Equal rates: the limit of the fraction.
    double fresh = Math.abs(gap) < 1e-9 ? ks * boiledMin * kept : ks / gap * (kept - unstripped);
    return new Left(precursorMgPerL * kept, freeMgPerL * unstripped + precursorMgPerL * fresh);
  }

  /// What a boil and the stand after it leave.
  ///
  /// @param boiledFreeMgPerL free dimethyl sulfide at flame-out
  /// @param stoodFreeMgPerL free dimethyl sulfide when the wort is cold
  /// @param precursorMgPerL precursor that goes on into the beer
  public record Stood(double boiledFreeMgPerL, double stoodFreeMgPerL, double precursorMgPerL) {}

  /// Free dimethyl sulfide after a boil under a lid or without, and a hot stand before chilling.
  ///
  /// `kd = 0.18/min (evaporation/0.17/h) leak` in the boil; none leaves in the stand while the
  /// precursor still splits: the stand is answered on the safe side.
  ///
  /// - Valid: pH 5.35; evaporation is what the open kettle would lose; the leak is the share of it
  ///   that gets past the lid: 1 without a lid, 0.05 to 0.25 under one (a guess to be learnt). A
  ///   stand takes one mean temperature.
  @Source(key = "wilson-booer1979", at = "abstract", trust = Trust.READ)
  @Source(key = "dickenson1979", at = "half-lives by pH; doubling", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "dimethyl-sulfide-after-stand",
      says =
          "Dimethyl sulfide after a boil with the lid on or off, and a hot stand before chilling.",
      equation = "boil: kd = 0.18/min evaporation/(0.17/h) leak; stand: kd = 0, ks at its warmth",
      range = "82 to 101 C, pH 5.35; leak 1 without a lid, 0.05 to 0.25 under one")
  public static Stood afterStand(
      double precursorMgPerL,
      @Usually(60) double boiledMin,
      @Usually(0.10) double evaporationFracPerHr,
      @Usually(1) double lidLeakFrac,
      @Usually(20) double standMin,
      @Usually(90) double standC,
      @Usually(100) double boilC) {
    Require.within("share of the steam that leaves", lidLeakFrac, 0, 1);
    Require.notBelow0("stand in min", standMin);
    double stripping = strippingPerSec(evaporationFracPerHr * lidLeakFrac) * Minutes.SEC_PER_MIN;
    Left left = afterBoil(precursorMgPerL, 0, halfLifeMin(boilC, USUAL_PH), stripping, boiledMin);
    double kept = Math.pow(0.5, standMin / halfLifeMin(standC, USUAL_PH));
    return new Stood(
        left.freeMgPerL(),
        left.freeMgPerL() + left.precursorMgPerL() * (1 - kept),
        left.precursorMgPerL() * kept);
  }
}
