package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/// What must hold for any rig: directions, limits, ways back, and the traps of the sources.
class RigLawsTest {
  private static final double KPA = 101.325;

  @Test
  void hotterWaterEvaporatesMoreAndDamperRoomsTakeLess() {
    Cases.each(
        200,
        random -> {
          double waterC = random.nextDouble(30, 97);
          double humid = random.nextDouble(0, 0.9);
          double here = Evaporation.openKgPerM2Sec(waterC, 20, humid, KPA);
          assertThat(Evaporation.openKgPerM2Sec(waterC + 1, 20, humid, KPA)).isGreaterThan(here);
          assertThat(Evaporation.openKgPerM2Sec(waterC, 20, humid + 0.1, KPA)).isLessThan(here);
        });
  }

  @Test
  void evaporationIsNothingInAWarmDampRoomAndRefusedAtTheBoil() {
    assertThat(Evaporation.openKgPerM2Sec(10, 30, 1, KPA)).isZero();
    assertThatThrownBy(() -> Evaporation.openKgPerM2Sec(100.5, 20, 0.5, KPA))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must stay below the air pressure");
  }

  /// The pool reference prints 0.22 dT^(1/3) with SI units. Read as Btu/(h ft2 F) it agrees with
  /// the flat-top law; read as W/(m2 K) it would be a sixth of it.
  @Test
  void thePoolReferencesConvectionMakesSenseOnlyInItsOldUnits() {
    double oldUnits = 0.22 * Math.cbrt(46 * 1.8) * 5.678263;
    double asPrinted = 0.22 * Math.cbrt(46);
    double ours = WallHeat.topWPerM2K(1.2, 66, 20, KPA);
    assertThat(oldUnits / ours).isBetween(0.75, 1.35);
    assertThat(asPrinted / ours).isLessThan(0.25);
  }

  @Test
  void aBiggerFlowLosesLessInTheHose() {
    Cases.each(
        100,
        random -> {
          double flow = random.nextDouble(0.004, 0.12);
          double drop = HoseHeat.dropK(0.0127, 0.01905, 2, flow, 66, 20);
          assertThat(drop).isBetween(0.0, 46.0);
          assertThat(HoseHeat.dropK(0.0127, 0.01905, 2, 1.2 * flow, 66, 20)).isLessThan(drop);
        });
  }

  @Test
  void levelsConserveTheVolumeAndTheCrestBaresNothing() {
    Cases.each(
        200,
        random -> {
          double inside = random.nextDouble(0.02, 0.3);
          double outside = random.nextDouble(0.005, 0.1);
          double rest = random.nextDouble(0.15, 0.5);
          double head = random.nextDouble(0, 0.3);
          double fall = Levels.outsideFallM(head, inside, outside);
          double rise = Levels.insideRiseM(head, inside, outside);
          assertThat(fall * outside).isCloseTo(rise * inside, within(1e-12));
          assertThat(fall + rise).isCloseTo(head, within(1e-12));
          double crest = Overflow.highestCrestM(rest, 0.11, inside, outside);
          double most = Overflow.bedHeadM(crest, inside, outside);
          assertThat(Levels.coverLeftM(rest, 0.11, most, inside, outside))
              .isCloseTo(0, within(1e-12));
        });
  }

  @Test
  void anOverflowsHeadAndFlowLeadBackToEachOtherOnBothSidesOfTheChangeover() {
    Cases.each(
        200,
        random -> {
          double flow = random.nextDouble(0.001, 0.3);
          double head = Overflow.headM(flow, 0.020, 0.6);
          assertThat(Overflow.flowLPerSec(head, 0.020, 0.6)).isCloseTo(flow, within(1e-9));
        });
    double change = Overflow.changeoverM(0.020, 0.6);
    assertThat(Overflow.flowLPerSec(change * (1 - 1e-9), 0.020, 0.6))
        .isCloseTo(Overflow.flowLPerSec(change * (1 + 1e-9), 0.020, 0.6), within(1e-6));
  }

  @Test
  void aMeasuredHeadLeadsBackToThePermeability() {
    Cases.each(
        100,
        random -> {
          double k = Math.exp(random.nextDouble(Math.log(1e-11), Math.log(1e-9)));
          double head = BedFlow.headM(0.06, 0.2, 0.113, k, 7e-4, 1.05);
          assertThat(BedFlow.measuredPermeabilityM2(0.06, head, 0.2, 0.113, 7e-4, 1.05) / k)
              .isCloseTo(1, within(1e-12));
        });
  }

  /// Ergun (1952) and Carman (1937) share a viscous term but for 150 against 180.
  @Test
  void slowFlowFollowsKozenyAndCarman() {
    double slow = 1e-5;
    double darcy = 1e-3 * slow / BedFlow.permeabilityM2(5e-4, 0.4);
    assertThat(BedFlow.carmanPaPerM(5e-4, 0.4, slow, 1000, 1e-3) / darcy)
        .isCloseTo(1, within(0.01));
    assertThat(BedFlow.ergunPaPerM(5e-4, 0.4, slow, 1000, 1e-3) / darcy)
        .isCloseTo(150.0 / 180, within(0.01));
  }

  @Test
  void nothingButTheStaticHeadRemainsAtTheBoilAnywhere() {
    assertThat(Suction.npshAtM(99.9743, KPA, 0.40, 0.10, 1.0)).isCloseTo(0.30, within(0.01));
    assertThat(Suction.npshAtM(97, 84.556, 0.40, 0.10, 1.0)).isCloseTo(0.30, within(1e-12));
  }

  /// A handbook of sugar solutions (Bubnik): 12 % has 1.423 mPa s at 20 C, 0.588 at 66.67 C.
  @Test
  void wortThinsAsItWarms() {
    assertThat(WortViscosity.wortPaSec(0.12, 20)).isCloseTo(1.423e-3, within(1e-6));
    assertThat(WortViscosity.wortPaSec(0.12, 66.67)).isCloseTo(0.588e-3, within(1e-6));
  }

  @Test
  void probesLeadThereAndBack() {
    Cases.each(
        300,
        random -> {
          double cold = random.nextDouble(-200, 850);
          assertThat(Pt100.temperatureC(Pt100.resistanceOhm(cold))).isCloseTo(cold, within(1e-6));
          double hot = random.nextDouble(0, 400);
          assertThat(Thermocouple.kTypeC(Thermocouple.kTypeMv(hot))).isCloseTo(hot, within(1e-6));
          assertThat(Thermocouple.tTypeC(Thermocouple.tTypeMv(hot))).isCloseTo(hot, within(1e-6));
          double wort = random.nextDouble(0, 110);
          double ohm = Ntc.resistanceOhm(wort, 1.129148e-3, 2.34125e-4, 8.76741e-8);
          assertThat(Ntc.temperatureC(ohm, 1.129148e-3, 2.34125e-4, 8.76741e-8))
              .isCloseTo(wort, within(1e-8));
        });
  }

  /// NIST gives the inverse polynomial of type K a band of -0.05 to 0.04 K.
  @Test
  void thePublishedInverseOfTypeKStaysInItsBand() {
    assertThat(Thermocouple.kTypeC(0)).isCloseTo(0, within(1e-6));
    for (double t = 0; t <= 500; t += 1) {
      assertThat(Thermocouple.kPolynomialC(Thermocouple.kTypeMv(t)) - t).isBetween(-0.055, 0.045);
    }
  }

  @Test
  void eightyFiveIsAFaultUnlessItWasNearBefore() {
    assertThat(ChipThermometer.isFault(85.0, Double.NaN)).isTrue();
    assertThat(ChipThermometer.isFault(85.0, 20)).isTrue();
    assertThat(ChipThermometer.isFault(85.0, 84.5)).isFalse();
    assertThat(ChipThermometer.isFault(-127, 66)).isTrue();
    assertThat(ChipThermometer.isFault(Double.NaN, 66)).isTrue();
    assertThat(ChipThermometer.isFault(66, 20)).isFalse();
  }

  /// The rig sheet's worked case: the dial at 70.5 drops out, the other two remain.
  @Test
  void theLargestAgreeingSetLeavesTheDialOut() {
    List<Thermometers.Reading> all =
        List.of(
            new Thermometers.Reading(66.0, 0.40),
            new Thermometers.Reading(66.3, 0.37),
            new Thermometers.Reading(70.5, 1.5));
    assertThat(Thermometers.of(all).agree()).isFalse();
    assertThat(Thermometers.of(all).probabilityFrac()).isCloseTo(0.015, within(5e-4));
    assertThat(Thermometers.largestAgreeing(all)).isEqualTo(all.subList(0, 2));
  }

  @Test
  void theDescribingFunctionReadsTheUltimateGainASixthLow() {
    double described = RelayTest.describedGainPerK(2, 100, 15);
    double exact = RelayTest.ultimateGainPerK(2, 100, 15);
    assertThat(1 - described / exact).isBetween(0.16, 0.19);
  }

  /// Published factors of the lifting equation (CCOHS tables, from memory): reach 0.40 m 0.63,
  /// travel 0.40 m 0.93, height 0.30 m 0.87, twist 90 degrees 0.71.
  @Test
  void liftingFactorsMatchTheirPublishedTables() {
    assertThat(Lifting.limitKg(0.25, 0.75, 0.25, 0, 1, 1)).isCloseTo(23, within(1e-9));
    assertThat(Lifting.limitKg(0.40, 0.75, 0.25, 0, 1, 1) / 23).isCloseTo(0.63, within(0.006));
    assertThat(Lifting.limitKg(0.25, 0.75, 0.40, 0, 1, 1) / 23).isCloseTo(0.93, within(0.006));
    assertThat(Lifting.limitKg(0.25, 0.30, 0.25, 0, 1, 1) / 23).isCloseTo(0.87, within(0.006));
    assertThat(Lifting.limitKg(0.25, 0.75, 0.25, 90, 1, 1) / 23).isCloseTo(0.71, within(0.006));
    assertThat(Lifting.limitKg(0.64, 0.75, 0.25, 0, 1, 1)).isZero();
    assertThat(Lifting.limitKg(0.40, 0.90, 0.60, 0, 1, 0.90)).isCloseTo(11.1, within(0.1));
    assertThat(Lifting.limitKg(0.60, 0.90, 0.60, 0, 1, 0.90)).isCloseTo(7.4, within(0.1));
  }

  /// A children's hospital's table: 150 F 1.5 s, 130 F 30 s.
  @Test
  void hotterLiquidBurnsSooner() {
    assertThat(Scald.burnSec((150 - 32) / 1.8)).isCloseTo(1.5, within(0.01));
    assertThat(Scald.burnSec((130 - 32) / 1.8)).isCloseTo(30, within(0.1));
    Cases.each(
        100,
        random -> {
          double hot = random.nextDouble(0, 129);
          assertThat(Scald.burnSec(hot + 1)).isLessThan(Scald.burnSec(hot));
        });
  }

  @Test
  void noChillerGoesBelowItsWaterAndCounterflowBeatsParallel() {
    Cases.each(
        200,
        random -> {
          double units = random.nextDouble(0.01, 8);
          double ratio = random.nextDouble(0, 1);
          double counter = Chiller.counterflowFrac(units, ratio);
          assertThat(counter).isBetween(0.0, 1.0);
          assertThat(counter).isGreaterThanOrEqualTo(Chiller.parallelFrac(units, ratio));
          assertThat(Chiller.transferNumber(counter, ratio) / units).isCloseTo(1, within(1e-6));
          Chiller.Outlets out =
              Chiller.counterflow(
                  random.nextDouble(0.01, 0.1),
                  95,
                  random.nextDouble(0.01, 0.2),
                  12,
                  500,
                  4000,
                  4184);
          assertThat(out.wortC()).isBetween(12.0, 95.0);
          assertThat(out.waterC()).isBetween(12.0, 95.0);
        });
    assertThat(Chiller.counterflowFrac(3, 1 - 1e-10))
        .isCloseTo(Chiller.counterflowFrac(3, 1), within(1e-8));
  }

  @Test
  void whatIsNoNumberIsRefusedEverywhere() {
    List<DoubleUnaryOperator> functions =
        List.of(
            x -> Evaporation.openKgPerM2Sec(x, 20, 0.5, KPA),
            x -> Evaporation.openKgPerM2Sec(x, 66, 1, 20, KPA),
            x -> WallHeat.verticalWPerM2K(x, 64, 20, KPA),
            x -> Radiation.coefficientWPerM2K(x, 64, 20),
            x -> HoseHeat.dropK(0.0127, 0.01905, 2, x, 66, 20),
            x -> BedFlow.headM(0.06, 0.2, 0.113, x, 7e-4, 1.05),
            x -> Levels.outsideFallM(x, 0.113, 0.0255),
            x -> Overflow.flowLPerSec(x, 0.02, 0.6),
            x -> Suction.npshM(x, 26, 0.4, 0.1, 1.03),
            x -> Pt100.resistanceOhm(x),
            x -> Pt100.temperatureC(x),
            x -> Thermocouple.kTypeC(x),
            x -> ChipThermometer.temperatureC(x),
            x -> Lifting.limitKg(x, 0.9, 0.6, 0, 1, 0.9),
            x -> Scald.burnSec(x),
            x -> Chiller.counterflowFrac(x, 0.5),
            x -> Circuit.currentA(5500, x),
            x -> Element.powerW(5500, 240, x));
    for (DoubleUnaryOperator each : functions) {
      assertThatThrownBy(() -> each.applyAsDouble(Double.NaN))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
