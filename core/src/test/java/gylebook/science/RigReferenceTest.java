package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/// The rows of the rig's table that ask for the physics of kettle, loop, pump, instruments, control
/// and wiring, each with its source beside it. Vapour pressure, filters and wire formats are asked
/// elsewhere.
class RigReferenceTest {
  private static final double SQUARE_FOOT_BTU_PER_HR = 1055.05585 / 0.09290304 / 3600;
  private static final double KPA = 101.325;

  @TestFactory
  Stream<DynamicTest> everyRowOfOurKindsIsAnswered() {
    return checks()
        .tests(
            ReferenceRows.of("rig.csv").stream()
                .filter(row -> "BCDEFJ".indexOf(row.id().charAt(0)) >= 0 || row.id().equals("A10"))
                .filter(row -> !row.kind().startsWith("unit factor"))
                .toList());
  }

  /// What answers these kinds; also for other tables that ask the same kinds.
  static Checks checks() {
    Checks checks = new Checks();
    kettle(checks);
    hose(checks);
    bed(checks);
    pump(checks);
    RigInstrumentChecks.add(checks);
    RigControlChecks.add(checks);
    return checks;
  }

  private static void kettle(Checks checks) {
    checks
        .kind("A10", row -> Air.viscosityPaSec(row.number("T") - 273.15))
        .kind("B02", row -> WallHeat.verticalNusseltNumber(row.number("Gr"), row.number("Pr")))
        .kind(
            "natural convection (Churchill-Chu)",
            row ->
                WallHeat.verticalWPerM2K(
                    row.number("height"), row.number("wall"), row.number("air"), KPA))
        .kind(
            "radiation coefficient",
            row ->
                Radiation.coefficientWPerM2K(
                    row.number("eps"), row.number("wall"), row.number("surroundings")))
        .kind(
            "evaporation loss of an open tank",
            row ->
                Evaporation.openHeatWPerM2(celsius(row, "water"), celsius(row, "air"), 0.5, KPA)
                    / SQUARE_FOOT_BTU_PER_HR)
        .kind("latent heat fit", row -> Evaporation.latentJPerKg(row.number("T")) / 1000)
        .kind(
            "evaporation below boiling (Shah)",
            row ->
                3600
                    * Evaporation.openKgPerM2Sec(
                        celsius(row, "water"), celsius(row, "air"), 0.5, KPA))
        .kind("B20", RigReferenceTest::meanRatioToTable)
        .kind(
            "evaporation below boiling (pool form)",
            row ->
                3600
                    * Evaporation.poolKgPerM2Sec(
                        celsius(row, "water"), celsius(row, "air"), 0.5, 1))
        .kind(
            "boil-off from power",
            row ->
                3600
                    * Evaporation.boilOffKgPerSec(
                        row.number("duty"), row.number("P"), row.number("losses"), 100))
        .kind("power to hold an open kettle", RigReferenceTest::holdingW)
        .kind(
            "heating and mixing",
            row ->
                Mixing.mixedC(
                    before(row, "kg water"),
                    found(row, "kg water at ([0-9.]+)"),
                    before(row, "kg grain"),
                    found(row, "kg grain at ([0-9.]+)"),
                    row.number("c"),
                    1650));
  }

  private static void hose(Checks checks) {
    checks
        .kind("silicone rubber conductivity", row -> HoseHeat.siliconeWPerMK())
        .kind("C02", row -> HoseHeat.wallMKPerW(0.0127, 0.01905, row.number("k")))
        .kind(
            "hose heat loss",
            row ->
                row.has("outside coefficient")
                    ? HoseHeat.draughtDropK(
                        0.0127,
                        0.01905,
                        row.number("length"),
                        litresPerSec(row),
                        66.0,
                        20,
                        row.number("outside coefficient"))
                    : HoseHeat.dropK(
                        0.0127, 0.01905, row.number("length"), litresPerSec(row), 66.0, 20))
        .kind(
            "C08",
            row ->
                HoseHeat.delaySec(
                    row.number("bore") / 1000, row.number("length"), litresPerSec(row)));
  }

  private static void bed(Checks checks) {
    checks
        .kind(
            "packed-bed pressure drop",
            row ->
                BedFlow.carmanPaPerM(
                        row.number("dp") / 1000,
                        row.number("eps"),
                        row.number("v") / 1000,
                        row.number("rho"),
                        row.number("mu"))
                    * row.number("L"))
        .kind(
            "bed permeability",
            row -> BedFlow.permeabilityM2(row.number("d") / 1000, row.number("eps")))
        .kind(
            "head across the grain bed",
            row ->
                BedFlow.headM(
                    row.number("Q") / 60,
                    row.number("L"),
                    row.number("A"),
                    row.number("k"),
                    row.number("mu") / 1000,
                    row.number("rho") / 1000))
        .kind(
            "levels inside and outside the bag",
            row ->
                1000
                    * Overflow.highestCrestM(
                        row.number("rest level") / 1000,
                        row.number("element cover") / 1000,
                        row.number("A_in"),
                        row.number("A_out")))
        .kind("C17", row -> 1000 * Overflow.changeoverM(row.number("D") / 1000, row.number("Cd")))
        .kind(
            "overflow tube",
            row -> 1000 * Overflow.headM(row.number("Q") / 60, row.number("D") / 1000, 0.6))
        .kind(
            "bed thermal time constant",
            row ->
                BedFlow.timeConstantSec(
                    before(row, "kg grain"),
                    row.number("c"),
                    before(row, "kg wort"),
                    4000,
                    litresPerSec(row),
                    before(row, "kg/L"),
                    4186));
  }

  private static void pump(Checks checks) {
    checks
        .kind(
            "net positive suction head",
            row ->
                row.has("h_f")
                    ? Suction.npshAtM(
                        row.number("T"),
                        row.number("p") / 1000,
                        row.number("z"),
                        row.number("h_f"),
                        row.number("rho") / 1000)
                    : Suction.npshFromHeadsM(
                        after(row, "atmosphere"),
                        row.inputs().contains("lift") ? after(row, "lift") : after(row, "level"),
                        after(row, "vapour"),
                        after(row, "friction"),
                        after(row, "safety")))
        .kind(
            "air-core vortex",
            row -> 1000 * Suction.vortexM(row.number("Q") / 60, row.number("port D") / 1000))
        .kind(
            "suction loss",
            row ->
                Suction.lossM(
                    row.number("Q") / 60,
                    row.number("length"),
                    row.number("bore") / 1000,
                    row.number("f"),
                    row.number("sum K")));
  }

  private static double holdingW(ReferenceRow row) {
    double wallWPerK = 1 / (1.0 / 350 + 1 / (6 * 0.62));
    return HoldingPower.openW(row.number("T"), 0.42, 20, 0.5, KPA, 11, wallWPerK).totalW();
  }

  private static double meanRatioToTable(ReferenceRow row) {
    double[] waterF = {120, 150, 180, 200};
    double[] table = {360, 860, 1740, 2680};
    double sum = 0;
    for (int i = 0; i < waterF.length; i++) {
      double heat = Evaporation.openHeatWPerM2((waterF[i] - 32) / 1.8, (60 - 32) / 1.8, 0.5, KPA);
      sum += heat / SQUARE_FOOT_BTU_PER_HR / table[i];
    }
    return sum / waterF.length;
  }

  private static double celsius(ReferenceRow row, String name) {
    double value = row.number(name);
    return row.text(name).contains("F") ? (value - 32) / 1.8 : value;
  }

  private static double litresPerSec(ReferenceRow row) {
    return before(row, "L/min") / 60;
  }

  /// The number that stands before some words.
  static double before(ReferenceRow row, String words) {
    return found(row, "([-+]?[0-9.]+)\\s*" + Pattern.quote(words));
  }

  /// The number that stands after a word without an equals sign.
  static double after(ReferenceRow row, String word) {
    return found(row, Pattern.quote(word) + "\\s+([-+]?[0-9.]+)");
  }

  static double found(ReferenceRow row, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(row.inputs());
    if (!matcher.find()) {
      throw new AssertionError(row.id() + " has nothing like " + pattern);
    }
    return Double.parseDouble(matcher.group(1));
  }
}
