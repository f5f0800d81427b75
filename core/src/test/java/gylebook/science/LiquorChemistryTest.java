package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.Species.Master;
import gylebook.testing.Cases;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.openscience.cdk.interfaces.IMolecularFormula;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;

/// Laws of the speciation, the traps of water treatment, and the rest of what PHREEQC said.
final class LiquorChemistryTest {
  private static TapWater.Heated testWaterAt(double heatedC) {
    return TapWater.heated(50, 10, 20, 80, 100, 7.8, heatedC);
  }

  /// Oracle: USGS PHREEQC with phreeqc.dat (December 2025), the test water of the reference rows.
  @Test
  void theTestWaterAgreesWithPhreeqcColdAndHot() {
    TapWater.Analysed cold = TapWater.analysed(50, 10, 20, 80, 100, 7.8);
    assertThat(cold.bicarbonateMmolPerKg()).isCloseTo(1.958, within(0.003));
    assertThat(cold.dioxideMmolPerKg()).isCloseTo(0.0643, within(0.0003));
    assertThat(cold.sulfatePairMmolPerKg()).isCloseTo(0.0623, within(0.0005));
    assertThat(cold.strengthMolPerKg()).isCloseTo(0.00625, within(0.00002));
    assertThat(cold.indexNumber()).isCloseTo(0.105, within(0.003));
    assertThat(testWaterAt(66).closedPh()).isCloseTo(7.613, within(0.003));
    assertThat(testWaterAt(66).closedIndexNumber()).isCloseTo(0.49, within(0.01));
    assertThat(testWaterAt(66).openPh()).isCloseTo(8.628, within(0.003));
    assertThat(testWaterAt(66).limedPh()).isCloseTo(8.127, within(0.003));
    assertThat(testWaterAt(66).limedCalciumMmolPerKg()).isCloseTo(0.503, within(0.003));
    assertThat(testWaterAt(80).closedPh()).isCloseTo(7.581, within(0.003));
    assertThat(testWaterAt(80).closedIndexNumber()).isCloseTo(0.63, within(0.01));
  }

  /// Two figures of the same oracle; our law of conductance carries no factor fitted to them.
  @Test
  void conductanceAgreesWithPhreeqcWithinItsDoubt() {
    assertThat(TapWater.analysed(50, 10, 20, 80, 100, 7.8).conductanceUsPerCm())
        .isCloseTo(449, within(0.01 * 449));
    assertThat(TapWater.salted(0.3, 0.2, 0, 0, 0).conductanceUsPerCm())
        .isCloseTo(705, within(0.01 * 705));
  }

  /// Dielectric constants of water, CRC Handbook of Chemistry and Physics, from memory.
  @ParameterizedTest
  @CsvSource({"0, 87.90", "25, 78.36", "60, 66.73", "100, 55.51"})
  void theDielectricConstantAgreesWithTheHandbook(double waterC, double expected) {
    assertThat(DebyeHuckel.dielectric(Arrhenius.absoluteKelvin(waterC)))
        .isCloseTo(expected, within(0.3));
  }

  @Test
  void chargesMassesAndEquilibriaClose() {
    Cases.each(
        60,
        random -> {
          Map<Master, Double> totals = liquor(random);
          double waterC = random.nextDouble(0, 100);
          Speciation.Solution solution = new Speciation(waterC).closed(totals);
          assertThat(solution.charge()).isCloseTo(0, within(1e-10));
          totals.forEach(
              (master, total) ->
                  assertThat(solution.total(master))
                      .as(master.name())
                      .isCloseTo(total, within(1e-10)));
        });
  }

  @Test
  void moreAcidNeverRaisesThePh() {
    Cases.each(
        40,
        random -> {
          double alkalinity = random.nextDouble(0, 400);
          double acid = random.nextDouble(0, 6);
          double more = acid + random.nextDouble(0.01, 3);
          assertThat(TapWater.lacticPh(60, 12, 25, 70, alkalinity, 7.6, more))
              .isLessThan(TapWater.lacticPh(60, 12, 25, 70, alkalinity, 7.6, acid));
          assertThat(CarbonateWater.closedPh(25, 2, more))
              .isLessThan(CarbonateWater.closedPh(25, 2, acid));
        });
  }

  @Test
  void anAnalysisGoesThereAndBack() {
    Cases.each(
        40,
        random -> {
          double ph = random.nextDouble(6.2, 9);
          TapWater.Heated same = TapWater.heated(45, 8, 30, 60, 140, ph, 25);
          assertThat(same.closedPh()).isCloseTo(ph, within(1e-6));
          assertThat(same.limedAlkalinityMeqPerKg()).isLessThanOrEqualTo(140 / 50.043 + 1e-9);
        });
  }

  private static Map<Master, Double> liquor(RandomGenerator random) {
    Map<Master, Double> totals = new EnumMap<>(Master.class);
    for (Master master : Master.values()) {
      totals.put(master, random.nextDouble(1e-5, 4e-3));
    }
    return totals;
  }

  /// Oracle: the molar masses of cdk-formula 2.9; atomic weights are abridged, hence 0.012.
  @ParameterizedTest
  @EnumSource(Salt.class)
  void molarMassesAgreeWithAChemistryLibrary(Salt salt) {
    double expected = 0;
    for (String portion : salt.formula().split("\\.", -1)) {
      int count = Character.isDigit(portion.charAt(0)) ? portion.charAt(0) - '0' : 1;
      String formula = Character.isDigit(portion.charAt(0)) ? portion.substring(1) : portion;
      expected += count * libraryMass(formula);
    }
    assertThat(AtomicWeights.molarGPerMol(salt.formula())).isCloseTo(expected, within(0.012));
  }

  private static double libraryMass(String formula) {
    IMolecularFormula parsed =
        MolecularFormulaManipulator.getMolecularFormula(
            formula.replace("Ca(OH)2", "CaH2O2"), SilentChemObjectBuilder.getInstance());
    return MolecularFormulaManipulator.getMass(parsed, MolecularFormulaManipulator.MolWeight);
  }

  /// A salt is neutral: its ions carry no charge together, apart from what counts as alkalinity.
  @ParameterizedTest
  @EnumSource(Salt.class)
  void theIonsOfASaltBalance(Salt salt) {
    Salt.Ions ions = salt.ionsOf(1);
    double positive =
        ions.calciumMgPerL() / 20.039
            + ions.magnesiumMgPerL() / 12.1525
            + ions.sodiumMgPerL() / 22.990;
    double negative =
        ions.chlorideMgPerL() / 35.45 + ions.sulfateMgPerL() / 48.028 + ions.alkalinityMeqPerL();
    assertThat(negative).isCloseTo(positive, within(1e-2));
  }

  /// Kolbach's slope is for cast wort: the mash of the worked case moves by much less or more, by
  /// its own buffer, and the two are different functions.
  @Test
  void kolbachsSlopeIsNotTheSlopeOfTheMash() {
    double castWort = ResidualAlkalinity.castWortShiftPh(2) - ResidualAlkalinity.castWortShiftPh(1);
    double thin = MashPh.mashPh(5, 5.7, 40, 20, 2, 0, 0) - MashPh.mashPh(5, 5.7, 40, 20, 1, 0, 0);
    double thick = MashPh.mashPh(5, 5.7, 40, 10, 2, 0, 0) - MashPh.mashPh(5, 5.7, 40, 10, 1, 0, 0);
    assertThat(thin).isCloseTo(0.1, within(1e-9));
    assertThat(thick).isCloseTo(thin / 2, within(1e-9));
    assertThat(castWort).isCloseTo(0.0841, within(0.001));
  }

  @Test
  void aGristOfStraightBuffersIsTheWeightedMean() {
    Cases.each(
        100,
        random -> {
          MashPh.Malt pale =
              MashPh.Malt.straight(
                  random.nextDouble(1, 8), random.nextDouble(5.5, 5.9), random.nextDouble(25, 50));
          MashPh.Malt dark =
              MashPh.Malt.straight(
                  random.nextDouble(0.1, 1), random.nextDouble(4.4, 5), random.nextDouble(25, 70));
          double liquorMeq = random.nextDouble(-20, 40);
          double paleMeq = pale.maltKg() * pale.bufferMeqPerKgPh();
          double darkMeq = dark.maltKg() * dark.bufferMeqPerKgPh();
          double expected =
              (paleMeq * pale.maltPh() + darkMeq * dark.maltPh() + liquorMeq) / (paleMeq + darkMeq);
          assertThat(MashPh.gristPh(List.of(pale, dark), liquorMeq))
              .isCloseTo(expected, within(1e-9));
        });
  }

  /// The acid asked for brings the mash to where it was asked for.
  @Test
  void acidForAMashGoesThereAndBack() {
    double residual = ResidualAlkalinity.residualMeqPerL(1, 2.5, 0.4);
    double acidMeq = MashPh.acidMeq(5, 5.7, 40, 20, residual, 5.4);
    double ph = MashPh.gristPh(List.of(MashPh.Malt.straight(5, 5.7, 40)), 20 * residual - acidMeq);
    assertThat(ph).isCloseTo(5.4, within(1e-9));
  }

  @Test
  void boilingKeepsTheExtract() {
    Boil.Boiled boiled = Boil.concentrated(27, 11, 3);
    double before = 27 * WortDensity.wortKgPerL(0.11, 20) * 0.11;
    double after =
        boiled.boiledL()
            * WortDensity.wortKgPerL(boiled.boiledPlato() / 100, 20)
            * boiled.boiledPlato()
            / 100;
    assertThat(after).isCloseTo(before, within(1e-9));
    // Worked value of the reference sheet.
    assertThat(boiled.boiledPlato()).isCloseTo(12.313, within(0.002));
    assertThat(Boil.evaporationKgPerHr(1000, 0.2, 300, 101.325)).isZero();
  }

  @Test
  void nonsenseIsRefusedWithItsName() {
    assertThatThrownBy(() -> TapWater.analysed(Double.NaN, 10, 20, 80, 100, 7.8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("calcium");
    assertThatThrownBy(() -> MashPh.mashPh(5, Double.NaN, 40, 20, 1, 2, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> AtomicWeights.molarGPerMol("Unobtainium"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Unobtainium");
    assertThatThrownBy(() -> Salt.of("NaOH")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> CarbonateWater.closedPh(120, 2, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
