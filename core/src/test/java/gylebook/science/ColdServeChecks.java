package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;

/// Carbonation, kegs, draught lines, dry hops, heat doses and age.
final class ColdServeChecks {
  private static final double KPA_PER_PSI = 6.894757293168361;
  private static final double SEA_KPA = 101.325;
  private static final double M_PER_FT = 0.3048;

  private ColdServeChecks() {}

  static void add(Checks checks) {
    checks
        .kind("CO2 solubility in water", ColdServeChecks::water)
        .kind("carbonation set pressure", ColdServeChecks::setPsi)
        .kind(
            "residual CO2 in beer",
            row -> BeerGas.residue(row.number("t"), row.number("p") * 100).heldGPerL())
        .kind("priming and over-carbonation", ColdServeChecks::priming)
        .kind("closed keg pressure", ColdServeChecks::kegBar)
        .kind(
            "mass of one volume of CO2",
            row -> CarbonDioxide.volumeGPerL(row.number("t"), row.number("p"), row.number("B")))
        .kind("viscosity of water", row -> WaterViscosity.waterPaSec(row.number("t")))
        .kind("draught line pressure gradient", ColdServeChecks::gradient)
        .kind("draught line rule of thumb", ColdServeChecks::rulePsi)
        .kind("dry-hop loss", ColdServeChecks::loss)
        .kind("hop creep", ColdServeChecks::creep)
        .kind("oxygen pick-up and purging", ColdServeChecks::oxygen)
        .kind("pasteurisation units", ColdServeChecks::dose)
        .kind("beer ageing", ColdServeChecks::age);
  }

  private static double water(ReferenceRow row) {
    if (row.unit().equals("MPa")) {
      return HenryIapws2004.carbonDioxideKpa(row.number("T") - 273.15) / 1000;
    }
    return CarbonDioxide.waterGPerL(row.number("t"), row.number("pCO2") * SEA_KPA);
  }

  private static double setPsi(ReferenceRow row) {
    if (row.has("altitude")) {
      return Carbonation.altitudeKpa(row.number("altitude") * M_PER_FT) / KPA_PER_PSI;
    }
    double beerC = (row.number("t") - 32) / 1.8;
    double wanted = ColdReferenceTest.found(row, "([0-9.]+) vol");
    return Carbonation.gaugeKpa(beerC, wanted, SEA_KPA) / KPA_PER_PSI;
  }

  private static double priming(ReferenceRow row) {
    if (row.has("AE drop")) {
      return BeerGas.addedVol(
          row.number("AE drop"),
          row.number("density"),
          row.number("RE/AE slope"),
          ColdReferenceTest.found(row, "([0-9.]+) g CO2/g"));
    }
    BeerGas.Sugars sugars =
        BeerGas.priming(row.number("V"), row.number("target"), row.number("t"), SEA_KPA);
    return switch (row.detail()) {
      case "glucose monohydrate" -> sugars.monohydrateG();
      case "sucrose" -> sugars.sucroseG();
      case "glucose", "glucose anhydrous" -> sugars.glucoseG();
      default -> throw new AssertionError("which sugar? " + row);
    };
  }

  private static double kegBar(ReferenceRow row) {
    if (!row.has("gas")) {
      double gauge =
          KegPressure.sealedKpa(
              ColdReferenceTest.found(row, "([0-9.]+) vol"),
              ColdReferenceTest.found(row, "([0-9.]+) C"),
              SEA_KPA);
      return (row.unit().contains("abs") ? gauge + SEA_KPA : gauge) / 100;
    }
    return KegPressure.warmedKpa(
            row.number("beer"),
            row.number("gas"),
            ColdReferenceTest.found(row, "filled at ([0-9.]+) C"),
            ColdReferenceTest.found(row, "and ([0-9.]+) psig") * KPA_PER_PSI,
            ColdReferenceTest.found(row, "warmed to ([0-9.]+) C"),
            SEA_KPA)
        / 100;
  }

  private static double gradient(ReferenceRow row) {
    double kgPerL = row.number("rho") / 1000;
    if (!row.has("bore")) {
      return DraughtLine.riseKpaPerM(kgPerL);
    }
    return DraughtLine.gradientKpaPerM(
        boreMm(row),
        row.number("Q") / 1000,
        row.number("mu") / 1000,
        kgPerL,
        row.number("roughness") * 1e6);
  }

  private static double boreMm(ReferenceRow row) {
    String[] inches = row.text("bore").split(" ", -1)[0].split("/", -1);
    return 25.4 * Double.parseDouble(inches[0]) / Double.parseDouble(inches[1]);
  }

  private static double rulePsi(ReferenceRow row) {
    double kpaPerM = ColdReferenceTest.found(row, "([0-9.]+) psi/ft") * KPA_PER_PSI / M_PER_FT;
    return DraughtLine.dropKpa(row.number("length") * M_PER_FT, kpaPerM, 1) / KPA_PER_PSI;
  }

  private static double loss(ReferenceRow row) {
    if (row.inputs().contains("gal/lb")) {
      double gal = ColdReferenceTest.found(row, "([0-9.]+) US gal/lb");
      return gal * 3.785411784 / 0.45359237;
    }
    double grams = row.number("pellets") / 100;
    return 100 * DryHop.lossFrac(grams, ColdReferenceTest.found(row, "([0-9.]+) L/kg"));
  }

  private static double creep(ReferenceRow row) {
    DryHop.Creep made = DryHop.creep(row.number("real extract drop"), 1.01);
    return row.detail().startsWith("alcohol") ? 100 * made.alcoholByVolumeFrac() : made.gasVol();
  }

  private static double oxygen(ReferenceRow row) {
    if (row.has("start")) {
      double airKpa = row.number("ambient") * KPA_PER_PSI;
      return Purge.leftPpm(
          (int) ColdReferenceTest.found(row, "^([0-9]+) "),
          ColdReferenceTest.found(row, "at ([0-9.]+) psig") * KPA_PER_PSI,
          airKpa,
          row.number("start") / 100);
    }
    throw new AssertionError("what is asked? " + row);
  }

  private static double dose(ReferenceRow row) {
    String asked = row.detail();
    if (asked.startsWith("z value")) {
      return Pasteurisation.tenfoldK(1.393);
    }
    if (asked.startsWith("first-order")) {
      return Pasteurisation.halfLifeMin(row.number("k"));
    }
    if (asked.startsWith("linear ramp")) {
      return Pasteurisation.rampNumber(
          ColdReferenceTest.found(row, "^([0-9.]+) to"),
          ColdReferenceTest.found(row, "to ([0-9.]+) to"),
          ColdReferenceTest.found(row, "at ([0-9.]+) K/min"));
    }
    double t = row.has("t") ? row.number("t") : row.number("T");
    double minutes =
        row.text("time").endsWith("min") ? row.number("time") : row.number("time") / 60;
    return Pasteurisation.doseNumber(row.inputs().contains(" F") ? (t - 32) / 1.8 : t, minutes);
  }

  private static double age(ReferenceRow row) {
    if (row.detail().startsWith("Q10")) {
      return BeerAge.tenKelvinFactor(
          ColdReferenceTest.found(row, "([0-9.]+) \\("),
          ColdReferenceTest.found(row, "and ([0-9.]+) \\("),
          ColdReferenceTest.found(row, "and [0-9.]+ \\(([0-9.]+) C")
              - ColdReferenceTest.found(row, "[0-9.]+ \\(([0-9.]+) C"));
    }
    return BeerAge.equivalentDay(
        ColdReferenceTest.found(row, "([0-9.]+) d"),
        ColdReferenceTest.found(row, "at ([0-9.]+) C"),
        ColdReferenceTest.foundIn(row.detail(), "at ([0-9.]+) C"),
        row.number("Q10"));
  }
}
