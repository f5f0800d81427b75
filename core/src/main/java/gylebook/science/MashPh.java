package gylebook.science;

import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/// The pH of the mash, read cold, by a balance of hydrogen ions.
///
/// Each malt has the pH it gives with distilled water and a buffer that holds it there; the
/// liquor's alkalinity pulls up, its calcium and magnesium and any acid pull down. The buffer is
/// the doubt: 22 to 50 meq/(kg pH) were found. How much of the water's carbon dioxide goes off is
/// the second doubt: both ends are offered. Read pH at 20 to 25 C; the hot mash reads about 0.3
/// lower.
public final class MashPh {
  /// The pH a mash is solved in.
  private static final double LEAST_PH = 3.5;

  private static final double MOST_PH = 8;

  /// Buffers that were found for malts and whole mashes.
  public static final Validity BUFFER_RANGE =
      new Validity(
          "buffer of the malt in meq/(kg pH)", 22, 50, "no malt or mash was found to buffer so");

  /// Where the constants of carbonic acid are taken, since the pH is read cold.
  private static final double COLD_C = 25;

  private static final double ROOM_C = 22;
  private static final double HOT_K = 44;
  private static final double HOT_SHIFT_PH = 0.3;
  private static final double HOT_LEAST_PH = 0.2;
  private static final double HOT_MOST_PH = 0.35;

  private MashPh() {}

  /// pH of a mash of one malt, or of a grist taken as one.
  ///
  /// `pH = pH0 + V (alk - Ca/3.5 - Mg/7)/(m B)`
  ///
  /// - Valid: near the malt's own pH, where the buffer is straight; carry the buffer as a doubt.
  @Source(key = "delange2015", at = "abstract: proton balance", trust = Trust.READ)
  @Source(key = "kolbach1953", at = "divisors", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "mash-ph",
      says = "The pH of a mash, read cold, from the malt's own pH and the liquor.",
      equation = "pH = pH0 + V (alk - Ca/3.5 - Mg/7)/(m B)",
      range = "pH 5 to 6; the buffer is known to a factor of two")
  public static double mashPh(
      double maltKg,
      @Usually(5.7) double maltPh,
      @Usually(40) double bufferMeqPerKgPh,
      double liquorL,
      double alkalinityMeqPerL,
      double calciumMeqPerL,
      double magnesiumMeqPerL) {
    double residual =
        ResidualAlkalinity.residualMeqPerL(alkalinityMeqPerL, calciumMeqPerL, magnesiumMeqPerL);
    double pull = Require.above0("liquor in L", liquorL) * residual;
    Malt malt = Malt.straight(maltKg, maltPh, bufferMeqPerKgPh);
    return maltPh + pull / (malt.maltKg * malt.bufferMeqPerKgPh);
  }

  /// pH of the same mash if none of the water's carbon dioxide gets away.
  ///
  /// `m B (pH - pH0) = V (u(pH) alk - Ca/3.5 - Mg/7)`, u the share of the alkalinity used up at a
  /// pH
  ///
  /// `mash-ph` counts all of the alkalinity, as it must where the gas goes off. Where it stays, a
  /// part of the bicarbonate is left at the pH of a mash and pulls no more: 10 % at 5.4, 20 % at
  /// 5.75, a third at 6.05. A real mash lies between the two; they part where the liquor is
  /// alkaline.
  ///
  /// - Valid: as `mash-ph`; alkalinity not below 0, its carbonic acid at 25 C.
  @Source(key = "delange2015", at = "abstract: proton balance", trust = Trust.READ)
  @Source(key = "phreeqc", at = "phreeqc.dat", trust = Trust.READ)
  @Source(key = "kolbach1953", at = "divisors", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "mash-ph-gas-kept",
      says = "The pH of a mash, read cold, if none of the water's carbon dioxide gets away.",
      equation = "m B (pH - pH0) = V (u(pH) alk - Ca/3.5 - Mg/7), u as alkalinity-used-at-ph",
      range = "pH 5 to 6; the buffer is known to a factor of two; mash-ph is the other end")
  public static double gasKeptPh(
      double maltKg,
      @Usually(5.7) double maltPh,
      @Usually(40) double bufferMeqPerKgPh,
      double liquorL,
      double alkalinityMeqPerL,
      double calciumMeqPerL,
      double magnesiumMeqPerL) {
    Require.above0("liquor in L", liquorL);
    Require.within("alkalinity in meq/L", alkalinityMeqPerL, 0, 50);
    List<Malt> malts = List.of(Malt.straight(maltKg, maltPh, bufferMeqPerKgPh));
    double hardMeqPerL = ResidualAlkalinity.residualMeqPerL(0, calciumMeqPerL, magnesiumMeqPerL);
    return balancedPh(
        malts,
        ph -> liquorL * (alkalinityMeqPerL * CarbonateWater.usedFrac(COLD_C, ph) + hardMeqPerL));
  }

  /// What a pH read in the hot mash means cold.
  ///
  /// @param coldPh at 20 to 25 C
  /// @param leastPh if the shift is small
  /// @param mostPh if the shift is large
  public record ReadHot(double coldPh, double leastPh, double mostPh) {}

  /// The pH at 20 to 25 C of a mash that was read hot.
  ///
  /// `pH_cold = pH_hot + 0.3 (T - 22)/(66 - 22)`
  ///
  /// - Valid: 15 to 80 C; refused outside. The shift at mash temperature is 0.2 to 0.35; drawn out
  ///   evenly over the temperature, which is an assumption. A meter's temperature compensation
  ///   corrects the electrode only, not this. Cool the sample instead.
  /// - Source: the large shift is a textbook's for wort, 0.35 at 65 C and 0.45 at 78 C, read in a
  ///   quotation; the middle and the small one are from memory.
  @Source(key = "practice", at = "0.2 to 0.3 lower in the hot mash", trust = Trust.MEMORY)
  @Source(key = "briggs-2004", at = "chapter 4", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "ph-read-hot",
      says = "What a pH read in the hot mash would be in a cooled sample.",
      equation = "pH_cold = pH_hot + 0.3 (T - 22)/44",
      range = "15 to 80 C, refused outside; the shift is 0.2 to 0.35 at mash temperature")
  public static ReadHot readHot(double hotPh, @Usually(66) double mashC) {
    Require.within("pH read", hotPh, 2, 12);
    double part = (Require.within("mash temperature in C", mashC, 15, 80) - ROOM_C) / HOT_K;
    return new ReadHot(
        hotPh + HOT_SHIFT_PH * part,
        hotPh + Math.min(HOT_LEAST_PH * part, HOT_MOST_PH * part),
        hotPh + Math.max(HOT_LEAST_PH * part, HOT_MOST_PH * part));
  }

  /// Acid that brings that mash to a pH; below 0 it wants alkali.
  @Source(key = "delange2015", at = "abstract: proton balance", trust = Trust.READ)
  @Reckoned(
      name = "mash-acid",
      says = "The acid that brings a mash to a pH.",
      equation = "acid = V RA + m B (pH0 - pH)",
      range = "pH 5 to 6; the buffer is known to a factor of two")
  public static double acidMeq(
      double maltKg,
      @Usually(5.7) double maltPh,
      @Usually(40) double bufferMeqPerKgPh,
      double liquorL,
      double residualMeqPerL,
      @Span(
              least = 5,
              most = 6,
              beyond = "the buffer of malt is taken as straight, which holds near a mash only")
          @Usually(5.4)
          double targetPh) {
    Require.within("target pH", targetPh, LEAST_PH, MOST_PH);
    Malt malt = Malt.straight(maltKg, maltPh, bufferMeqPerKgPh);
    return Require.above0("liquor in L", liquorL)
            * Require.within("residual alkalinity in meq/L", residualMeqPerL, -50, 50)
        - malt.heldMeq(targetPh);
  }

  /// One malt of a grist: the alkali it takes to bring a kilogram of it up from its own pH is `a1 x
  /// + a2 x^2 + a3 x^3`, x the rise.
  ///
  /// @param maltPh its pH with distilled water
  /// @param bufferMeqPerKgPh the first term, a1
  /// @param bendNumber the second term a2, meq/(kg pH^2); 0 for a straight buffer
  /// @param twistNumber the third term a3, meq/(kg pH^3); 0 for a straight buffer
  public record Malt(
      double maltKg,
      double maltPh,
      double bufferMeqPerKgPh,
      double bendNumber,
      double twistNumber) {
    public Malt {
      Require.above0("malt in kg", maltKg);
      Require.within("pH of the malt", maltPh, 3, 8);
      Require.above0("buffer in meq/(kg pH)", bufferMeqPerKgPh);
    }

    /// A malt with a straight buffer.
    public static Malt straight(double maltKg, double maltPh, double bufferMeqPerKgPh) {
      return new Malt(maltKg, maltPh, bufferMeqPerKgPh, 0, 0);
    }

    /// The alkali that holds the malt at a pH; below 0 it is acid.
    public double heldMeq(double heldPh) {
      double x = heldPh - maltPh;
      return maltKg * x * (bufferMeqPerKgPh + x * (bendNumber + x * twistNumber));
    }
  }

  /// pH of a mash of several malts.
  ///
  /// Sum over the malts = alkali of the liquor less acid added; solved between pH 3.5 and 8.
  ///
  /// @param liquorMeq residual alkalinity times volume, less the acid added
  @Source(key = "delange2015", at = "abstract: three-term series", trust = Trust.READ)
  public static double gristPh(List<Malt> malts, double liquorMeq) {
    if (malts.isEmpty()) {
      throw new IllegalArgumentException("malts is empty; a mash needs at least one malt.");
    }
    return balancedPh(malts, _ -> liquorMeq);
  }

  /// What the liquor pulls at a pH.
  @FunctionalInterface
  private interface Pull {
    double liquorMeq(double triedPh);
  }

  private static double balancedPh(List<Malt> malts, Pull pull) {
    double least = gapMeq(malts, pull, LEAST_PH);
    double most = gapMeq(malts, pull, MOST_PH);
    if (!(least < 0 && most > 0)) {
      throw new IllegalArgumentException(
          "liquor is " + pull.liquorMeq(MOST_PH) + " meq; no pH between 3.5 and 8 balances it.");
    }
    return new BracketingNthOrderBrentSolver(1e-12, 1e-12, 5)
        .solve(100, ph -> gapMeq(malts, pull, ph), LEAST_PH, MOST_PH);
  }

  private static double gapMeq(List<Malt> malts, Pull pull, double triedPh) {
    double heldMeq = malts.stream().mapToDouble(malt -> malt.heldMeq(triedPh)).sum();
    return heldMeq - pull.liquorMeq(triedPh);
  }
}
