package gylebook.science;

/// The last look before beer is shut in: what may still ferment, and what pressure that makes.
///
/// Bottles burst and kegs open with force. Read the package's own marking; follow your local code;
/// wear eye protection; glass that was not made for pressure is never filled with live beer.
public final class SealedPackage {
  /// 0.001 of gravity.
  private static final double LIMIT_PLATO = 0.258;

  private SealedPackage() {}

  /// What comes of shutting the beer in.
  ///
  /// @param addedVol gas that the rest of the fermentation adds
  /// @param totalVol gas in the end
  /// @param gaugeKpa pressure without headspace when it is as warm as it gets
  /// @param fit whether the remaining drop is at most 0.001 of gravity
  public record Outlook(double addedVol, double totalVol, double gaugeKpa, boolean fit) {}

  /// What the rest of a fermentation does in a closed package.
  ///
  /// `V' = V + dAE 0.805 rho 0.4629/1.9768`, `p = c/(10 exp(-10.73797 + 2617.25/T)) - p_air`
  ///
  /// - Valid: any drop; not fit above 0.258 P (0.001 of gravity): wait, or warm it and wait. Beer
  ///   on dry hops counts as unfinished. Refused outside 0 to 40 C and above 10 vol in all.
  /// - Source: Balling; the German form of solubility, read second-hand.
  @Reckoned(
      name = "sealed-package",
      says = "What the rest of a fermentation does in a closed package, and whether to wait.",
      equation = "V' = V + dAE 0.805 rho 0.4629/1.9768; p = c/(10 exp(-10.74 + 2617/T)) - p_air",
      range = "fit only for a remaining drop to 0.258 P (0.001); read the package's marking")
  @Source(key = "balling", at = "gas and yeast", trust = Trust.SECOND_HAND)
  @Source(key = "german-carbonation", trust = Trust.SECOND_HAND)
  public static Outlook outlook(
      double heldVol,
      double apparentDropPlato,
      @Usually(30) double warmestC,
      @Usually(101.325) double airKpa) {
    double added = BeerGas.addedVol(apparentDropPlato, 1.01, 0.805, Balling.GAS_PER_EXTRACT_RATIO);
    double total = Require.notBelow0("volumes in the beer", heldVol) + added;
    return new Outlook(
        added,
        total,
        KegPressure.sealedKpa(total, warmestC, airKpa),
        apparentDropPlato <= LIMIT_PLATO);
  }
}
