package gylebook.science;

/// Sanitisers that are mixed with water.
///
/// Concentrate into water, never the reverse; goggles and gloves. Never mix chlorine with acid
/// (chlorine gas) or ammonia. Chlorine pits stainless steel; caustic eats aluminium. United States
/// food law (read in state texts): chlorine 50 to 99 mg/L for at least 7 s at 24 C and pH 8 or
/// less; iodine 12.5 to 25 mg/L, pH 5 or less, at least 30 s at 20 C or more; others by their
/// label. Caustic in air: 2 mg/m3 at most (from memory). Follow the label and your local code.
public final class Sanitiser {
  private static final double PURE_MG_PER_L = 1e6;
  private static final double ML_PER_L = 1000;

  private Sanitiser() {}

  /// Stock solution for a litre of ready solution.
  ///
  /// `C1 V1 = C2 V2`
  ///
  /// - Valid: stock given by weight over volume (g in 100 mL); refused where it is weaker than
  ///   wanted. Bleach loses strength with age.
  /// - Source: dilution.
  ///
  /// @param stockFrac active matter of the stock, kg in a litre: 5.25 % for common bleach
  @Reckoned(
      name = "sanitiser-dose",
      says = "How much stock makes a litre of sanitiser of a strength.",
      equation = "C1 V1 = C2 V2",
      range = "stock by weight over volume; follow the label and your local code; never mix two")
  @Source(key = "food-sanitiser-law", at = "strengths", trust = Trust.READ)
  @Source(key = "mass-balance", at = "dilution", trust = Trust.COMPUTED)
  public static double doseMlPerL(double stockFrac, double wantedMgPerL) {
    double stock = Require.within("stock as a share", stockFrac, 1e-6, 1) * PURE_MG_PER_L;
    return Require.within("wanted strength in mg/L", wantedMgPerL, 0, stock) / stock * ML_PER_L;
  }
}
