package gylebook.science;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/// Per cent of sugar by mass (Brix) from specific gravity, by a fit to the sugar table of 1942.
///
/// Brix and Plato are both per cent by mass; the word tells which table was asked.
public final class NbsC440Scale {
  private static final double LEAST_SG = 1;
  private static final double MOST_SG = 1.17874;

  private NbsC440Scale() {}

  /// Sugar from specific gravity.
  ///
  /// `Bx = 182.46007 S^3 - 775.68212 S^2 + 1262.7794 S - 669.56218`
  ///
  /// - Valid: SG 1.00000 to 1.17874 (0 to 40 per cent, 0.0009 root mean square); outside it
  ///   refuses.
  /// - Source: a fit to the table of Circular C440; the constants were read, the table was not.
  @Reckoned(
      name = "brix",
      says = "Per cent of sugar by mass from specific gravity 20/20, by the sugar table.",
      equation = "Bx = 182.46007 S^3 - 775.68212 S^2 + 1262.7794 S - 669.56218",
      range = "SG 1.00000 to 1.17874; refused outside")
  @Source(key = "nbs-c440", at = "fit", trust = Trust.SECOND_HAND)
  public static double extractPlato(double gravitySg) {
    Require.within("gravity as a gravity", gravitySg, LEAST_SG, MOST_SG);
    return cubicPlato(gravitySg);
  }

  /// Specific gravity from sugar: the fit solved backwards.
  ///
  /// `Bx(S) = Bx`, solved for S
  ///
  /// - Valid: 0 to 40 per cent; outside it refuses.
  /// - Source: as above.
  @Reckoned(
      name = "gravity-from-brix",
      says = "The specific gravity 20/20 of a sugar solution from its per cent by mass.",
      equation = "182.46007 S^3 - 775.68212 S^2 + 1262.7794 S - 669.56218 = Bx, solved for S",
      range = "0 to 40 per cent; refused outside")
  @Source(key = "nbs-c440", at = "fit", trust = Trust.SECOND_HAND)
  public static double gravitySg(double extractPlato) {
    Require.within("extract in P", extractPlato, 0, 40);
    return new BracketingNthOrderBrentSolver(1e-15, 1e-14, 1e-15, 5)
        .solve(100, s -> cubicPlato(s) - extractPlato, 0.99, 1.19);
  }

  /// Sugar from specific gravity by a shorter fit to the same table.
  ///
  /// `Bx = 28.14203 S + 202.4427 - 230.5870/S`
  ///
  /// - Valid: as above; within 0.02 of the longer fit; outside it refuses.
  /// - Source: as above.
  @Reckoned(
      name = "brix-short-form",
      says = "Per cent of sugar by mass from specific gravity 20/20, by a shorter fit.",
      equation = "Bx = 28.14203 S + 202.4427 - 230.5870/S",
      range = "SG 1.00000 to 1.17874; refused outside")
  @Source(key = "nbs-c440", at = "short fit", trust = Trust.SECOND_HAND)
  public static double shortPlato(double gravitySg) {
    Require.within("gravity as a gravity", gravitySg, LEAST_SG, MOST_SG);
    return 28.14203 * gravitySg + 202.4427 - 230.5870 / gravitySg;
  }

  private static double cubicPlato(double gravitySg) {
    double s = gravitySg;
    return s * (s * (182.46007 * s - 775.68212) + 1262.7794) - 669.56218;
  }
}
