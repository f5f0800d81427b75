package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Yeast, oxygen, fermentation, its heat and diacetyl.
final class ColdFermentChecks {
  private ColdFermentChecks() {}

  static void add(Checks checks) {
    yeast(checks);
    checks
        .kind("oxygen in air-saturated water", ColdFermentChecks::oxygen)
        .kind("oxygen in air-saturated wort", ColdFermentChecks::oxygen)
        .kind("thermal-time logistic", ColdFermentChecks::logistic)
        .kind("maximum-posterior fit of the logistic", ColdFermentChecks::fit)
        .kind("de Andres-Toro fermentation model", ColdFermentChecks::latentYeast)
        .kind("Gee-Ramirez growth model", ColdFermentChecks::threeSugars)
        .kind("fermentation heat", ColdFermentChecks::heat)
        .kind(
            "diacetyl after fermentation",
            row ->
                Diacetyl.leftMgPerL(
                    row.number("AL0"),
                    row.number("VDK0"),
                    row.number("t"),
                    row.number("k1"),
                    row.number("k2"),
                    row.number("factor")));
  }

  private static void yeast(Checks checks) {
    checks
        .kind(
            "cells to pitch",
            row -> Pitching.cellsCount(row.number("V"), row.number("OE"), row.number("r")) / 1e9)
        .kind("yeast viability in storage", ColdFermentChecks::viability)
        .kind(
            "yeast starter growth",
            row ->
                Starter.yieldCountPerMl(
                    ColdReferenceTest.found(row, "^([0-9.]+) to "),
                    ColdReferenceTest.found(row, "to ([0-9.]+) x1e6"),
                    ColdReferenceTest.found(row, "; ([0-9.]+) to")
                        - ColdReferenceTest.found(row, "; [0-9.]+ to ([0-9.]+) P")))
        .kind(
            "dried yeast mass",
            row ->
                Pitching.driedG(
                    ColdReferenceTest.found(row, "([0-9.e]+) cells;"),
                    ColdReferenceTest.found(row, "([0-9.e]+) cells/g"),
                    row.number("viability factor")));
  }

  private static double viability(ReferenceRow row) {
    if (row.detail().startsWith("loss rate")) {
      return YeastAge.measuredPerDay(
          ColdReferenceTest.found(row, "([0-9.]+) % lost") / 100,
          ColdReferenceTest.found(row, "in ([0-9.]+) d"));
    }
    return 100
        * YeastAge.viableFrac(
            row.has("start") ? row.number("start") / 100 : 1, row.number("k"), row.number("time"));
  }

  private static double oxygen(ReferenceRow row) {
    if (row.detail().startsWith("factor")) {
      return Oxygen.pureOverAirRatio(row.number("dry mole fraction of O2 in air"));
    }
    double airKpa = row.number("p") / 1000;
    return row.has("OE")
        ? Oxygen.wortMgPerL(row.number("t"), row.number("OE"), airKpa, 0.016)
        : Oxygen.waterMgPerL(row.number("t"), airKpa);
  }

  private static double logistic(ReferenceRow row) {
    if (row.detail().startsWith("time to")) {
      double left = Double.parseDouble(row.detail().replaceAll(".*w=([0-9.]+).*", "$1"));
      return FermentationCurve.timeHr(
          left, row.number("T"), row.number("B20"), row.number("taum"), row.number("s"), 2.2);
    }
    if (!row.has("T")) {
      return FermentationCurve.warmedPlato(
          row.number("P0"),
          row.number("Pinf"),
          ColdReferenceTest.found(row, "([0-9.]+) C"),
          ColdReferenceTest.found(row, "([0-9.]+) h"),
          ColdReferenceTest.found(row, "to ([0-9.]+) C"),
          ColdReferenceTest.found(row, "([0-9.]+) h,? ?(?:hold|then)"),
          row.number("t"));
    }
    return FermentationCurve.extractPlato(
        row.number("P0"),
        row.number("Pinf"),
        row.number("T"),
        row.number("t"),
        row.number("B20"),
        row.number("taum"),
        row.number("s"));
  }

  private static double fit(ReferenceRow row) {
    Matcher lists =
        Pattern.compile("readings ([0-9., ]+) P at ([0-9., ]+) h").matcher(row.inputs());
    if (!lists.find()) {
      throw new AssertionError("no readings in " + row);
    }
    String[] platos = lists.group(1).split(", *", -1);
    String[] hours = lists.group(2).split(", *", -1);
    StringBuilder readings = new StringBuilder();
    for (int i = 0; i < hours.length; i++) {
      readings.append(hours[i]).append(':').append(platos[i]).append(' ');
    }
    FermentationFit.Fitted fitted =
        FermentationFit.bare(
            row.number("P0"),
            row.number("T"),
            readings.toString(),
            row.number("sigma"),
            0.77,
            0.04,
            0.4);
    String asked = row.detail();
    if (asked.startsWith("sd(ADFinf)")) {
      return fitted.attenuationDoubtFrac();
    }
    return switch (asked) {
      case "ADFinf" -> fitted.attenuationFrac();
      case "B20" -> fitted.ratePerHr();
      case "taum" -> fitted.midpointNumber();
      case "s" -> fitted.skewNumber();
      default -> throw new AssertionError("which parameter? " + row);
    };
  }

  private static double latentYeast(ReferenceRow row) {
    DeAndresToro1998.Tank tank =
        DeAndresToro1998.tank(
            row.number("T"),
            row.number("t"),
            row.number("S"),
            row.number("X_L"),
            row.number("X_A"),
            row.number("X_D"));
    String asked = row.detail();
    if (asked.startsWith("sugar")) {
      return tank.sugarGPerL();
    }
    if (asked.startsWith("ethanol")) {
      return tank.ethanolGPerL();
    }
    if (asked.startsWith("diacetyl")) {
      return tank.diacetylPpm();
    }
    if (asked.startsWith("active")) {
      return tank.activeGPerL();
    }
    throw new AssertionError("what is asked? " + row);
  }

  private static double threeSugars(ReferenceRow row) {
    double fermentC = row.number("T");
    if (row.detail().startsWith("time to")) {
      double strength = ColdReferenceTest.foundIn(row.detail(), "time to ([0-9.]+) %") / 100;
      return GeeRamirez1988.timeHr(
          fermentC, strength, row.number("G"), row.number("M"), row.number("N"), row.number("X"));
    }
    GeeRamirez1988.Tank tank =
        GeeRamirez1988.tank(
            fermentC,
            row.number("t"),
            row.number("G"),
            row.number("M"),
            row.number("N"),
            row.number("X"));
    return switch (row.detail()) {
      case "glucose" -> tank.glucoseMolPerM3();
      case "maltose" -> tank.maltoseMolPerM3();
      case "maltotriose" -> tank.maltotrioseMolPerM3();
      case "yeast", "biomass", "cells" -> tank.yeastMolPerM3();
      case "ethanol" -> tank.ethanolMolPerM3();
      default -> throw new AssertionError("what is asked? " + row);
    };
  }

  private static double heat(ReferenceRow row) {
    if (row.detail().startsWith("peak")) {
      return FermentationHeat.peakW(
          row.number("wort"),
          row.number("P0-Pinf"),
          row.number("B"),
          row.number("s"),
          row.number("RE/AE slope"));
    }
    double heat =
        FermentationHeat.heatJ(
            row.number("wort"), row.number("real-extract drop"), row.number("q") * 1e6);
    return switch (row.unit()) {
      case "MJ" -> heat / 1e6;
      case "K" -> FermentationHeat.riseK(row.number("real-extract drop"), row.number("cp"));
      default -> throw new AssertionError("which unit? " + row);
    };
  }
}
