package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import gylebook.testing.Cases;
import gylebook.units.ExtractScale;
import org.junit.jupiter.api.Test;

/// Phenomena that no row of the reference tables asks for, each against a value from outside.
class SheetAuditTest {
  private static final IF97 STEAM = new IF97(IF97.UnitSystem.SI);

  /// A German degree is 10 mg/L of calcium oxide, a French one 10 mg/L of calcium carbonate: with
  /// the IUPAC weights 17.848 mg/L CaCO3 and 0.3566 meq/L.
  @Test
  void degreesOfHardnessAreWhatTheirDefinitionsSay() {
    double oxide = AtomicWeights.molarGPerMol("CaO");
    double carbonate = AtomicWeights.molarGPerMol("CaCO3");
    Hardness.Amount ten = Hardness.fromDegrees(10);
    assertThat(ten.carbonateMgPerL()).isCloseTo(100 * carbonate / oxide, within(0.05));
    assertThat(ten.equivalentMeqPerL()).isCloseTo(200 / oxide, within(0.002));
    assertThat(ten.frenchDegreeNumber()).isCloseTo(17.848, within(0.005));
    assertThat(Hardness.alkalinity(ten.carbonateMgPerL()).germanDegreeNumber())
        .isCloseTo(10, within(1e-9));
    assertThat(Hardness.alkalinity(100).bicarbonateMgPerL())
        .isCloseTo(200 * AtomicWeights.molarGPerMol("HCO3") / carbonate, within(0.1));
  }

  @Test
  void calciumAndMagnesiumHardenByTheirEquivalents() {
    double calcium = AtomicWeights.molarGPerMol("Ca");
    double magnesium = AtomicWeights.molarGPerMol("Mg");
    Hardness.Amount water = Hardness.hardness(calcium, magnesium);
    assertThat(water.equivalentMeqPerL()).isCloseTo(4, within(0.001));
  }

  /// Share of bicarbonate left at pH 5.40 and 25 C: 0.1005, worked by hand from the pK of 6.3519.
  @Test
  void atMashPhATenthOfTheBicarbonateIsLeft() {
    assertThat(CarbonateWater.usedFrac(25, 5.4)).isCloseTo(1 - 0.1005, within(0.0002));
    assertThat(CarbonateWater.usedFrac(25, Dissociation.carbonic(25).firstNumber()))
        .isCloseTo(0.5, within(0.001));
    assertThat(CarbonateWater.usedFrac(25, 8.3)).isCloseTo(0, within(0.02));
  }

  @Test
  void aHotMashReadsLowerAndACooledSampleAsItIs() {
    assertThat(MashPh.readHot(5.2, 22).coldPh()).isCloseTo(5.2, within(1e-9));
    MashPh.ReadHot hot = MashPh.readHot(5.2, 66);
    assertThat(hot.coldPh()).isCloseTo(5.5, within(1e-9));
    assertThat(hot.leastPh()).isLessThan(hot.coldPh());
    assertThat(hot.mostPh()).isGreaterThan(hot.coldPh());
    // Briggs and others 2004, quoted: wort lies 0.35 lower at 65 C and 0.45 lower at 78 C.
    assertThat(MashPh.readHot(5.2, 65).mostPh()).isCloseTo(5.2 + 0.35, within(0.01));
    assertThat(MashPh.readHot(5.2, 78).mostPh()).isCloseTo(5.2 + 0.45, within(0.01));
  }

  /// No bonus: as much as the boil alone, plus what the heating adds, and never the yield of a boil
  /// as long as both.
  @Test
  void firstWortHopsAreABoilAdditionWithTheHeatingBeforeIt() {
    double boil = HopIsomerisation.isoFrac(100, 60);
    double whole = HopIsomerisation.firstWortIsoFrac(65, 40, 100, 60);
    assertThat(whole).isBetween(boil, HopIsomerisation.isoFrac(100, 100));
    assertThat(HopIsomerisation.firstWortIsoFrac(65, 0, 100, 60)).isCloseTo(boil, within(1e-6));
    assertThat(HopIsomerisation.firstWortIsoFrac(65, 40, 100, 0))
        .isCloseTo(HopIsomerisation.evenCoolingIsoFrac(65, 100, 40), within(1e-6));
  }

  /// 150 F in a pump handbook is 3.718 psi; the law of three constants is known to boil water 0.02
  /// to 0.06 K too hot between 70 and 101 kPa.
  @Test
  void theLawOfThreeConstantsBoilsWaterATouchTooHot() {
    for (double kpa : new double[] {70.121, 83.432, 101.325}) {
      double boilC = STEAM.saturationTemperatureP(kpa * 1000) - 273.15;
      double handbookC = Root.between(60, 100.2, t -> handbookKpa(t) - kpa);
      assertThat(handbookC - boilC).isBetween(0.015, 0.065);
    }
    assertThat(Saturation.handbookKpa(65.5556) / 6.894757).isCloseTo(3.718, within(0.02));
  }

  private static double handbookKpa(double waterC) {
    return waterC > 100 ? 101.6 + 3.6 * (waterC - 100) : Saturation.handbookKpa(waterC);
  }

  @Test
  void weatherMovesTheBoilByAQuarterOfAKelvinAKilopascal() {
    assertThat(Saturation.boilingSlopeKPerKpa(101.325)).isCloseTo(0.277, within(0.001));
    double steam = STEAM.saturationTemperatureP(81_500) - STEAM.saturationTemperatureP(80_500);
    assertThat(Saturation.boilingSlopeKPerKpa(81)).isCloseTo(steam, within(0.001));
  }

  @Test
  void theOlderDensityStaysNearTheSteamTables() {
    Cases.each(
        200,
        random -> {
          double waterC = 1 + 98 * random.nextDouble();
          double table = 1 / STEAM.specificVolumePT(101_325, waterC + 273.15) / 1000;
          assertThat(WaterDensity.olderKgPerL(waterC)).isCloseTo(table, within(5e-5));
        });
    assertThat(1000 * WaterDensity.olderKgPerL(4)).isCloseTo(999.972, within(0.003));
  }

  /// `1000.6 - 0.0128 t - 0.00357 t^2` goes round as good to 0.6 kg/m3: 5 too heavy at the boil.
  @Test
  void aShortFitOfTheDensityThatGoesRoundIsNotOffered() {
    double fit = 1000.6 - 0.0128 * 99 - 0.00357 * 99 * 99;
    assertThat(fit - 1000 * WaterDensity.waterKgPerL(99)).isGreaterThan(5);
    double cold = 1000.6 - 0.0128 * 20 - 0.00357 * 20 * 20;
    assertThat(cold).isCloseTo(1000 * WaterDensity.waterKgPerL(20), within(0.8));
  }

  @Test
  void theShortFitOfViscosityAndTheConductivityStayNearTheSteamTables() {
    Cases.each(
        200,
        random -> {
          double waterC = 1 + 96 * random.nextDouble();
          double kelvin = waterC + 273.15;
          double table = STEAM.dynamicViscosityPT(101_325, kelvin);
          assertThat(WaterViscosity.fitPaSec(waterC)).isCloseTo(table, within(0.025 * table));
          double conducts = STEAM.thermalConductivityPT(101_325, kelvin);
          assertThat(TubeFilm.conductivityWPerMK(waterC))
              .isCloseTo(conducts, within(0.012 * conducts));
        });
  }

  /// Inside a tube of 9.5 mm at 0.71 m/s and 55 C others reckoned 4.8 and 4.2 kW/(m2 K), give or
  /// take a fifth.
  @Test
  void bothFilmsAgreeWithAnotherReckoningWithinAFifth() {
    TubeFilm.Films films = TubeFilm.films(0.0095, 0.71 * Math.PI / 4 * 0.0095 * 0.0095 * 1000, 55);
    assertThat(films.gnielinskiWPerM2K()).isCloseTo(4800, within(0.2 * 4800));
    assertThat(films.dittusBoelterWPerM2K()).isCloseTo(4200, within(0.2 * 4200));
    assertThat(films.turbulent()).isTrue();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TubeFilm.films(0.0095, 0.005, 55))
        .withMessageContaining("Reynolds number");
  }

  /// A worked case of a heat-transfer library: 2.16007 transfer units, 1377.5 and 9672 W/K, 130 and
  /// 15 C: effectiveness 0.831218, 131 675.3 W.
  @Test
  void crossflowIsAsInAWorkedCase() {
    double share = Chiller.crossflowFrac(2.16007, 1377.5 / 9672);
    assertThat(share).isCloseTo(0.831218, within(1e-5));
    assertThat(share * 1377.5 * (130 - 15)).isCloseTo(131_675.3, within(1.0));
    assertThat(Chiller.crossflowFrac(2, 0)).isCloseTo(Chiller.crossflowFrac(2, 1e-7), within(1e-6));
    assertThat(Chiller.crossflowFrac(3, 0.7))
        .isBetween(Chiller.parallelFrac(3, 0.7), Chiller.counterflowFrac(3, 0.7));
  }

  @Test
  void whatAChillerDidTellsItsOwnUa() {
    Cases.each(
        300,
        random -> {
          double wort = 0.02 + 0.2 * random.nextDouble();
          double water = 0.02 + 0.2 * random.nextDouble();
          double ua = 100 + 900 * random.nextDouble();
          var out = Chiller.counterflow(wort, 95, water, 12, ua, 4000, 4184);
          var learnt = Chiller.learnt(wort, 95, out.wortC(), water, 12, out.waterC(), 4000);
          assertThat(learnt.uaWPerK()).isCloseTo(ua, within(1e-4 * ua));
          assertThat(learnt.balanceFrac()).isCloseTo(0, within(1e-9));
        });
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Chiller.learnt(0.1, 95, 20, 0.1, 25, 60, 4000))
        .withMessageContaining("wort out above water in");
  }

  @Test
  void twoBoilsTellTheLossTheyWereMadeWith() {
    double strong = Boil.evaporationKgPerHr(3500, 0.9, 400, 95);
    double weak = Boil.evaporationKgPerHr(3500, 0.6, 400, 95);
    Boil.Learnt learnt = Boil.learnt(3500, 0.9, strong, 0.6, weak, 95);
    assertThat(learnt.lossW()).isCloseTo(400, within(0.1));
    assertThat(learnt.latentRatio()).isCloseTo(1, within(1e-6));
    // An element that gives a tenth less than its plate shows as a ratio of 1.11.
    double faint = Boil.evaporationKgPerHr(3150, 0.9, 400, 95);
    double fainter = Boil.evaporationKgPerHr(3150, 0.6, 400, 95);
    assertThat(Boil.learnt(3500, 0.9, faint, 0.6, fainter, 95).latentRatio())
        .isCloseTo(1 / 0.9, within(0.001));
  }

  /// 12 P to 2.5 P: a beer in full swing goes on, one that stands still at 8 P is stuck, one that
  /// stands at the end is done only when the readings are two days apart.
  @Test
  void aFermentationIsJudgedByTwoReadings() {
    double end = 2.5;
    double fallen = FermentationCurve.extractPlato(12, end, 20, 44, 0.1, 3.2, 1);
    double before = FermentationCurve.extractPlato(12, end, 20, 36, 0.1, 3.2, 1);
    var going = FermentationState.state(12, end, before, fallen, 8, 20);
    assertThat(going.rateRatio()).isCloseTo(1, within(0.1));
    assertThat(going.stuck() || going.steady()).isFalse();
    var stuck = FermentationState.state(12, end, 8.1, 8.0, 48, 20);
    assertThat(stuck.stuck()).isTrue();
    double over = ExtractScale.platoFromSg(1.010);
    assertThat(FermentationState.state(12, over, over + 0.1, over, 48, 20).steady()).isTrue();
    assertThat(FermentationState.state(12, over, over + 0.1, over, 40, 20).steady()).isFalse();
    double high = ExtractScale.platoFromSg(1.0112);
    assertThat(FermentationState.state(12, over, high, over, 48, 20).steady()).isFalse();
  }

  /// Done is all three: a chance above 95 % that less than 2 % is left, two readings two days apart
  /// that stand together, and a clean smell. A beer that stands far too high is never done.
  @Test
  void aFermentationIsDoneWhenCurveSpindleAndNoseAgree() {
    String over = "24:9.1 48:4.7 72:3.0 96:2.8 144:2.75";
    var done = over(over, "clean");
    assertThat(done.littleLeftChanceFrac()).isGreaterThan(0.95);
    assertThat(done.done() && done.steady()).isTrue();
    assertThat(over(over, "buttery").done()).isFalse();
    assertThat(over(over, "untested").done()).isFalse();
    assertThat(over("24:9.1 48:4.7 72:3.6 110:2.8 144:2.75", "clean").done()).isFalse();
    assertThat(over("24:9.1 48:4.7 72:3.0 96:2.8 120:3.3 144:2.75", "clean").steady()).isFalse();
    assertThat(over("24:9.1 48:4.7 72:3.6 96:2.8:float 144:2.75", "clean").steady()).isFalse();
    var early = over("24:9.1 48:4.7 60:3.5", "clean");
    assertThat(early.littleLeftChanceFrac()).isLessThan(0.2);
    assertThat(early.done()).isFalse();
    var high = over("24:9.5 48:6.8 72:6.0 120:6.0 168:6.0 216:6.0", "clean");
    assertThat(high.steady() && high.endsHigh()).isTrue();
    assertThat(high.done()).isFalse();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> over(over, "nice"))
        .withMessageContaining("nice");
  }

  private static FermentationState.Over over(String readings, String diacetyl) {
    return FermentationState.over(12, 20, readings, diacetyl, 0.15, 0.77, 0.04);
  }

  /// 20 L of 12 P: 180, 240 and 360 thousand million cells, 10 to 22 g of dried yeast.
  @Test
  void yeastIsPitchedByHabit() {
    Pitching.Habit habit = Pitching.habits(20, 12);
    assertThat(habit.aleCount()).isCloseTo(180e9, within(1.0));
    assertThat(habit.eitherCount()).isCloseTo(240e9, within(1.0));
    assertThat(habit.lagerCount()).isCloseTo(360e9, within(1.0));
    assertThat(Pitching.driedForWortG(20, 12, 0.75e6, 10e9, 0.95)).isBetween(10.0, 22.0);
  }

  /// Kirsop's classes: half of air's share, air, pure oxygen.
  @Test
  void theClassesOfOxygenAreThoseOfAirAndOxygen() {
    Oxygen.Demand demand = Oxygen.demand();
    double air = Oxygen.wortMgPerL(20, 12, 101.325, 0.016);
    assertThat(demand.ordinaryMgPerL()).isCloseTo(air, within(0.6));
    assertThat(demand.frugalMgPerL()).isCloseTo(air / 2, within(0.4));
    assertThat(demand.demandingMgPerL())
        .isCloseTo(air * Oxygen.pureOverAirRatio(0.20946), within(5.0));
  }

  @Test
  void hotWaterCountsFromItsColdestPointAndItsTime() {
    assertThat(Pasteurisation.circuit(77, 5).enough()).isTrue();
    assertThat(Pasteurisation.circuit(76.9, 60).enough()).isFalse();
    Pasteurisation.Circuit soon = Pasteurisation.circuit(80, 2);
    assertThat(soon.enough()).isFalse();
    assertThat(soon.stillMin()).isCloseTo(3, within(1e-9));
    // The food code's half minute at 77 C is 140 units.
    assertThat(Pasteurisation.circuit(77, 0.5).doseNumber()).isCloseTo(140, within(0.1));
  }

  /// A litre of 2 % caustic holds 20 g; the stock of 50 % holds 765 g in a litre.
  @Test
  void cleanerIsDilutedByMass() {
    double ml = Sanitiser.cleanerMlPerL(0.5, 0.02, 1.53);
    assertThat(ml / 1000 * 1530 * 0.5).isCloseTo(20, within(1e-6));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Sanitiser.cleanerMlPerL(0.02, 0.5, 1.02))
        .withMessageContaining("wanted strength");
  }

  /// H 50, D 60, A 45: 9 kg has an index of 1.19.
  @Test
  void aLoadIsHeldAgainstItsOwnLift() {
    assertThat(Lifting.loadIndexRatio(9, 0.5, 0.9, 0.6, 45, 1, 0.9)).isCloseTo(1.19, within(0.01));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Lifting.loadIndexRatio(9, 0.7, 0.9, 0.6, 0, 1, 0.9))
        .withMessageContaining("limit");
  }

  /// 158.6 kcal in 355 mL of a beer from 12 P that ended at 2.5 P.
  @Test
  void theGravitiesAloneTellTheEnergy() {
    assertThat(FoodEnergy.fromGravities(12, 2.5, 355).glassKcal()).isCloseTo(158.6, within(0.2));
  }

  /// Warm, the compilation agrees with the law for cold water; cold, it falls short by a tenth.
  @Test
  void theCompiledConstantOfCarbonDioxideIsNotForColdBeer() {
    for (double waterC = 15; waterC <= 30; waterC += 5) {
      double weiss = CarbonDioxide.waterGPerL(waterC, 101.325);
      assertThat(CarbonDioxide.compiledGPerL(waterC, 101.325))
          .isCloseTo(weiss, within(0.03 * weiss));
    }
    assertThat(CarbonDioxide.compiledGPerL(0, 101.325))
        .isLessThan(0.92 * CarbonDioxide.waterGPerL(0, 101.325));
  }

  /// 5 kg of 10 Lovibond in 20 L are 20.9 units; the power law of those, 11.99 SRM.
  @Test
  void aGristsColourIsThatOfItsUnits() {
    double units = 5 * 2.20462262 * 10 / (20 / 3.785411784);
    assertThat(Colour.ofMaltSrm(5, 10, 20))
        .isCloseTo(1.4922 * Math.pow(units, 0.6859), within(1e-6));
  }

  /// A sack of 25 kg of crushed malt fills a bin of 50 L (common practice, no source).
  @Test
  void aSackOfGristFillsABin() {
    assertThat(MashVolume.gristL(25, 0.52)).isBetween(45.0, 52.0);
    assertThat(Absorption.residue(100).hopsMostKg()).isCloseTo(1.4, within(1e-9));
    assertThat(Absorption.residue(100).trubLeastKg()).isCloseTo(0.21, within(1e-9));
  }
}
