package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;

/// Alcohol, extract, attenuation, energy and the refractometer in beer.
final class ColdBeerChecks {
  private ColdBeerChecks() {}

  static void add(Checks checks) {
    checks
        .kind("ethanol-water density", ColdBeerChecks::density)
        .kind("alcoholic strength conversion", ColdBeerChecks::strength)
        .kind("attenuation", ColdBeerChecks::attenuation)
        .kind(
            "original extract by Balling",
            row -> Balling.originalPlato(row.number("A") / 100, row.number("RE")))
        .kind(
            "apparent extract by Tabarie and OIML",
            row -> Tabarie.apparentPlato(row.number("A") / 100, row.number("RE")))
        .kind("alcohol regression coefficient", ColdBeerChecks::coefficient)
        .kind("alcohol and real extract from OE and AE", ColdBeerChecks::solved)
        .kind("shortcut real extract and alcohol (biased)", ColdBeerChecks::shortcut)
        .kind("food energy of beer", ColdBeerChecks::energy)
        .kind(
            "refractometer in fermenting beer",
            row ->
                100
                    * BeerRefractometer.meaning(
                            row.number("OE"), row.number("reading"), 1, row.number("k"))
                        .alcoholByMassFrac());
  }

  private static double density(ReferenceRow row) {
    double share = row.inputs().contains("ethanol p=") ? row.number("p") : 0;
    double mixtureC = row.number("t");
    return row.detail().startsWith("SG")
        ? EthanolWater.mixtureSg(
            share, mixtureC, ColdReferenceTest.found(row, "reference water ([0-9.]+)"))
        : EthanolWater.densityKgPerM3(share, mixtureC);
  }

  private static double strength(ReferenceRow row) {
    double share = row.number("strength") / 100;
    if (row.detail().startsWith("mass to volume")) {
      return 100 * EthanolWater.volumeFrac(share);
    }
    double byMass = EthanolWater.massFrac(share);
    return row.unit().startsWith("kg") ? EthanolWater.densityKgPerM3(byMass, 20) : 100 * byMass;
  }

  private static double attenuation(ReferenceRow row) {
    double original = row.number("OE");
    if (row.detail().startsWith("ratio")) {
      return Cutaia2009.coefficients(original).attenuationRatio();
    }
    if (row.detail().contains("ASBC")) {
      return 100 * DegreeOfFermentation.correctedFrac(original, row.number("RE"));
    }
    return 100
        * (row.has("RE")
            ? DegreeOfFermentation.realFrac(original, row.number("RE"))
            : DegreeOfFermentation.apparentFrac(original, row.number("AE")));
  }

  private static double coefficient(ReferenceRow row) {
    Cutaia2009.Coefficients fitted = Cutaia2009.coefficients(row.number("OE"));
    return switch (row.detail().charAt(0)) {
      case 'a' -> fitted.apparentDropRatio();
      case 'b' -> fitted.realDropRatio();
      case 'c' -> fitted.differenceRatio();
      default -> throw new AssertionError("which coefficient? " + row);
    };
  }

  private static double solved(ReferenceRow row) {
    double original = row.number("OE");
    double apparent = row.number("AE");
    if (row.detail().startsWith("method C")) {
      return asked(row, Alcohol.fromExtracts(original, apparent));
    }
    return asked(
        row,
        row.detail().startsWith("method B")
            ? Cutaia2009.strength(original, apparent)
            : AlcoholShortcut.fixedShare(original, apparent));
  }

  private static double shortcut(ReferenceRow row) {
    Alcohol.Strength short0 = AlcoholShortcut.fixedShare(row.number("OE"), row.number("AE"));
    return row.unit().equals("P") ? short0.realExtractPlato() : asked(row, short0);
  }

  private static double asked(ReferenceRow row, Alcohol.Strength strength) {
    return switch (row.unit()) {
      case "P" -> strength.realExtractPlato();
      case "% vol" -> 100 * strength.byVolumeFrac();
      case "% w/w" -> 100 * strength.byMassFrac();
      default -> throw new AssertionError("which unit? " + row);
    };
  }

  private static double energy(ReferenceRow row) {
    FoodEnergy.Energy energy =
        FoodEnergy.energy(
            row.number("A") / 100,
            row.number("RE"),
            row.number("SG"),
            row.number("ash") / 100,
            row.has("volume") ? row.number("volume") : 355);
    return row.detail().contains("100 g")
        ? energy.beerKjPerKg() / 10 / 4.184
        : row.detail().contains("100 mL") ? energy.beerKjPerL() / 10 / 4.184 : energy.glassKcal();
  }
}
