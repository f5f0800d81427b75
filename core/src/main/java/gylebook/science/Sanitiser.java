package gylebook.science;

/// Sanitisers that are mixed with water.
///
/// Concentrate into water, never the reverse; goggles and gloves. Never mix chlorine with acid
/// (chlorine gas) or ammonia. Chlorine pits stainless steel; caustic eats aluminium. United States
/// food law (read in state texts): chlorine 50 to 99 mg/L for at least 7 s at 24 C and pH 8 or
/// less; iodine 12.5 to 25 mg/L, pH 5 or less, at least 30 s at 20 C or more; others by their
/// label. Caustic in air: 2 mg/m3 at most (OSHA and NIOSH). Follow the label and your local code.
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

  /// Concentrated cleaner for a litre of ready solution: caustic, phosphoric or nitric acid.
  ///
  /// `V1 = C2 rho2/(C1 rho1)`, both by weight, the ready solution as heavy as water
  ///
  /// - Valid: shares by weight; usual are 1 to 5 % of caustic soda at 55 to 70 C, 1 to 2 % of
  ///   phosphoric or nitric acid. Refused where the stock is weaker than wanted. **Caustic burns
  ///   skin and eyes and heats up as it dissolves**: into cold water, never the reverse; goggles,
  ///   gloves; not on aluminium; acid never with chlorine. The label and your local code rule.
  /// - Source: dilution; strengths read in texts on cleaning in place.
  ///
  /// @param stockFrac active matter of the stock by weight
  /// @param stockKgPerL how heavy the stock is: 1.53 for caustic of 50 %, from memory
  @Reckoned(
      name = "cleaner-dose",
      says = "How much concentrated cleaner makes a litre of solution of a strength by weight.",
      equation = "V1 = C2/(C1 rho1)",
      range = "1 to 5 % caustic, 1 to 2 % acid are usual; into water, never the reverse; goggles")
  @Source(key = "practice", at = "strengths of cleaning in place", trust = Trust.PRACTICE)
  @Source(key = "mass-balance", at = "dilution", trust = Trust.COMPUTED)
  public static double cleanerMlPerL(
      double stockFrac,
      @Span(
              least = 0.01,
              most = 0.05,
              beyond = "cleaners are used at 1 to 5 % caustic or 1 to 2 % acid; read the label")
          double wantedFrac,
      @Usually(1.53) double stockKgPerL) {
    double stock = Require.within("stock as a share", stockFrac, 1e-6, 1);
    Require.within("density of the stock in kg/L", stockKgPerL, 0.7, 2);
    return Require.within("wanted strength as a share", wantedFrac, 0, stock)
        / (stock * stockKgPerL)
        * ML_PER_L;
  }
}
