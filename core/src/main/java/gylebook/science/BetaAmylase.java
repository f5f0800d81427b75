package gylebook.science;

/// What the heat of the mash leaves of beta-amylase, the enzyme that makes most of the maltose.
///
/// Two pools, because one does not fit: Muller found 17 % left after 30 min and 8 % after 60 min at
/// 65 C and 2.5 L/kg. A share of 0.069 that lasts and a rest with a half-life of 9.4 min at 65 C
/// meet both points. In a thin mash the enzyme dies faster: a remembered study of thinner mashes
/// has about half this half-life.
public final class BetaAmylase {
  /// The share that outlasts a rest at 65 C.
  public static final double STABLE_SHARE_FRAC = 0.069;

  private static final double REFERENCE_C = 65;
  private static final double REFERENCE_HALF_LIFE_MIN = 9.4;
  private static final double REFERENCE_PER_SEC =
      Math.log(2) / (REFERENCE_HALF_LIFE_MIN * Minutes.SEC_PER_MIN);

  /// How the decay grows with temperature; from memory of Brandam et al. 2003, not read again.
  static final double ACTIVATION_J_PER_MOL = 410_700;

  /// Where the decay was measured.
  public static final Validity RANGE =
      new Validity(
          "mash temperature in C",
          63,
          67,
          "the decay of beta-amylase was measured at 65 C only; elsewhere it follows an activation"
              + " energy from memory, and the lasting share is taken as the same");

  private BetaAmylase() {}

  /// Decay of the pool that the heat kills.
  ///
  /// `k = ln 2/(9.4 min) * exp(E/R (1/338.15 - 1/T))`, E = 410.7 kJ/mol
  ///
  /// - Valid: measured at 65 C; elsewhere by an activation energy from memory.
  @Source(key = "muller1991", at = "fig. 1, 65 C, 2.5 L/kg", trust = Trust.SECOND_HAND)
  @Source(key = "brandam2003", at = "activation energy", trust = Trust.MEMORY)
  @Reckoned(
      name = "beta-amylase-decay",
      says = "How fast the heat of the mash kills the labile part of beta-amylase.",
      equation = "k = ln2/564 s exp(49396 K (1/338.15 K - 1/T))",
      range = "measured at 65 C; the temperature dependence is from memory; 0 to 110 C answered")
  public static double labileDecayPerSec(double mashC) {
    Require.within("mash temperature in C", mashC, 0, 110);
    return REFERENCE_PER_SEC * Arrhenius.speedRatio(mashC, REFERENCE_C, ACTIVATION_J_PER_MOL);
  }

  /// The share of the beta-amylase left after a rest at one temperature.
  ///
  /// `b = s + (1 - s) exp(-k t)`
  @Source(key = "muller1991", at = "fig. 1, 65 C, 2.5 L/kg", trust = Trust.SECOND_HAND)
  @Source(key = "brandam2003", at = "activation energy", trust = Trust.MEMORY)
  @Reckoned(
      name = "beta-amylase-left",
      says = "How much of the beta-amylase a rest at one temperature leaves.",
      equation = "b = 0.069 + 0.931 exp(-k(T) t)",
      range = "65 C, 2.5 L/kg; a thin mash loses it about twice as fast")
  public static double leftFrac(double mashC, @Usually(60) double heldMin) {
    double heldSec = Require.notBelow0("rest in min", heldMin) * Minutes.SEC_PER_MIN;
    return STABLE_SHARE_FRAC
        + (1 - STABLE_SHARE_FRAC) * Math.exp(-labileDecayPerSec(mashC) * heldSec);
  }

  /// The time that full activity would need for the same work: the integral of the share left.
  static double fullActivitySec(double mashC, double heldSec, double labileFrac) {
    double k = labileDecayPerSec(mashC);
    return STABLE_SHARE_FRAC * heldSec + labileFrac * -Math.expm1(-k * heldSec) / k;
  }
}
