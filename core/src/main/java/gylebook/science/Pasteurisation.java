package gylebook.science;

/// Heat doses that kill: pasteurisation units and death times.
///
/// The old z of 6.9 K is not safe for every organism (King 1978), and spores of yeast stand 6 to 16
/// times more than tough bacteria: use margins. Dirt, not kinetics, is the limit: clean first. The
/// coldest, returning probe counts.
public final class Pasteurisation {
  /// Where the dose was measured.
  public static final Validity RANGE =
      new Validity(
          "dose temperature in C", 50, 85, "no death rate was measured there; the law goes on");

  private static final double PER_K_FACTOR = 1.393;
  private static final double BASE_C = 60;
  private static final double CIRCUIT_C = 77;
  private static final double CIRCUIT_MIN = 5;
  private static final double Z_K = Math.log(10) / Math.log(PER_K_FACTOR);

  private Pasteurisation() {}

  /// Dose of a hold at one temperature.
  ///
  /// `PU = t 1.393^(T - 60)`, t in minutes
  ///
  /// - Valid: 50 to 85 C; goes on with a caution; refused outside 0 to 110 C.
  /// - Source: Del Vecchio and others 1951. A paper of 1978 gives 26.5 for 72.2 C and 30 s (28.7
  ///   here).
  @Reckoned(
      name = "pasteurisation-units",
      says = "How many pasteurisation units a hold at one temperature gives.",
      equation = "PU = t 1.393^(T - 60), t in min",
      range = "50 to 85 C; goes on to 110 C; take a margin")
  @Source(key = "delvecchio1951", trust = Trust.READ)
  public static double doseNumber(double doseC, double heldMin) {
    Require.within("dose temperature in C", doseC, 0, 110);
    return Require.notBelow0("time in min", heldMin) * Math.pow(PER_K_FACTOR, doseC - BASE_C);
  }

  /// Dose of a steady rise to a peak and a steady fall back.
  ///
  /// `PU = 2 (1.393^(T2 - 60) - 1.393^(T1 - 60))/(r ln 1.393)`
  ///
  /// - Valid: as above; refused where the peak is below the start.
  /// - Source: the integral of the above.
  @Reckoned(
      name = "pasteurisation-of-ramp",
      says = "How many pasteurisation units a steady rise and fall of temperature gives.",
      equation = "PU = 2 (1.393^(T2 - 60) - 1.393^(T1 - 60))/(r ln 1.393)",
      range = "50 to 85 C; goes on to 110 C; take a margin")
  @Source(key = "delvecchio1951", trust = Trust.READ)
  public static double rampNumber(double startC, double peakC, double rampKPerMin) {
    Require.within("start in C", startC, 0, 110);
    Require.within("peak in C", peakC, startC, 110);
    Require.above0("rise in K/min", rampKPerMin);
    return 2 * lineNumber(startC, peakC, (peakC - startC) / rampKPerMin);
  }

  /// Dose of a temperature history: straight lines between its points.
  ///
  /// - Valid: as above; points in order of time, refused otherwise.
  /// - Source: as above.
  @Source(key = "delvecchio1951", trust = Trust.READ)
  public static double historyNumber(double[] atMin, double[] doseC) {
    if (atMin.length != doseC.length) {
      throw new IllegalArgumentException(
          "there are " + atMin.length + " times and " + doseC.length + " temperatures.");
    }
    double dose = 0;
    for (int i = 1; i < atMin.length; i++) {
      dose +=
          lineNumber(
              doseC[i - 1],
              doseC[i],
              Require.notBelow0("minutes between points", atMin[i] - atMin[i - 1]));
    }
    return dose;
  }

  /// Rise of temperature that makes death ten times as fast.
  ///
  /// `z = ln 10 / ln f`
  ///
  /// - Valid: a factor above 1; refused otherwise.
  /// - Source: a definition.
  @Reckoned(
      name = "z-value",
      says = "The rise of temperature that makes a heat dose ten times as strong.",
      equation = "z = ln 10 / ln f",
      range = "a factor for 1 K above 1; refused otherwise")
  @Source(key = "delvecchio1951", trust = Trust.READ)
  public static double tenfoldK(@Usually(PER_K_FACTOR) double kelvinFactor) {
    Require.within("factor for 1 K", kelvinFactor, 1.0001, 100);
    return Math.log(10) / Math.log(kelvinFactor);
  }

  /// Half-life of a first-order decay.
  ///
  /// `t = ln 2 / k`
  ///
  /// - Valid: a rate above 0; refused otherwise.
  /// - Source: a definition; melibiase at 60 C has 0.0688 per minute (Enevoldsen).
  @Reckoned(
      name = "half-life",
      says = "The half-life of what decays at a first-order rate.",
      equation = "t = ln 2 / k",
      range = "a rate above 0; refused otherwise")
  @Source(key = "enevoldsen", at = "abstract", trust = Trust.READ)
  public static double halfLifeMin(double decayPerMin) {
    return Math.log(2) / Require.above0("rate per min", decayPerMin);
  }

  /// Time that kills to so many powers of ten.
  ///
  /// `t = n D60 10^(-(T - 60)/z)`
  ///
  /// - Valid: 50 to 85 C; goes on with a caution. For clean, wetted surfaces only. The rule of this
  ///   program for a circuit: everything at 77 C or more for 5 min by the returning probe, or
  ///   boiling wort through the chiller for 10 to 15 min (US food law asks 30 s at 77 C immersed).
  /// - Source: first order; D60 of 5 min and z of 7 K stand for a tough bacterium, an assumption.
  @Reckoned(
      name = "heat-kill-time",
      says = "How long heat must hold to kill to so many powers of ten.",
      equation = "t = n D60 10^(-(T - 60)/z)",
      range = "clean wetted surfaces; 5 min at 77 C by the coldest probe is the house's rule")
  @Source(key = "food-code", at = "4-501.111, 4-703.11", trust = Trust.READ)
  @Source(key = "delvecchio1951", trust = Trust.READ)
  public static double killSec(
      double doseC,
      @Usually(8) double powersNumber,
      @Usually(5) double tenthMin,
      @Usually(7) double tenfoldK) {
    Require.within("dose temperature in C", doseC, 0, 110);
    Require.notBelow0("powers of ten", powersNumber);
    Require.above0("time to a tenth at 60 C in min", tenthMin);
    Require.above0("rise for ten times in K", tenfoldK);
    return powersNumber * tenthMin * 60 * Math.pow(10, (BASE_C - doseC) / tenfoldK);
  }

  /// What heat has done in a circuit.
  ///
  /// @param doseNumber pasteurisation units at the coldest point
  /// @param stillMin minutes still to hold by this program's rule; 0 when it is met
  /// @param enough whether the rule is met
  public record Circuit(double doseNumber, double stillMin, boolean enough) {}

  /// Whether hot water has sanitised a whole circuit, by its coldest point.
  ///
  /// 77 C or more for 5 min by the probe in the return: this program's rule, ten times the 30 s
  /// that US food law asks of what lies in the water.
  ///
  /// - Valid: clean surfaces: heat does not go through dirt. Below 77 C it never counts as enough.
  ///   Hot water scalds; hoses burst off. Follow your local code.
  /// - Source: the food code; the five minutes are a rule of this program.
  ///
  /// @param coldestC the coldest temperature anywhere in the circuit, that is in the return
  @Reckoned(
      name = "hot-circuit",
      says = "Whether hot water has sanitised a circuit, by the temperature of its coldest point.",
      equation = "77 C or more in the return for 5 min; dose = 1.393^(T - 60) t",
      range = "clean surfaces, the coldest probe; 0 to 110 C, refused outside; hot water scalds")
  @Source(key = "food-code", at = "4-501.111, 4-703.11", trust = Trust.READ)
  @Source(key = "delvecchio1951", trust = Trust.READ)
  public static Circuit circuit(double coldestC, @Usually(5) double heldMin) {
    double dose = doseNumber(coldestC, heldMin);
    boolean hot = coldestC >= CIRCUIT_C;
    double still = hot ? Math.max(0, CIRCUIT_MIN - heldMin) : CIRCUIT_MIN;
    return new Circuit(dose, still, hot && still == 0);
  }

  /// The integral along a straight line, also where it is level.
  private static double lineNumber(double fromC, double toC, double lastsMin) {
    Require.within("dose temperature in C", fromC, 0, 110);
    Require.within("dose temperature in C", toC, 0, 110);
    double x = (toC - fromC) * Math.log(10) / Z_K;
    return doseNumber(fromC, lastsMin) * (Math.abs(x) < 1e-9 ? 1 : Math.expm1(x) / x);
  }
}
