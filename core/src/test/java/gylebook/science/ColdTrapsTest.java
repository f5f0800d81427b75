package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import gylebook.testing.Integrated;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.junit.jupiter.api.Test;

/// Traps of the cold side, and what was reckoned nowhere before: each against something from
/// outside, or against the mistake itself.
class ColdTrapsTest {
  private static final FermentationFit.Brew SURE = FermentationFit.Brew.of(12, 0);

  /// A copy in circulation ends C(2,3) in 933. That moves no printed digit of any table, so only
  /// the coefficient itself can tell: -2.170575700536993 (Council Directive 76/766/EEC, annex).
  @Test
  void theCoefficientWithTheWrongEndingIsNotOurs() throws ReflectiveOperationException {
    Field field = EthanolWater.class.getDeclaredField("MIXED_BY_WARMTH");
    field.setAccessible(true);
    double third = ((PolynomialFunction[]) field.get(null))[1].getCoefficients()[3];
    assertThat(third).isEqualTo(-2.170575700536993).isNotEqualTo(-2.170575700536933);
  }

  /// An excerpt prints the intercept of c as 1.99e-1. The paper's own means (table III) are 2.134
  /// to 2.239 for worts of 11.34 to 17.67 P.
  @Test
  void theInterceptThatIsPrintedATenthIsTakenWhole() {
    double[][] means = {{11.34, 2.134}, {12.75, 2.159}, {14.54, 2.187}, {17.67, 2.239}};
    for (double[] mean : means) {
      double ours = Cutaia2009.coefficients(mean[0]).differenceRatio();
      assertThat(ours).isCloseTo(mean[1], within(0.03));
      assertThat(0.199 + 0.0134 * mean[0]).isLessThan(0.3 * mean[1]);
    }
  }

  /// Public copies of the lager model divide by `k_s + E` as well as by `k_s + S`. Published for
  /// `k_s + S` at 12 C after 72 h: 48.7364 g/L of sugar, 4.6528 of active yeast.
  @Test
  void theOtherCopyOfTheLagerModelGivesAnotherBeer() {
    DeAndresToro1998.Tank ours = DeAndresToro1998.tank(12, 72, 130, 1.92, 0.08, 2);
    assertThat(ours.sugarGPerL()).isCloseTo(48.7364, within(1e-3));
    FixedStep.Slope slope = DeAndresToro1998.slope(12, 130);
    double hunger = Math.exp(-119.63 + 34203.95 / 285.15);
    FixedStep.Slope other =
        x -> {
          double[] there = slope.at(x);
          // Both terms of eating hold S/(k_s + S): exchange it for S/(k_s + E).
          double exchange = (hunger + Math.max(0, x[3])) / (hunger + x[4]);
          there[3] *= exchange;
          there[4] *= exchange;
          return there;
        };
    double[] copy = FixedStep.after(new double[] {1.92, 0.08, 2, 130, 0, 0, 0}, 72, 0.02, other);
    assertThat(Math.abs(copy[3] - 48.7364)).isGreaterThan(5);
  }

  /// Two editions of the steam tables differ at 20 C: 0.5980 (IAPWS 2011) and 0.5995 W/(m K).
  @Test
  void waterConductsAsTheNewerTablesHaveIt() {
    double ours = TubeFilm.conductivityWPerMK(20);
    assertThat(ours).isCloseTo(0.5980, within(0.0007));
    assertThat(Math.abs(ours - 0.5980)).isLessThan(Math.abs(ours - 0.5995));
  }

  /// 219 kJ a mole of glucose, 1.217 MJ/kg, goes round as the heat. Enthalpies of formation of
  /// dissolved glucose and alcohol and of the gas (-1262.2, -288.3, -393.5 kJ/mol) make 101 kJ,
  /// 0.563 MJ/kg; free energies (-917.2, -181.6, -394.4) make 235. Both sets are from memory.
  @Test
  void theFreeEnergyIsNotTheHeat() {
    double heat = (2 * 288.3 + 2 * 393.5 - 1262.2) / 180.156;
    double free = (2 * 181.6 + 2 * 394.4 - 917.2) / 180.156;
    assertThat(heat).isCloseTo(0.563, within(0.005));
    assertThat(free).isBetween(1.2, 1.32);
    // What the code takes when nothing is said, by its own rise: between glucose and maltose.
    double ours = FermentationHeat.riseK(10, 4050) * 4050 / 0.10 / 1e6;
    assertThat(ours).isBetween(heat, 0.66).isLessThan(0.55 * free);
    // 12 to 2.5 P by the rise with no heat lost: 11.3 K, not the 23 of the free energy.
    assertThat(FermentationHeat.riseK(7.65, 4050)).isCloseTo(11.3, within(0.1));
  }

  /// 6.7 W and 2 W/K: 3.3 K above the room.
  @Test
  void theRoomsThermometerIsNotTheBeers() {
    double peak = FermentationHeat.peakW(20.967, 9.5, 0.10, 1, 0.805);
    assertThat(peak).isCloseTo(6.7, within(0.1));
    assertThat(FermentationHeat.aboveRoomK(peak, 2)).isCloseTo(3.3, within(0.05));
    assertThatIllegalArgumentException().isThrownBy(() -> FermentationHeat.aboveRoomK(6.7, 0));
  }

  /// A reference work has 8.0 and 6.6 mg/L for 15 P at 10 and 20 C, from 10.9 and 8.9 of water;
  /// trade practice says 7.5 to 8 at 20 C. Between the ends lie both.
  @Test
  void theSourcesOfOxygenInWortStandSideBySide() {
    Oxygen.Disputed warm = Oxygen.disputed(20, 15, 101.325);
    assertThat(warm.leastMgPerL()).isCloseTo(6.6, within(0.1));
    assertThat(warm.mostMgPerL()).isBetween(7.5, 8.0);
    double water = Oxygen.waterMgPerL(10, 101.325);
    assertThat(Oxygen.disputed(10, 15, 101.325).leastMgPerL() / water)
        .isCloseTo(8.0 / 10.9, within(0.005));
    assertThat(warm.middleMgPerL() / warm.leastMgPerL()).isBetween(1.05, 1.1);
    assertThat(warm.mostMgPerL() / warm.middleMgPerL()).isBetween(1.05, 1.1);
    assertThat(Oxygen.disputed(20, 0, 101.325).mostMgPerL()).isEqualTo(warm(0));
  }

  private static double warm(double originalPlato) {
    return Oxygen.wortMgPerL(20, originalPlato, 101.325, 0.016);
  }

  /// 12 to 2.5 P makes 4.3 g/L of dry yeast, 85 million cells a mL, by Balling: between a starter
  /// that stands (76) and one that is stirred (133).
  @Test
  void aStartersSugarWeighsItsYeast() {
    double grown = Starter.byMassCount(0, 1, 9.5, 20e9);
    assertThat(grown / 1000).isCloseTo(85e6, within(1.5e6));
    assertThat(grown)
        .isBetween(Starter.grownCount(0, 1, 9.5, 8e6), Starter.grownCount(0, 1, 9.5, 14e6));
    assertThat(Starter.byMassCount(200e9, 1, 12, 20e9)).isEqualTo(250e9);
    assertThat(Starter.byMassCount(300e9, 1, 12, 20e9)).isEqualTo(300e9);
  }

  /// A maker has 75 to 85 % of a pack alive after 30 days at 4 C; slurry would be down to 60 %.
  @Test
  void aPackKeepsBetterThanSlurry() {
    assertThat(YeastAge.packagedFrac(1, 4, 30)).isBetween(0.75, 0.85);
    assertThat(YeastAge.storedFrac(1, 4, 30)).isLessThan(0.65);
    assertThat(YeastAge.driedFrac(1, 365)).isCloseTo(0.96, within(1e-9));
  }

  /// Cold water kills six of ten (a brewer's article of 2005), so the packet that was enough is
  /// not.
  @Test
  void wettingDriedYeastColdIsWorseThanStrewingIt() {
    Pitching.Alive alive = Pitching.alive();
    double warm = Pitching.driedForWortG(20, 12, 0.75e6, 10e9, alive.rehydratedFrac());
    double cold = Pitching.driedForWortG(20, 12, 0.75e6, 10e9, alive.coldWaterFrac());
    assertThat(cold).isGreaterThan(2.3 * warm);
    assertThat(alive.coldWaterFrac()).isLessThan(alive.strewnLeastFrac());
    assertThat(alive.strewnFrac()).isBetween(alive.strewnLeastFrac(), alive.strewnMostFrac());
  }

  /// Half as much yeast needs one doubling more: 0.8 ln 2 of thermal time, 5.5 h at 20 C.
  @Test
  void moreYeastIsSoonerHalfWayAndNotWithoutLimit() {
    assertThat(FermentationCurve.midpointNumber(1e6)).isEqualTo(3.2);
    double half = FermentationCurve.midpointNumber(0.5e6);
    assertThat((half - 3.2) / 0.10).isCloseTo(5.545, within(0.001));
    assertThat(FermentationCurve.midpointNumber(1e5)).isCloseTo(3.9, within(1e-12));
    assertThat(FermentationCurve.midpointNumber(1e7)).isCloseTo(2.5, within(1e-12));
  }

  /// Two days apart, as brewers read: a beer that keeps to the curve goes at the expected pace, and
  /// is not half as fast because its pace was taken at one moment.
  @Test
  void aBeerThatKeepsToTheCurveGoesAtItsPace() {
    Cases.each(
        200,
        random -> {
          double warm = random.nextDouble(10, 24);
          double first = random.nextDouble(20, 60);
          double between = random.nextDouble(2, 72);
          double earlier = FermentationCurve.extractPlato(12, 2.5, warm, first, 0.1, 3.2, 1);
          double later =
              FermentationCurve.extractPlato(12, 2.5, warm, first + between, 0.1, 3.2, 1);
          double ratio =
              FermentationState.state(12, 2.5, earlier, later, between, warm).rateRatio();
          if (earlier < 11.9 && earlier > 2.6) {
            assertThat(ratio).isCloseTo(1, within(1e-6));
          }
        });
  }

  /// The fit's own curve, then two readings that stand: that is slow. One that is mistyped is far
  /// off; honest scatter is neither.
  @Test
  void twoReadingsFarAboveTheForecastAreSlowAndOneMistypedIsFarOff() {
    FermentationFit.Fitted good = FermentationFit.fitted(SURE, fit(0, 0));
    assertThat(good.slow() || good.farOff()).isFalse();
    FermentationFit.Fitted stands = FermentationFit.fitted(SURE, fit(2.5, 2.5));
    assertThat(stands.slow()).isTrue();
    assertThat(FermentationFit.fitted(SURE, fit(0, 2.5)).slow()).isFalse();
    assertThat(FermentationFit.fitted(SURE, fit(-2, -2)).slow()).isFalse();
    List<FermentationReading> typed = new ArrayList<>(fit(0, 0));
    typed.set(1, new FermentationReading(36, 12.5));
    assertThat(FermentationFit.fitted(SURE, typed).farOff()).isTrue();
    assertThat(FermentationFit.fitted(SURE, typed.subList(0, 0)).slow()).isFalse();
  }

  /// Readings of a curve in the middle of the priors, the last two lifted; out of order.
  private static List<FermentationReading> fit(double thirdPlato, double lastPlato) {
    double[] hours = {24, 36, 48, 60, 84, 108};
    List<FermentationReading> readings = new ArrayList<>();
    for (int i = 0; i < hours.length; i++) {
      double curve = FermentationCurve.extractPlato(12, 2.76, 20, hours[i], 0.1, 3.2, 1);
      double off = i == 4 ? thirdPlato : i == 5 ? lastPlato : 0.1 * (i % 2 - 0.5);
      readings.add(new FermentationReading(hours[i], curve + off));
    }
    return List.copyOf(readings).reversed();
  }

  /// The same two steps written down once more, with the clock's own time, by an adaptive solver.
  @Test
  void diacetylInAFermentIsThatOfAnotherSolver() {
    for (double[] at : new double[][] {{20, 48}, {20, 168}, {12, 96}, {9, 300}, {25, 30}}) {
      Diacetyl.Course ours = Diacetyl.course(12, 2.5, at[0], at[1], 1, 1);
      double[] other = solved(at[0], at[1]);
      assertThat(ours.precursorMgPerL()).isCloseTo(other[0], within(1e-6));
      assertThat(ours.diketoneMgPerL()).isCloseTo(other[1], within(1e-6));
      assertThat(ours.extractPlato())
          .isCloseTo(
              FermentationCurve.extractPlato(12, 2.5, at[0], at[1], 0.1, 3.2, 1), within(1e-9));
    }
    assertThat(86.09 / 132.11).as("molar masses").isCloseTo(0.652, within(5e-4));
    // By a plain Runge-Kutta in another language: 0.5219 and 0.0218 mg/L after two days at 20 C.
    Diacetyl.Course twoDays = Diacetyl.course(12, 2.5, 20, 48, 1, 1);
    assertThat(twoDays.precursorMgPerL()).isCloseTo(0.52187, within(1e-5));
    assertThat(twoDays.diketoneMgPerL()).isCloseTo(0.021799, within(1e-6));
  }

  private static double[] solved(double fermentC, double hours) {
    double rate = 0.1 * Math.pow(2.2, (fermentC - 20) / 10);
    double split = 0.02 * Math.pow(3, (fermentC - 20) / 10);
    return Integrated.after(
        hours,
        5,
        new double[2],
        (t, y) -> {
          double grown = Math.exp(rate * t - 3.2);
          double falls = 9.5 * rate * grown / Math.pow(1 + grown, 2);
          return new double[] {
            0.10 * falls - split * y[0], 0.652 * split * y[0] - 15 * split * y[1]
          };
        });
  }

  /// What the ferment leaves, the rest goes on with: the closed form from there.
  @Test
  void afterTheFermentTheRestGoesOnInClosedForm() {
    Diacetyl.Course then = Diacetyl.course(12, 2.5, 18, 240, 1, 1);
    Diacetyl.Course later = Diacetyl.course(12, 2.5, 18, 300, 1, 1);
    double split = Diacetyl.splitPerHr(18);
    assertThat(later.diketoneMgPerL())
        .isCloseTo(
            Diacetyl.leftMgPerL(
                then.precursorMgPerL(), then.diketoneMgPerL(), 60, split, 15 * split, 0.652),
            within(1e-6));
    // Off its yeast nothing is taken up: what was leaked is all still there for a forced test.
    Diacetyl.Course bare = Diacetyl.course(12, 2.5, 18, 300, 1, 0);
    double fallen = FermentationCurve.extractPlato(12, 2.5, 18, 0, 0.1, 3.2, 1) - 2.5;
    assertThat(bare.forcedMgPerL()).isCloseTo(0.652 * 0.10 * fallen, within(1e-5));
    assertThat(Diacetyl.course(12, 2.5, 18, 300, 3, 0).forcedMgPerL())
        .isCloseTo(3 * bare.forcedMgPerL(), within(1e-9));
  }

  /// Saerens (in Kucharczyk 2018): fermenting at 15 instead of 12 C gave a fifth less diacetyl.
  @Test
  void aWarmerFermentLeavesLess() {
    double cool = Diacetyl.course(12, 2.5, 12, 168, 1, 1).forcedMgPerL();
    double warmer = Diacetyl.course(12, 2.5, 15, 168, 1, 1).forcedMgPerL();
    assertThat(warmer / cool).isBetween(0.5, 0.9);
  }

  /// Of 40 ranges of nine in ten, 36 held: ordinary. A twin experiment takes 80 to 98 % as honest.
  /// The chances by a numerical library's binomial.
  @Test
  void fortyRangesTellWhetherTheClaimWasHonest() {
    ForecastScore.Held usual = ForecastScore.held(36, 40, 0.9);
    assertThat(usual.honest()).isTrue();
    assertThat(usual.fewerFrac()).isCloseTo(0.5768693, within(1e-6));
    assertThat(usual.moreFrac()).isCloseTo(0.6290177, within(1e-6));
    for (int held = 0; held <= 40; held++) {
      double share = held / 40.0;
      assertThat(ForecastScore.held(held, 40, 0.9).honest())
          .as("%s of 40", held)
          .isEqualTo(share >= 0.80 && share <= 0.98);
    }
    assertThat(ForecastScore.held(0, 1, 0.9).honest()).as("one range tells nothing").isTrue();
    assertThatIllegalArgumentException().isThrownBy(() -> ForecastScore.held(41, 40, 0.9));
  }

  @Test
  void skillIsHowMuchOfTheError() {
    assertThat(ForecastScore.skillRatio(1.04, 2.5)).isCloseTo(0.584, within(1e-9));
    assertThat(ForecastScore.skillRatio(0, 2.5)).isEqualTo(1);
    assertThat(ForecastScore.skillRatio(5, 2.5)).isEqualTo(-1);
    assertThatIllegalArgumentException().isThrownBy(() -> ForecastScore.skillRatio(1, 0));
  }

  /// Sheath maxima of a training manual: stainless 304 bears 30 W/in2, Incoloy 40.
  @Test
  void aSheathThatIsLoadedTooHardIsCautioned() {
    double usual = Element.surfaceLoadWPerM2(5500, 0.008, 3.2);
    assertThat(Element.RANGE.most() / 1550.0031).isCloseTo(30, within(0.01));
    assertThat(usual / 1550.0031).isCloseTo(44, within(0.2));
    assertThat(Element.RANGE.caution(usual)).isPresent();
    assertThat(Element.RANGE.caution(Element.surfaceLoadWPerM2(3000, 0.008, 3.2))).isEmpty();
  }
}
