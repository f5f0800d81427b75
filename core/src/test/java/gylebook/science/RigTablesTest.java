package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Whole tables that another program printed for one reference kettle (42 cm wide, 5500 W, bag of
/// 38 cm, 2 m of hose 12.7/19.05 mm), where the reference rows hold only some of their cells; and
/// what the tables teach.
class RigTablesTest {
  private static final double SEA_KPA = 101.325;
  private static final double WALL_W_PER_K = 1 / (1.0 / 350 + 1 / (6 * 0.62));
  private static final double INSIDE_M2 = 0.113;
  private static final double OUTSIDE_M2 = 0.0255;

  /// Altitude in m, air in kPa, boiling point of water.
  @Test
  void theAirThinsAndTheBoilCoolsAsTabulated() {
    double[][] table = {
      {0, 101.33, 99.97},
      {250, 98.36, 99.14},
      {500, 95.46, 98.31},
      {640, 93.87, 97.85},
      {1000, 89.88, 96.65},
      {1500, 84.56, 94.98},
      {2000, 79.50, 93.32},
      {2500, 74.69, 91.65},
      {3000, 70.12, 89.98}
    };
    for (double[] row : table) {
      double air = Atmosphere.stationKpa(row[0]);
      assertThat(air).isCloseTo(row[1], within(0.006));
      assertThat(Saturation.boilingC(air)).isCloseTo(row[2], within(0.006));
    }
    // Read backwards: 96.0 C is 87.77 kPa, 1195 m.
    assertThat(Saturation.saturationKpa(96)).isCloseTo(87.77, within(0.006));
    assertThat(Atmosphere.altitudeM(87.77)).isCloseTo(1195, within(2.0));
  }

  /// The trap: a weather report's pressure is reduced to the sea. Taken as it stands at 640 m it
  /// would let the boil lie two kelvins too high.
  @Test
  void aWeatherReportIsNotTheStationsPressure() {
    double station = Atmosphere.stationKpa(101.325, 640);
    assertThat(station).isCloseTo(93.87, within(0.006));
    assertThat(Saturation.boilingC(101.325) - Saturation.boilingC(station)).isBetween(2.0, 2.3);
  }

  /// T; evaporation kg/h and W; surface W; wall W; total open; total with the lid on.
  @Test
  void holdingAnOpenKettleTakesWhatIsTabulated() {
    double[][] table = {
      {66, 382, 70, 169, 621, 234},
      {80, 776, 91, 221, 1089, 321},
      {90, 1233, 107, 258, 1597, 395},
      {96, 1602, 116, 280, 1998, 444},
      {99, 1820, 120, 291, 2231, 471}
    };
    for (double[] row : table) {
      HoldingPower.Holding open =
          HoldingPower.openW(row[0], 0.42, 20, 0.5, SEA_KPA, 11, WALL_W_PER_K);
      assertThat(open.evaporationW()).as("%s C", row[0]).isCloseTo(row[1], within(0.005 * row[1]));
      assertThat(open.surfaceW()).as("%s C", row[0]).isCloseTo(row[2], within(0.6));
      assertThat(open.wallW()).as("%s C", row[0]).isCloseTo(row[3], within(0.6));
      assertThat(open.totalW()).as("%s C", row[0]).isCloseTo(row[4], within(0.005 * row[4]));
      HoldingPower.Holding lid =
          HoldingPower.lidW(row[0], 0.42, 20, 0.5, SEA_KPA, 0.06, WALL_W_PER_K);
      assertThat(lid.totalW()).as("%s C", row[0]).isCloseTo(row[5], within(0.01 * row[5]));
    }
  }

  /// 2.0 kW let an open kettle steam at 96 C and never boil at the sea; 2.2 kW are the least.
  @Test
  void lessThanTwoKilowattsNeverBoilAnOpenKettle() {
    double stands =
        Root.between(
            60,
            99,
            c -> HoldingPower.openW(c, 0.42, 20, 0.5, SEA_KPA, 11, WALL_W_PER_K).totalW() - 2000);
    assertThat(stands).isCloseTo(96, within(0.1));
    assertThat(HoldingPower.openW(99, 0.42, 20, 0.5, SEA_KPA, 11, WALL_W_PER_K).totalW())
        .isGreaterThan(2200);
  }

  /// Flow L/min; drop in still air; in a draught; delay.
  @Test
  void theHoseExplainsHalfAKelvinOnlyWhereItHardlyFlows() {
    double[][] table = {
      {8, 0.11, 0.18, 1.9},
      {4, 0.22, 0.35, 3.8},
      {2, 0.44, 0.70, 7.6},
      {1, 0.87, 1.36, 15},
      {0.5, 1.64, 2.51, 30},
      {0.25, 3.19, 4.83, 61}
    };
    for (double[] row : table) {
      double flow = row[0] / 60;
      double still = HoseHeat.dropK(0.0127, 0.01905, 2, flow, 66, 20);
      assertThat(still).as("%s", row[0]).isCloseTo(row[1], within(0.006 + 0.01 * row[1]));
      assertThat(HoseHeat.draughtDropK(0.0127, 0.01905, 2, flow, 66, 20, 25))
          .as("%s", row[0])
          .isCloseTo(row[2], within(0.006 + 0.01 * row[2]));
      assertThat(HoseHeat.delaySec(0.0127, 2, flow)).isCloseTo(row[3], within(0.02 * row[3]));
      // The trap: kelvins between return and kettle are no hose at a healthy flow.
      assertThat(still < 0.5).isEqualTo(row[0] >= 2);
    }
  }

  /// Head in mm for five permeabilities and four flows, 20 cm of bed.
  @Test
  void theBedTakesTheHeadThatIsTabulated() {
    double[] permeability = {5e-10, 2e-10, 1e-10, 5e-11, 2e-11};
    double[] flow = {1, 2, 4, 8};
    double[][] head = {
      {4, 8, 16, 32}, {10, 20, 40, 80}, {20, 40, 80, 160}, {40, 80, 160, 321}, {100, 200, 401, 802}
    };
    for (int i = 0; i < permeability.length; i++) {
      for (int j = 0; j < flow.length; j++) {
        double ours =
            1000 * BedFlow.headM(flow[j] / 60, 0.20, INSIDE_M2, permeability[i], 7e-4, 1.05);
        assertThat(ours).isCloseTo(head[i][j], within(0.6));
      }
    }
    assertThat(BedFlow.permeabilityM2(0.0005, 0.40)).isCloseTo(2.5e-10, within(0.05e-10));
    assertThat(BedFlow.permeabilityM2(0.001, 0.40)).isCloseTo(1e-9, within(0.02e-9));
  }

  /// The outside takes nearly the whole fall: 80 mm lower it by 65 and lift the inside by 15. An
  /// overflow's crest that stands 80 mm high for them would bare the element.
  @Test
  void theRingRoundTheBagTakesNearlyTheWholeFall() {
    assertThat(1000 * Levels.outsideFallM(0.080, INSIDE_M2, OUTSIDE_M2)).isCloseTo(65, within(0.5));
    assertThat(1000 * Levels.insideRiseM(0.080, INSIDE_M2, OUTSIDE_M2)).isCloseTo(15, within(0.5));
    assertThat(1000 * Overflow.highestCrestM(0.330, 0.110, INSIDE_M2, OUTSIDE_M2))
        .isCloseTo(50, within(0.5));
    double most = Overflow.bedHeadM(0.080, INSIDE_M2, OUTSIDE_M2);
    assertThat(Levels.coverLeftM(0.330, 0.110, most, INSIDE_M2, OUTSIDE_M2)).isNegative();
    assertThat(1000 * Overflow.headM(8.0 / 60, 0.020, 0.6)).isCloseTo(25.5, within(0.1));
  }

  /// Level 0.40 m, loss 0.10 m: sea level and 1500 m.
  @Test
  void thePumpHasPlentyInTheMashAndOnlyItsLevelAtTheBoil() {
    double high = Atmosphere.stationKpa(1500);
    double[][] table = {{66, 7.7, 6.1}, {80, 5.7, 4.0}, {90, 3.4, 1.7}, {95, 2.0, 0.30}};
    for (double[] row : table) {
      double density = row[0] < 70 ? 1.03 : 1.02;
      assertThat(Suction.npshAtM(row[0], SEA_KPA, 0.40, 0.10, density))
          .isCloseTo(row[1], within(0.06));
      assertThat(Suction.npshAtM(row[0], high, 0.40, 0.10, density))
          .isCloseTo(row[2], within(0.06));
    }
    assertThat(1000 * Suction.vortexM(8.0 / 60, 0.0127)).isCloseTo(100, within(1.0));
  }

  /// At mash speeds Ergun's inertia is nothing: Darcy is enough.
  @Test
  void inertiaInTheBedIsNothingAtTheSpeedOfAMash() {
    double speed = 4.0 / 60 / 1000 / INSIDE_M2;
    double whole = BedFlow.ergunPaPerM(0.0005, 0.40, speed, 1050, 7e-4);
    double slow = BedFlow.ergunPaPerM(0.0005, 0.40, speed / 1000, 1050, 7e-4) * 1000;
    assertThat(whole / slow - 1).isBetween(0.0, 0.02);
  }

  /// 315 s at 4 L/min, 21 min at 1 L/min.
  @Test
  void theBedIsHeatedByItsFlowAlone() {
    assertThat(BedFlow.timeConstantSec(8.5, 1650, 18, 4000, 4.0 / 60, 0.98, 4186))
        .isCloseTo(315, within(2.0));
    assertThat(BedFlow.timeConstantSec(8.5, 1650, 18, 4000, 1.0 / 60, 0.98, 4186) / 60)
        .isCloseTo(21, within(0.2));
  }

  /// 20 K while it ramps at 5500 W, 1 K while it holds at 290 W, in 4 L/min: a dial beside the
  /// element may read 4 K high on the ramp, and while holding it is the dial.
  @Test
  void aDialThatReadsHighWhileHoldingIsNotInAHotPlace() {
    assertThat(Element.streamRiseK(5500, 4.0 / 60, 0.98, 4186)).isCloseTo(20, within(0.2));
    double holding = Element.streamRiseK(290, 4.0 / 60, 0.98, 4186);
    assertThat(holding).isCloseTo(1, within(0.1));
    assertThat(holding).isLessThan(4.3 / 3);
  }

  /// 20 mm of a 6 mm tube (wall 0.5 mm, k 16): 0.0017 in moving liquid, 0.21 in still; a rod of 6
  /// mm, 40 mm deep, h 300: 0.0036. A short probe in a dead T-piece reads low by 9 K of 45.
  @Test
  void aShortProbeInStillLiquidReadsItsHead() {
    double moving = StemConduction.tubeFrac(0.006, 0.0005, 0.020, 1000, 16);
    double still = StemConduction.tubeFrac(0.006, 0.0005, 0.020, 100, 16);
    assertThat(moving).isCloseTo(0.0017, within(0.0002));
    assertThat(still).isCloseTo(0.21, within(0.005));
    assertThat(45 * still).isBetween(9.0, 10.0);
    // A textbook's thermometer well: 20 mm outside, 18.8 mm inside, 34.4 mm deep for 0.5 %.
    assertThat(StemConduction.stemFrac(0.020, 1 - 0.94 * 0.94, 0.0344, 300, 17))
        .isCloseTo(0.0050, within(0.00005));
    assertThat(StemConduction.stemFrac(0.006, 0.5, 0.040, 300, 16))
        .isCloseTo(0.0036, within(0.0002));
  }

  /// A probe of 6 mm shows nine tenths after 23.2 s in water and 121 s in air.
  @Test
  void aProbeThatFellDryIsSlow() {
    double wet = SensorLag.lagSec(23.2, 0.9);
    double dry = SensorLag.lagSec(121, 0.9);
    assertThat(wet).isCloseTo(10, within(0.2));
    assertThat(dry / wet).isGreaterThan(5);
    // By its halves, 10.4 and 46.8 s, it is slower still, so no first-order probe quite.
    assertThat(SensorLag.lagSec(10.4, 0.5)).isBetween(wet, 1.6 * wet);
  }

  /// A window of 2 s at half duty ripples 0.013 K.
  @Test
  void whatTheControllerHardlyNotices() {
    assertThat(StepTest.rippleK(5500, 0.5, 2, 205_000)).isCloseTo(0.013, within(0.0005));
  }

  /// IEC 60751 at 66 C; ITS-90 voltages there.
  @Test
  void whatClassesPromiseAtMashTemperature() {
    assertThat(Pt100.aaLimitK(66)).isCloseTo(0.21, within(0.005));
    assertThat(Pt100.aLimitK(66)).isCloseTo(0.28, within(0.005));
    assertThat(Pt100.bLimitK(66)).isCloseTo(0.63, within(0.005));
    assertThat(Thermocouple.kTypeMv(66)).isCloseTo(2.6852, within(1e-4));
    assertThat(Thermocouple.tTypeMv(66)).isCloseTo(2.7316, within(1e-4));
    // A gain fault that explains 2.05 K at 98 C and none at 66 is 2.6 times the class's limit.
    assertThat(2.05 / Pt100.bLimitK(98)).isCloseTo(2.6, within(0.05));
  }

  /// Nine values of Shah's table (2014) for a quiet pool at 50 % humidity, as a public model of
  /// pools has them: kg/(h m2) by the water's and the air's temperature.
  @ParameterizedTest
  @CsvSource({
    "28, 28, 0.1360",
    "28, 29, 0.1171",
    "28, 30, 0.0968",
    "29, 28, 0.1651",
    "29, 29, 0.1463",
    "29, 30, 0.1268",
    "30, 28, 0.1959",
    "30, 29, 0.1771",
    "30, 30, 0.1575"
  })
  void evaporationIsThatOfShahsTable(double waterC, double roomC, double kgPerM2Hr) {
    assertThat(3600 * Evaporation.openKgPerM2Sec(waterC, roomC, 0.5, 101.325))
        .isCloseTo(kgPerM2Hr, within(0.0003));
  }
}
