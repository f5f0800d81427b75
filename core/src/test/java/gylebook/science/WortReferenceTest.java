package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/// Density, boiling, heat, mash-in and yield against `reference/hot-side.csv`, whose rows name
/// their sources.
class WortReferenceTest {
  private static final double ZERO_KELVIN = 273.15;
  private static final double J_PER_KJ = 1000;
  private static final double FAHRENHEIT_PER_K = 1.8;

  @TestFactory
  Stream<DynamicTest> everyRowOfItsKindsIsAnswered() {
    Checks checks = checks();
    return checks.tests(ReferenceRows.of("hot-side.csv").stream().filter(checks::claims).toList());
  }

  static Checks checks() {
    Checks checks = new Checks();
    densities(checks);
    scales(checks);
    hydrometers(checks);
    boiling(checks);
    heats(checks);
    mashing(checks);
    lautering(checks);
    return checks;
  }

  private static void densities(Checks checks) {
    checks
        .kind(
            "water density, rational form", row -> 1000 * WaterDensity.waterKgPerL(row.number("t")))
        .kind(
            "water density, IAPWS-IF97",
            row -> 1000 * WaterDensity.tableKgPerL(row.number("t"), kpa(row)))
        .kind("sucrose solution density, ICUMSA form", WortReferenceTest::solutionDensity)
        .kind("sucrose solution density, handbook table", WortReferenceTest::solutionDensity)
        .kind("thermal shrinkage of wort", WortReferenceTest::shrinkage);
  }

  private static double solutionDensity(ReferenceRow row) {
    return 1000 * WortDensity.wortKgPerL(row.number("w"), row.number("t"));
  }

  private static double shrinkage(ReferenceRow row) {
    double w = row.number("w");
    double hotC =
        row.has("t") ? row.number("t") : firstNumber(row, "(?:per volume )?at ", " C that");
    if (row.has("V")) {
      return Shrinkage.hotL(row.number("V"), w, hotC, 20);
    }
    return Shrinkage.keptRatio(w, hotC, 20);
  }

  private static void scales(Checks checks) {
    checks
        .kind("Plato from SG, ASBC cubic", row -> PlatoScale.extractPlato(gravity(row)))
        .kind("SG from Plato", row -> PlatoScale.gravitySg(row.number("extract")))
        .kind("Plato from SG, short forms", WortReferenceTest::shortForm)
        .kind(
            "Brix from SG, NBS C440 fit",
            row ->
                row.detail().contains("28.14")
                    ? NbsC440Scale.shortPlato(gravity(row))
                    : NbsC440Scale.extractPlato(gravity(row)))
        .kind("SG in air from densities", WortReferenceTest::gravityInAir)
        .kind("extract per volume", WortReferenceTest::extractPerVolume)
        .kind(
            "potential extract",
            row -> PotentialExtract.extractKg(row.number("m"), row.number("M"), row.number("fgdb")))
        .kind("Congress mash extract", WortReferenceTest::congress);
  }

  private static double gravity(ReferenceRow row) {
    return row.number(row.has("SG 20/20 (in air)") ? "SG 20/20 (in air)" : "SG 20/20");
  }

  private static double shortForm(ReferenceRow row) {
    if (row.detail().contains("260.4")) {
      return ShortPlatoScale.oneConstantPlato(gravity(row));
    }
    return row.detail().contains("28.14")
        ? NbsC440Scale.shortPlato(gravity(row))
        : ShortPlatoScale.extractPlato(gravity(row));
  }

  private static double gravityInAir(ReferenceRow row) {
    double airKgPerL = row.has("air density") ? row.number("air density") / 1000 : 0;
    if (row.detail().contains("largest difference")) {
      Matcher ends = matcher("w=([0-9.]+) to ([0-9.]+)", row.inputs());
      return SpecificGravity.largestGapPlato(
          Double.parseDouble(ends.group(1)), Double.parseDouble(ends.group(2)), airKgPerL);
    }
    return SpecificGravity.solutionSg(row.number("w"), airKgPerL);
  }

  private static double extractPerVolume(ReferenceRow row) {
    if (row.has("V")) {
      return ExtractMass.extractKg(row.number("V"), gravity(row));
    }
    ExtractMass.Points points = ExtractMass.points(row.number("extract"));
    return row.unit().contains("gal") ? points.customaryNumber() : points.pointsLPerKg();
  }

  private static double congress(ReferenceRow row) {
    double wortPlato = row.number("P");
    double moistureFrac = row.number("M") / 100;
    return 100
        * (row.unit().contains("dry") || row.detail().contains("dry")
            ? PotentialExtract.dryFrac(wortPlato, moistureFrac)
            : PotentialExtract.asIsFrac(wortPlato, moistureFrac));
  }

  private static void hydrometers(Checks checks) {
    checks
        .kind(
            "hydrometer read off temperature",
            row -> {
              Hydrometer.Corrected read =
                  Hydrometer.corrected(
                      row.number("indicated SG"), row.number("t"), 20, glassPerK(row));
              return row.unit().equals("P") ? read.extractPlato() : read.gravitySg();
            })
        .kind(
            "Plato spindle correction to add",
            row ->
                Hydrometer.correctionPlato(
                    row.number("reading"), row.number("t"), 20, glassPerK(row)));
  }

  private static double glassPerK(ReferenceRow row) {
    return row.number("glass cubical expansion");
  }

  private static void boiling(Checks checks) {
    checks
        .kind("standard atmosphere pressure", row -> 1000 * Atmosphere.stationKpa(row.number("h")))
        .kind(
            "boiling point of water",
            row -> Saturation.boilingC(kpa(row)) + (row.unit().equals("K") ? ZERO_KELVIN : 0))
        .kind("saturation pressure of water", WortReferenceTest::saturation)
        .kind(
            "latent heat of vaporisation of water",
            row -> LatentHeat.boilJPerKg(kpa(row)) / J_PER_KJ)
        .kind(
            "boiling point elevation by extract",
            row -> BoilingRise.riseK(row.number("w"), kpa(row)));
  }

  private static double saturation(ReferenceRow row) {
    double waterC = row.has("T") ? row.number("T") - ZERO_KELVIN : row.number("t");
    double pressureKpa = Saturation.saturationKpa(waterC);
    return switch (row.unit()) {
      case "MPa" -> pressureKpa / 1000;
      case "Pa" -> pressureKpa * 1000;
      default -> pressureKpa;
    };
  }

  private static double kpa(ReferenceRow row) {
    String text = row.text("p");
    double number = row.number("p");
    return text.endsWith("MPa") ? number * 1000 : text.endsWith("kPa") ? number : number / 1000;
  }

  private static void heats(Checks checks) {
    checks
        .kind("specific heat of water", row -> WaterHeat.waterJPerKgK(row.number("t"), kpa(row)))
        .kind(
            "specific heat of wort",
            row -> WortHeat.wortJPerKgK(row.number("B"), row.number("t"), row.number("purity Q")))
        .kind(
            "specific heat of malt",
            row -> MaltHeat.relativeRatio(row.number("malt moisture") / 100))
        .kind(
            "heat of wetting of malt (slaking)",
            row ->
                FAHRENHEIT_PER_K * MaltHeat.wettingRiseK(row.number("malt moisture") / 100, 2.68));
  }

  private static void mashing(Checks checks) {
    checks
        .kind("strike temperature", WortReferenceTest::strike)
        .kind("mash-in temperature, source example", WortReferenceTest::twoBodies)
        .kind(
            "water held by spent grain",
            row ->
                Absorption.waterKgPerKg(
                    row.number("spent-grain moisture"),
                    row.number("M"),
                    row.number("fgdb"),
                    row.number("conversion")))
        .kind(
            "mash volume",
            row -> MashVolume.mashL(row.number("W"), row.number("m"), row.number("displacement")))
        .kind(
            "mash liquor volume, German formula",
            row -> MashVolume.mainLiquorL(row.number("m"), row.number("A") / 100, row.number("P")));
  }

  /// The function keeps cw = 4184 and cg = 1674; what a row says otherwise is the same balance with
  /// another mass of liquor and another loss.
  private static double strike(ReferenceRow row) {
    double mashC = row.number("Tm");
    double maltC = row.number("Tg");
    double maltKg = row.number("mg");
    double extraJPerKgK = row.number("cg") * J_PER_KJ - MaltHeat.maltJPerKgK(0.04);
    return Strike.strikeC(
        row.number("mw") * row.number("cw") * J_PER_KJ / 4184,
        maltKg,
        maltC,
        mashC,
        row.number("Ck") * J_PER_KJ,
        row.number("q") * J_PER_KJ,
        row.number("Q_loss") * J_PER_KJ + maltKg * extraJPerKgK * (mashC - maltC));
  }

  private static double twoBodies(ReferenceRow row) {
    double maltC = (row.number("grist") - 32) / FAHRENHEIT_PER_K;
    double liquorC = (row.number("liquor") - 32) / FAHRENHEIT_PER_K;
    double mashC =
        Strike.twoBodyC(row.number("relative malt heat S"), maltC, liquorC, row.number("R"));
    return row.unit().equals("F") ? mashC * FAHRENHEIT_PER_K + 32 : mashC;
  }

  private static void lautering(Checks checks) {
    checks
        .kind(
            "first wort strength",
            row ->
                FirstWort.firstWortPlato(
                    row.number("R"), row.number("M"), row.number("fgdb"), row.number("conversion")))
        .kind("lauter efficiency", WortReferenceTest::lauter);
  }

  private static double lauter(ReferenceRow row) {
    Lauter.Runnings runnings =
        Lauter.runnings(
            row.number("m"),
            row.number("W"),
            row.has("one batch rinse S") ? row.number("one batch rinse S") : 0,
            row.number("retained wort"),
            row.number("M"),
            row.number("fgdb"),
            row.number("conversion"));
    if (!row.unit().equals("P")) {
      return runnings.lauterFrac();
    }
    if (row.detail().contains("second")) {
      return runnings.secondPlato();
    }
    return row.detail().contains("first") ? runnings.firstPlato() : runnings.blendPlato();
  }

  private static double firstNumber(ReferenceRow row, String before, String after) {
    String detail = row.detail();
    Matcher becomes = Pattern.compile(before + "([0-9.]+)" + after).matcher(detail);
    return Double.parseDouble(
        becomes.find() ? becomes.group(1) : matcher("per volume at ([0-9.]+) C", detail).group(1));
  }

  private static Matcher matcher(String pattern, String text) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    if (!found.find()) {
      throw new AssertionError("no '" + pattern + "' in: " + text);
    }
    return found;
  }
}
