package gylebook.science;

/// What a boil drives off, and what it leaves.
///
/// Steam scalds and a covered kettle boils over: keep the lid off at a full boil.
public final class Boil {
  private static final double SEC_PER_HR = 3600;

  private Boil() {}

  /// Water driven off by the power that the wall does not lose.
  ///
  /// `m = (P duty - Q)/h`; 0 when the losses take all of it. A partly closed lid sends water back:
  /// count it as less.
  @Source(key = "iapws-if97", at = "latent heat at the boil", trust = Trust.COMPUTED)
  @Reckoned(
      name = "boil-evaporation",
      says = "The water a boil drives off at a duty of the element.",
      equation = "m = (P duty - Q)/h(p)",
      range = "at a full boil, lid off; immersed element, all its heat in the wort")
  public static double evaporationKgPerHr(
      double elementW,
      @Usually(1) double dutyFrac,
      @Usually(300) double lossW,
      @Usually(101.325) double pressureKpa) {
    Require.notBelow0("element in W", elementW);
    Require.within("duty as a share", dutyFrac, 0, 1);
    Require.notBelow0("losses in W", lossW);
    double netW = Math.max(0, elementW * dutyFrac - lossW);
    return netW * SEC_PER_HR / LatentHeat.boilJPerKg(pressureKpa);
  }

  /// Wort after water has boiled off.
  ///
  /// @param boiledPlato its strength
  /// @param boiledL its volume at 20 C
  public record Boiled(double boiledPlato, double boiledL) {}

  /// Strength and cold volume of wort after water has boiled off: extract stays, water goes.
  @Source(key = "bubnik-1995", at = "density of sucrose solution", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "boil-concentration",
      says = "Strength and volume of wort after water has boiled off.",
      equation = "P2 = P1 m1/(m1 - water), V2 = m2/rho(P2)",
      range = "volumes at 20 C; 0 to 60 P after")
  public static Boiled concentrated(double wortL, double wortPlato, double waterKg) {
    Require.above0("wort in L", wortL);
    Require.within("strength in P", wortPlato, 0, 60);
    double startFrac = wortPlato / 100;
    double startKg = wortL * WortDensity.wortKgPerL(startFrac, 20);
    Require.within("water boiled off in kg", waterKg, 0, startKg * (1 - startFrac) * 0.999);
    double leftKg = startKg - waterKg;
    double leftFrac = startKg * startFrac / leftKg;
    Require.within("strength after the boil in P", 100 * leftFrac, 0, 60);
    double leftL = leftKg / WortDensity.wortKgPerL(leftFrac, 20);
    double p = leftFrac * 100;
    return new Boiled(p, leftL);
  }

  /// What two boils teach.
  ///
  /// @param lossW what walls and surface lose
  /// @param latentRatio heat per kilogram found over the steam tables' own; near 1 or doubt it
  public record Learnt(double lossW, double latentRatio) {}

  /// The kettle's losses from two boils at different duty.
  ///
  /// `m = (P duty - Q)/h` twice: the slope must be 1/h, the intercept is the loss
  ///
  /// - Valid: full boils, same lid, same room; the duties at least 0.1 apart. A ratio far from 1
  ///   says that a reading or the element's power is wrong. Refused where the boils do not differ.
  @Source(key = "iapws-if97", at = "latent heat at the boil", trust = Trust.COMPUTED)
  @Source(key = "energy-balance", at = "boiling kettle", trust = Trust.COMPUTED)
  @Reckoned(
      name = "boil-loss-from-two-duties",
      says = "What a kettle loses, learnt from the evaporation at two duties.",
      equation = "m = (P duty - Q)/h, twice",
      range = "full boils; duties 0.1 apart or more, the stronger first or last; refused otherwise")
  public static Learnt learnt(
      double elementW,
      double firstDutyFrac,
      double firstKgPerHr,
      double secondDutyFrac,
      double secondKgPerHr,
      @Usually(101.325) double pressureKpa) {
    Require.above0("element in W", elementW);
    Require.within("first duty as a share", firstDutyFrac, 0, 1);
    Require.within("second duty as a share", secondDutyFrac, 0, 1);
    Require.within(
        "distance of the duties as a share", Math.abs(secondDutyFrac - firstDutyFrac), 0.1, 1);
    double slope = (secondKgPerHr - firstKgPerHr) / (elementW * (secondDutyFrac - firstDutyFrac));
    double heatJPerKg = SEC_PER_HR / Require.above0("more evaporated by more duty", slope);
    double loss = elementW * firstDutyFrac - firstKgPerHr * heatJPerKg / SEC_PER_HR;
    return new Learnt(loss, heatJPerKg / LatentHeat.boilJPerKg(pressureKpa));
  }
}
