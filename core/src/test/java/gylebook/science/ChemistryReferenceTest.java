package gylebook.science;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/// Mash enzymes, water, hops and boil against the rows of the hot side, each with its source.
///
/// Rows that PHREEQC computed are the oracle of the speciation; the rest are published figures or
/// open arithmetic. Rows marked as remembered test the arithmetic only.
final class ChemistryReferenceTest {
  private static final double UG_PER_MG = 1000;

  @TestFactory
  Stream<DynamicTest> theChemistryAgreesWithItsReferenceRows() {
    Checks checks = checks();
    return checks.tests(ReferenceRows.of("hot-side.csv").stream().filter(checks::claims).toList());
  }

  /// What answers the rows of sections 5 to 8.
  static Checks checks() {
    Checks checks = new Checks();
    enzymes(checks);
    dissociation(checks);
    liquors(checks);
    saltsAndAcids(checks);
    hops(checks);
    boil(checks);
    return checks;
  }

  private static void enzymes(Checks checks) {
    checks
        .kind(
            "relative enzyme activity, published refit",
            row ->
                row.detail().startsWith("alpha")
                    ? Brandam2003.alphaActivityRatio(row.number("t"))
                    : Brandam2003.betaActivityRatio(row.number("t")))
        .kind(
            "enzyme denaturation constant, remembered parameters",
            row ->
                row.detail().startsWith("alpha")
                    ? Brandam2003.alphaDenaturationPerSec(row.number("t"))
                    : Brandam2003.betaDenaturationPerSec(row.number("t")))
        .kind(
            "starch gelatinisation constant, remembered parameters",
            row ->
                row.detail().contains("below")
                    ? Brandam2003.gelatinisationBelow60PerSec(row.number("t"))
                    : Brandam2003.gelatinisationAbove60PerSec(row.number("t")))
        .kind(
            "enzyme survival in the mash",
            row ->
                100
                    * (row.detail().startsWith("alpha")
                        ? Brandam2003.alphaLeftFrac(row.number("T"), row.number("t"))
                        : BetaAmylase.leftFrac(row.number("T"), row.number("t"))))
        .kind("starch gelatinisation in the mash", ChemistryReferenceTest::starch)
        .kind("attenuation against mash temperature", ChemistryReferenceTest::attenuation);
  }

  private static double starch(ReferenceRow row) {
    if (row.detail().startsWith("sugar")) {
      return 100 * Gelatinisation.convertedFrac(middle(row, "T"), row.number("t"));
    }
    return Gelatinisation.halfOpenC();
  }

  /// The middle of `T=61.4 to 64.5 C`, or the one value there is.
  private static double middle(ReferenceRow row, String name) {
    Matcher range = Pattern.compile("([0-9.]+)\\s*(?:to|-)\\s*([0-9.]+)").matcher(row.text(name));
    return range.find()
        ? (Double.parseDouble(range.group(1)) + Double.parseDouble(range.group(2))) / 2
        : row.number(name);
  }

  private static double attenuation(ReferenceRow row) {
    return row.detail().startsWith("best compromise")
        ? Attenuation.bestMashC(60)
        : 100 * Fermentability.afterRestFrac(row.number("T"), 60);
  }

  private static void dissociation(Checks checks) {
    checks
        .kind("carbonic acid pK1", row -> Dissociation.carbonic(row.number("t")).firstNumber())
        .kind("carbonic acid pK2", row -> Dissociation.carbonic(row.number("t")).secondNumber())
        .kind("water self-ionisation pKw", row -> Dissociation.waterPkNumber(row.number("t")))
        .kind("acid dissociation constants", ChemistryReferenceTest::pk);
  }

  private static double pk(ReferenceRow row) {
    double waterC = row.number("t");
    String acid = row.detail().toLowerCase(Locale.ROOT);
    if (acid.startsWith("lact")) {
      return Dissociation.lacticPkNumber();
    }
    if (acid.contains("so4") || acid.contains("sulf")) {
      return Dissociation.hydrogenSulfatePkNumber(waterC);
    }
    Dissociation.Phosphoric steps = Dissociation.phosphoric(waterC);
    return acid.endsWith("1")
        ? steps.firstNumber()
        : acid.endsWith("2") ? steps.secondNumber() : steps.thirdNumber();
  }

  private static void liquors(Checks checks) {
    checks
        .kind("pH of plain waters", ChemistryReferenceTest::plainPh)
        .kind("pH of water with lactic acid", row -> liquor(row).lacticPh())
        .kind("carbonate test water", ChemistryReferenceTest::testWater)
        .kind(
            "phosphoric acid charge",
            row ->
                CarbonateWater.sodiumMmolPerKg(
                    row.number("t"), row.number("H3PO4"), row.number("pH")))
        .kind(
            "salted RO water",
            row -> {
              TapWater.Salted salted =
                  TapWater.salted(row.number("CaSO4.2H2O"), row.number("CaCl2.2H2O"), 0, 0, 0);
              return row.detail().contains("conductance")
                  ? salted.conductanceUsPerCm()
                  : salted.strengthMolPerKg();
            });
  }

  private static double plainPh(ReferenceRow row) {
    if (row.has("NaHCO3")) {
      double acid = row.has("HCl") ? row.number("HCl") : 0;
      return CarbonateWater.closedPh(row.number("t"), row.number("NaHCO3"), acid);
    }
    double pressureAtm = Math.pow(10, logPressure(row));
    return CarbonateWater.openPh(row.number("t"), pressureAtm * 101.325, 0);
  }

  private static double logPressure(ReferenceRow row) {
    Matcher log = Pattern.compile("pCO2=10\\^(-[0-9.]+)").matcher(row.inputs());
    return log.find() ? Double.parseDouble(log.group(1)) : Math.log10(4.2e-4);
  }

  private record Liquor(
      double calcium,
      double magnesium,
      double sodium,
      double sulfate,
      double alkalinity,
      double ph,
      double lactic) {
    TapWater.Analysed analysed() {
      return TapWater.analysed(calcium, magnesium, sodium, sulfate, alkalinity, ph);
    }

    TapWater.Heated heated(double heatedC) {
      return TapWater.heated(calcium, magnesium, sodium, sulfate, alkalinity, ph, heatedC);
    }

    double lacticPh() {
      return TapWater.lacticPh(calcium, magnesium, sodium, sulfate, alkalinity, ph, lactic);
    }
  }

  private static Liquor liquor(ReferenceRow row) {
    return new Liquor(
        row.number("Ca"),
        row.number("Mg"),
        row.number("Na"),
        row.number("SO4"),
        row.number("alkalinity"),
        row.number("pH"),
        row.has("lactic acid") ? row.number("lactic acid") : 0);
  }

  private static double testWater(ReferenceRow row) {
    String asked = row.detail().toLowerCase(Locale.ROOT);
    Matcher heated = Pattern.compile("heated[^;0-9]*([0-9.]+) C").matcher(row.inputs());
    if (heated.find()) {
      TapWater.Heated hot = liquor(row).heated(Double.parseDouble(heated.group(1)));
      return hot(row, asked, hot);
    }
    TapWater.Analysed cold = liquor(row).analysed();
    if (asked.contains("conductance")) {
      return cold.conductanceUsPerCm();
    }
    if (asked.contains("ionic strength")) {
      return cold.strengthMolPerKg();
    }
    if (asked.contains("saturation") || asked.contains(" si")) {
      return cold.indexNumber();
    }
    if (asked.contains("caso4") || asked.contains("pair")) {
      return cold.sulfatePairMmolPerKg();
    }
    if (asked.contains("hco3") || asked.contains("bicarbonate")) {
      return cold.bicarbonateMmolPerKg();
    }
    if (asked.contains("co2")) {
      return cold.dioxideMmolPerKg();
    }
    return cold.carbonMmolPerKg();
  }

  private static double hot(ReferenceRow row, String asked, TapWater.Heated hot) {
    boolean open = row.inputs().contains("open to air");
    boolean limed = row.inputs().contains("calcite at equilibrium");
    if (asked.contains("alkalinity")) {
      return hot.limedAlkalinityMeqPerKg();
    }
    if (asked.contains("ph")) {
      return limed ? hot.limedPh() : open ? hot.openPh() : hot.closedPh();
    }
    if (asked.contains("saturation") || asked.contains(" si")) {
      return hot.closedIndexNumber();
    }
    return hot.limedCalciumMmolPerKg();
  }

  private static void saltsAndAcids(Checks checks) {
    checks
        .kind("molar mass of brewing salts", row -> AtomicWeights.molarGPerMol(row.text("formula")))
        .kind("ions from 1 g/L of salt", ChemistryReferenceTest::ions)
        .kind("acid delivered at pH 5.40", row -> acid(row, 5.40))
        .kind("acid delivered at pH 5.20", row -> acid(row, 5.20))
        .kind("residual alkalinity", ChemistryReferenceTest::residual)
        .kind("mash pH by proton balance", ChemistryReferenceTest::mash);
  }

  private static double ions(ReferenceRow row) {
    Matcher dose = Pattern.compile("dose=([0-9.]+)").matcher(row.inputs());
    double doseGPerL = dose.find() ? Double.parseDouble(dose.group(1)) : 1;
    Salt.Ions ions = Salt.ions(row.text("salt"), doseGPerL);
    return switch (row.text("ion")) {
      case "Ca" -> ions.calciumMgPerL();
      case "Mg" -> ions.magnesiumMgPerL();
      case "Na" -> ions.sodiumMgPerL();
      case "Cl" -> ions.chlorideMgPerL();
      case "SO4" -> ions.sulfateMgPerL();
      case "HCO3" -> ions.bicarbonateMgPerL();
      default -> ions.alkalinityMeqPerL();
    };
  }

  private static double acid(ReferenceRow row, double usualPh) {
    Matcher strength = Pattern.compile("([0-9.]+) % w/w").matcher(row.inputs());
    double acidFrac = strength.find() ? Double.parseDouble(strength.group(1)) / 100 : Double.NaN;
    double acidKgPerL = row.number("density");
    double ph = row.has("pH") ? row.number("pH") : usualPh;
    String name = row.detail().split(" ", -1)[0];
    return switch (name) {
      case "lactic" -> Acid.lacticMeqPerMl(acidFrac, acidKgPerL, ph);
      case "phosphoric" -> Acid.phosphoricMeqPerMl(acidFrac, acidKgPerL, ph);
      case "hydrochloric" -> Acid.hydrochloricMeqPerMl(acidFrac, acidKgPerL);
      default -> Acid.sulfuricMeqPerMl(acidFrac, acidKgPerL, ph);
    };
  }

  private static double residual(ReferenceRow row) {
    if (row.detail().startsWith("slope")) {
      return ResidualAlkalinity.castWortShiftPh(1);
    }
    ResidualAlkalinity.Residual residual =
        ResidualAlkalinity.residual(row.number("Ca"), row.number("Mg"), row.number("HCO3"));
    return row.unit().equals("dH")
        ? residual.germanDegreeNumber()
        : row.unit().startsWith("meq")
            ? residual.residualMeqPerL()
            : residual.asCalciumCarbonateMgPerL();
  }

  private static double mash(ReferenceRow row) {
    double maltKg = row.number("malt");
    double maltPh = row.number("pHDI");
    double buffer = row.number("B");
    double liquorL = row.number("water");
    double alkalinity = row.number("alkalinity");
    double calcium = row.number("Ca");
    double magnesium = row.number("Mg");
    if (row.has("target pH")) {
      double left = ResidualAlkalinity.residualMeqPerL(alkalinity, calcium, magnesium);
      return MashPh.acidMeq(maltKg, maltPh, buffer, liquorL, left, row.number("target pH"));
    }
    return MashPh.mashPh(maltKg, maltPh, buffer, liquorL, alkalinity, calcium, magnesium);
  }

  private static void hops(Checks checks) {
    checks
        .kind(
            "alpha-acid isomerisation constants",
            row ->
                60
                    * (row.detail().startsWith("k1")
                        ? HopIsomerisation.formationPerSec(row.number("t"))
                        : HopIsomerisation.lossPerSec(row.number("t"))))
        .kind(
            "iso-alpha formed at constant temperature",
            row -> HopIsomerisation.isoFrac(row.number("t"), row.number("time")))
        .kind("iso-alpha in a cooling whirlpool", ChemistryReferenceTest::whirlpool)
        .kind(
            "loss of iso-alpha in the boil",
            row -> 100 * HopIsomerisation.isoLostFrac(row.number("t"), row.number("boil")))
        .kind("Tinseth utilisation", ChemistryReferenceTest::tinseth)
        .kind(
            "humulinone bitterness",
            row ->
                Humulinone.isoEquivalentMgPerL(
                    row.number("pellets"), row.number("humulinones") / 100, 0.675))
        .kind(
            "hop storage index",
            row ->
                100
                    * HopStorage.lostFrac(
                        row.number("HSI"), row.has("slope") ? row.number("slope") / 100 : 1.10))
        .kind("hop ageing by temperature", ChemistryReferenceTest::stored)
        .kind(
            "bitterness units from absorbance",
            row -> BitternessUnits.unitsNumber(row.number("A275")));
  }

  private static double whirlpool(ReferenceRow row) {
    double heldMin = row.number("time");
    if (row.has("t")) {
      return HopIsomerisation.isoFrac(row.number("t"), heldMin);
    }
    Matcher even = Pattern.compile("T=([0-9.]+) C falling ([0-9.]+) K/min").matcher(row.inputs());
    if (even.find()) {
      double startC = Double.parseDouble(even.group(1));
      double fallK = Double.parseDouble(even.group(2)) * heldMin;
      return HopIsomerisation.evenCoolingIsoFrac(startC, startC - fallK, heldMin);
    }
    Matcher free =
        Pattern.compile("T=([0-9.]+) ?\\+ ?([0-9.]+) ?\\*? ?exp\\(-t/\\(?([0-9.]+)")
            .matcher(row.inputs());
    if (!free.find()) {
      throw new AssertionError("no course of temperature in " + row);
    }
    double roomC = Double.parseDouble(free.group(1));
    return HopIsomerisation.freeCoolingIsoFrac(
        roomC + Double.parseDouble(free.group(2)),
        roomC,
        Double.parseDouble(free.group(3)),
        heldMin);
  }

  private static double tinseth(ReferenceRow row) {
    double sg = row.number("wort SG");
    double boiledMin = row.number("time");
    return row.has("hops")
        ? HopUtilisation.tinsethMgPerL(
            row.number("hops"), row.number("alpha") / 100, row.number("volume"), boiledMin, sg)
        : HopUtilisation.tinsethFrac(sg, boiledMin);
  }

  private static double stored(ReferenceRow row) {
    Matcher known =
        Pattern.compile("loss ([0-9.]+) % in ([0-9.]+) d at ([0-9.]+) C").matcher(row.inputs());
    if (!known.find()) {
      throw new AssertionError("no known loss in " + row);
    }
    return HopAge.leftFrac(
        Double.parseDouble(known.group(1)) / 100,
        Double.parseDouble(known.group(2)),
        Double.parseDouble(known.group(3)),
        row.number("storage"),
        row.number("time"),
        1);
  }

  private static void boil(Checks checks) {
    checks
        .kind(
            "evaporation from power",
            row ->
                Boil.evaporationKgPerHr(
                    row.number("P"),
                    row.number("duty"),
                    row.number("losses"),
                    row.number("p") / 1000))
        .kind("concentration by boiling", ChemistryReferenceTest::concentrated)
        .kind("SMM half-life", ChemistryReferenceTest::halfLife)
        .kind("SMM and DMS in the boil", ChemistryReferenceTest::sulfide)
        .kind("beer colour", ChemistryReferenceTest::colour);
  }

  private static double concentrated(ReferenceRow row) {
    Boil.Boiled boiled =
        Boil.concentrated(row.number("V"), row.number("extract"), row.number("water lost"));
    return row.unit().equals("L") ? boiled.boiledL() : boiled.boiledPlato();
  }

  private static double halfLife(ReferenceRow row) {
    return row.has("pH")
        ? DimethylSulfide.halfLifeMin(row.number("t"), row.number("pH"))
        : DimethylSulfide.halfLifeFromBoilMin(row.number("t"), row.number("half-life at 100 C"));
  }

  private static double sulfide(ReferenceRow row) {
    if (row.detail().startsWith("stripping")) {
      return 60 * DimethylSulfide.strippingPerSec(row.number("evaporation") / 100);
    }
    DimethylSulfide.Left left =
        DimethylSulfide.afterBoil(
            row.number("SMM at start") / UG_PER_MG,
            row.has("free DMS at start") ? row.number("free DMS at start") / UG_PER_MG : 0,
            row.number("half-life"),
            row.has("stripping") ? row.number("stripping") : 0.18,
            row.number("time"));
    double mgPerL =
        row.detail().startsWith("free DMS") ? left.freeMgPerL() : left.precursorMgPerL();
    return mgPerL * UG_PER_MG;
  }

  private static double colour(ReferenceRow row) {
    String asked = row.detail();
    if (asked.startsWith("EBC per SRM")) {
      return Colour.beerEbc(1);
    }
    if (asked.startsWith("MCU per")) {
      return Colour.maltUnitsNumber(1);
    }
    if (row.has("MCU")) {
      return Colour.maltUnitsSrm(row.number("MCU"));
    }
    if (asked.contains("passing 1/")) {
      return Colour.passedSrm(Math.pow(10, -row.number("A430")));
    }
    if (row.has("malt")) {
      return Colour.maltLovibond(row.number("malt"));
    }
    return Colour.absorbedSrm(row.number("A430"));
  }
}
