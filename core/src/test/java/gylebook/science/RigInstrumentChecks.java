package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;

/// What answers the rig table's rows on instruments, calibration and doubt.
final class RigInstrumentChecks {
  /// GUM annex H.3: readings and corrections of a thermometer, degrees Celsius.
  private static final double[] H3_READ = {
    21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
  };

  private static final double[] H3_CORRECTION = {
    -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
  };

  /// GUM annex H.2 (from memory): five simultaneous readings of voltage, current and phase.
  private static final double[] H2_VOLTAGE = {5.007, 4.994, 5.005, 4.990, 4.999};

  private static final double[] H2_CURRENT = {
    19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3
  };
  private static final double[] H2_PHASE = {1.0456, 1.0438, 1.0468, 1.0428, 1.0433};

  private RigInstrumentChecks() {}

  static void add(Checks checks) {
    electric(checks);
    lag(checks);
    guide(checks);
    together(checks);
  }

  private static void electric(Checks checks) {
    checks
        .kind("Pt100 resistance", row -> Pt100.resistanceOhm(row.number("t")))
        .kind("Pt100 tolerance", RigInstrumentChecks::classLimit)
        .kind("thermocouple", RigInstrumentChecks::thermocouple)
        .kind(
            "one-wire thermometer chip",
            row -> ChipThermometer.temperatureC(Integer.parseInt(row.text("raw").substring(2), 16)))
        .words("one-wire CRC-8", RigInstrumentChecks::checkByte)
        .kind(
            "NTC thermistor",
            row ->
                Ntc.temperatureC(
                    row.number("R"), row.number("a"), row.number("b"), row.number("c")));
  }

  private static void lag(Checks checks) {
    checks
        .kind("E24", row -> SensorLag.responseRatio(0.9, 0.5))
        .kind(
            "first-order sensor lag",
            row -> SensorLag.rampErrorK(row.number("ramp") / 60, row.number("tau")))
        .kind(
            "stem conduction",
            row ->
                row.has("wall")
                    ? StemConduction.tubeFrac(
                        row.number("d") / 1000,
                        row.number("wall") / 1000,
                        row.number("immersed") / 1000,
                        row.number("h"),
                        row.number("k"))
                    : StemConduction.stemFrac(
                        row.number("d") / 1000,
                        row.number("metal area"),
                        row.number("immersed") / 1000,
                        row.number("h"),
                        row.number("k")));
  }

  private static void guide(Checks checks) {
    CalibrationLine line = CalibrationLine.fit(H3_READ, H3_CORRECTION, 20);
    checks
        .kind("E33", row -> line.correlationRatio())
        .kind("E34", row -> line.correctionK(30))
        .kind("E35", row -> line.correctionDoubtK(30))
        .kind("E36", row -> line.offsetDoubtK())
        .kind("E38", row -> resistanceDoubtOhm())
        .kind("standard uncertainty from limits", row -> Doubt.fromLimitsK(row.number("a")));
  }

  private static void together(Checks checks) {
    Thermometers.Together two = Thermometers.ofTwo(66.0, 0.40, 66.3, 0.37);
    checks
        .kind("E39", row -> two.meanC())
        .kind("E40", row -> two.doubtK())
        .kind(
            "E41", row -> Thermometers.ofThree(66.0, 0.40, 66.3, 0.37, 70.5, 1.5).chiSquareNumber())
        .kind("E44", row -> Thermometers.normalisedErrorRatio(70.5, 1.5, two.meanC(), two.doubtK()))
        .kind(
            "two-point calibration",
            row ->
                Calibration.trueC(
                    row.number("reading"),
                    RigReferenceTest.after(row, "ice reads"),
                    RigReferenceTest.after(row, "boil reads"),
                    RigReferenceTest.found(row, "boil reads [0-9.]+ C for ([0-9.]+)")))
        .kind(
            "dial thermometer grade A",
            row ->
                Calibration.dialLimitK(0, RigReferenceTest.found(row, "span=0-([0-9.]+)"), 0.01));
  }

  private static double classLimit(ReferenceRow row) {
    double at = row.has("t") ? row.number("t") : row.number("|t|");
    return row.detail().startsWith("class AA") ? Pt100.aaLimitK(at) : Pt100.bLimitK(at);
  }

  private static double thermocouple(ReferenceRow row) {
    double at = row.number("t");
    return switch (row.detail()) {
      case "type K emf" -> Thermocouple.kTypeMv(at);
      case "type T emf" -> Thermocouple.tTypeMv(at);
      case "type K class 2 tolerance" -> Thermocouple.kClass2K(at);
      default -> throw new AssertionError("nothing answers " + row);
    };
  }

  private static String checkByte(ReferenceRow row) {
    String[] words = row.inputs().replaceAll(".*bytes ([0-9A-F ]+).*", "$1").strip().split(" ", -1);
    byte[] bytes = new byte[words.length];
    for (int i = 0; i < words.length; i++) {
      bytes[i] = (byte) Integer.parseInt(words[i], 16);
    }
    return String.format("%02X", ChipThermometer.checkByte(bytes));
  }

  /// `R = V cos(phi) / I` from correlated means.
  private static double resistanceDoubtOhm() {
    double volt = Doubt.mean(H2_VOLTAGE);
    double ampere = Doubt.mean(H2_CURRENT);
    double phase = Doubt.mean(H2_PHASE);
    double ohm = volt * Math.cos(phase) / ampere;
    double[][] series = {H2_VOLTAGE, H2_CURRENT, H2_PHASE};
    double[] doubts = new double[3];
    double[][] correlations = new double[3][3];
    for (int i = 0; i < 3; i++) {
      doubts[i] = Doubt.ofMean(series[i]);
      for (int j = 0; j < 3; j++) {
        correlations[i][j] = Doubt.correlation(series[i], series[j]);
      }
    }
    double[] slopes = {ohm / volt, -ohm / ampere, -ohm * Math.tan(phase)};
    return Doubt.correlated(slopes, doubts, correlations);
  }
}
