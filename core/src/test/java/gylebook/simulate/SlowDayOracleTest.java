package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.science.BetaAmylase;
import gylebook.science.BoilingRise;
import gylebook.testing.Cases;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/// The simulator's day against the same model written down plainly ([PlainModel]) and moved by two
/// unlike methods: classic Runge-Kutta in even seconds, and Hipparchus' Dormand-Prince 8(5,3) at
/// 1e-10. The two invented beers, without luck and with drawn rigs and lots.
class SlowDayOracleTest {
  private static final long SEED = 7;
  private static final int MEMBERS = 5;

  private record Ran(BrewState state, DayLog log) {}

  private static Ran simulated(BrewDay day, int number, Simulator simulator) {
    DemoDays.Ready ready = DemoDays.ready(day, SEED, number);
    DayLog log = new DayLog(0, 0);
    simulator.run(ready.actions(), ready.member(), ready.start(), log, false);
    return new Ran(ready.start(), log);
  }

  private static Ran plain(BrewDay day, int number, PlainDay.Mover mover) {
    DemoDays.Ready ready = DemoDays.ready(day, SEED, number);
    DayLog log = new DayLog(0, 0);
    new PlainDay(mover).run(ready.actions(), ready.member(), ready.start(), log);
    return new Ran(ready.start(), log);
  }

  private static PlainDay.Mover precise() {
    return PlainDay.by(new DormandPrince853Integrator(1e-6, 15, 1e-10, 1e-10), 15, 1e-6);
  }

  private static Stream<DynamicTest> eachMember(String name, java.util.function.IntConsumer check) {
    return IntStream.range(-1, MEMBERS)
        .mapToObj(
            number ->
                DynamicTest.dynamicTest(name + ", day " + number, () -> check.accept(number)));
  }

  @TestFactory
  Stream<DynamicTest> theDayIsThatOfEvenSmallSteps() {
    BrewDay household = DemoDays.household();
    BrewDay flat = DemoDays.flat();
    BrewDay ramped = DemoDays.ramped();
    Stream<DynamicTest> slowly =
        eachMember(
                "ramped",
                n ->
                    sameDay(
                        simulated(ramped, n, new Simulator()),
                        plain(ramped, n, PlainDay.evenSteps(1))))
            .limit(3);
    return Stream.concat(
        Stream.concat(
            slowly,
            eachMember(
                "household",
                n ->
                    sameDay(
                        simulated(household, n, new Simulator()),
                        plain(household, n, PlainDay.evenSteps(1))))),
        eachMember(
            "flat",
            n ->
                sameDay(
                    simulated(flat, n, new Simulator()), plain(flat, n, PlainDay.evenSteps(1)))));
  }

  private static void sameDay(Ran fast, Ran slow) {
    assertThat(fast.log.keys()).isEqualTo(slow.log.keys());
    for (String key : slow.log.keys()) {
      sameMilestone(key, fast.log, slow.log);
    }
    BrewState is = fast.state;
    BrewState should = slow.state;
    assertThat(is.castExtractKg).as("extract").isCloseTo(should.castExtractKg, within(1e-4));
    assertThat(is.castWaterKg).as("water").isCloseTo(should.castWaterKg, within(0.01));
    assertThat(is.castFermentableKg / is.castExtractKg)
        .as("fermentable share")
        .isCloseTo(should.castFermentableKg / should.castExtractKg, within(1e-3));
    assertThat(is.castHeatJ).as("heat cast").isCloseTo(should.castHeatJ, percent(0.1));
    assertThat(is.precursorFrac).as("precursor").isCloseTo(should.precursorFrac, within(2e-3));
    assertThat(is.sulfideFrac).as("sulfide").isCloseTo(should.sulfideFrac, percent(6));
    assertThat(is.alphaFrac).as("alpha-amylase").isCloseTo(should.alphaFrac, within(2e-3));
    assertThat(is.betaFrac).as("beta-amylase").isCloseTo(should.betaFrac, within(1e-4));
    assertThat(is.loopDoseMin).as("dose").isCloseTo(should.loopDoseMin, percent(6));
    assertThat(is.elementJ).as("electricity").isCloseTo(should.elementJ, percent(0.02));
    for (int i = 0; i < is.hopCount; i++) {
      assertThat(is.castIsoMg[i]).as("iso " + i).isCloseTo(should.castIsoMg[i], percent(0.5));
    }
  }

  /// Where the wort runs off the temperature falls by a kelvin in a step, and in the first minutes
  /// after dough-in the strength doubles between two steps; nothing that is forecast hangs on
  /// either, so they are allowed more.
  private static void sameMilestone(String key, DayLog fast, DayLog slow) {
    boolean early = key.equals("doughedIn") || key.equals("settled");
    same(key, DayLog.Column.AT_SEC, fast, slow, 8);
    same(key, DayLog.Column.WORT_C, fast, slow, key.equals("cast") ? 0.3 : 0.03);
    same(key, DayLog.Column.GRAIN_C, fast, slow, key.equals("cast") ? 0.3 : 0.06);
    same(key, DayLog.Column.COLD_L, fast, slow, early ? 0.03 : 0.005);
    same(key, DayLog.Column.WORT_PLATO, fast, slow, early ? 0.3 : 0.004);
    same(key, DayLog.Column.STEAM_KG, fast, slow, 0.005);
  }

  private static void same(
      String key, DayLog.Column column, DayLog fast, DayLog slow, double toleranceNumber) {
    assertThat(fast.at(key, column))
        .as(key + " " + column)
        .isCloseTo(slow.at(key, column), within(toleranceNumber));
  }

  private static Percentage percent(double value) {
    return Percentage.withPercentage(value);
  }

  @TestFactory
  Stream<DynamicTest> theTwoOraclesAgree() {
    BrewDay household = DemoDays.household();
    return eachMember("household", n -> agree(household, n)).limit(3);
  }

  private static void agree(BrewDay day, int number) {
    Ran even = plain(day, number, PlainDay.evenSteps(1));
    Ran precise = plain(day, number, precise());
    for (String key : even.log.keys()) {
      same(key, DayLog.Column.AT_SEC, even.log, precise.log, 0.01);
      same(key, DayLog.Column.WORT_C, even.log, precise.log, 1e-4);
      same(key, DayLog.Column.WORT_PLATO, even.log, precise.log, 1e-5);
    }
    assertThat(even.state.castIsoMg[0]).isCloseTo(precise.state.castIsoMg[0], percent(1e-4));
    assertThat(even.state.sulfideFrac).isCloseTo(precise.state.sulfideFrac, percent(1e-3));
  }

  @Test
  void halvingTheToleranceHardlyMovesTheForecast() {
    for (BrewDay day : new BrewDay[] {DemoDays.household(), DemoDays.flat()}) {
      for (int number = -1; number < MEMBERS; number++) {
        Ran usual = simulated(day, number, new Simulator());
        Ran finer = simulated(day, number, new Simulator(Simulator.TOLERANCE_K / 2, 0.5));
        for (String key : usual.log.keys()) {
          same(key, DayLog.Column.AT_SEC, usual.log, finer.log, 6);
        }
        BrewState is = usual.state;
        BrewState should = finer.state;
        assertThat(is.castExtractKg).isCloseTo(should.castExtractKg, percent(0.01));
        assertThat(is.castWaterKg).isCloseTo(should.castWaterKg, percent(0.05));
        assertThat(is.castFermentableKg).isCloseTo(should.castFermentableKg, percent(0.1));
        assertThat(is.castIsoMg[0]).isCloseTo(should.castIsoMg[0], percent(0.2));
        assertThat(is.precursorFrac).isCloseTo(should.precursorFrac, percent(0.5));
      }
    }
  }

  /// Constant temperature has a solution on paper: first-order decays and their successors.
  @Test
  void thePlainModelMeetsTheBoilsClosedForm() {
    Member member = ReferenceBrew.member();
    BrewState state = ReferenceBrew.start();
    state.kettleC = member.boilsC(0);
    state.wallC = member.boilsC(0);
    state.boiling = true;
    state.precursorFrac = 1;
    state.alphaMg[0] = 1000;
    state.hopCount = 1;
    DayLog log = new DayLog(0, 0);
    Leg boil = ReferenceBrew.byHand("boil", 1, Leg.Pump.OFF, new Leg.Until.After(3600));
    Action hop = new Action.AddHops(0, 0, 0);
    new PlainDay(precise()).run(java.util.List.of(hop, boil), member, state, log);
    double boilsC = member.boilsC(0);
    assertThat(state.kettleC).isCloseTo(boilsC, within(1e-9));
    assertThat(state.isoMg[0])
        .isCloseTo(1000 * gylebook.science.HopIsomerisation.isoFrac(boilsC, 60), percent(1e-6));
    double precursorPerSec = gylebook.science.DimethylSulfide.precursorPerSec(boilsC, 5.3);
    assertThat(state.precursorFrac).isCloseTo(Math.exp(-3600 * precursorPerSec), percent(1e-6));
  }

  @Test
  void thePlainModelMeetsTheMashsClosedForm() {
    Member member = ReferenceBrew.member();
    member.wallWPerK = 0;
    member.surfaceM2 *= 1e-9;
    member.bedM2 = member.surfaceM2 / 2;
    member.lidOffWPerK = 0;
    BrewState state = ReferenceBrew.start();
    Deeds.fill(state, 30, 64);
    state.bagIn = true;
    state.grainKg = 5;
    state.starchKg = 3;
    state.alphaFrac = 1;
    state.betaFrac = 1;
    state.precursorFrac = 1;
    DayLog log = new DayLog(0, 0);
    new PlainDay(precise()).run(java.util.List.of(Leg.idle("rest", 1800)), member, state, log);
    assertThat(state.bedC).as("nothing cools").isCloseTo(64, within(1e-4));
    double pastedFrac = gylebook.science.Gelatinisation.convertedFrac(64, 30);
    assertThat(state.starchKg).isCloseTo(3 * (1 - pastedFrac), percent(0.01));
    double stable = BetaAmylase.STABLE_SHARE_FRAC;
    assertThat(stable + (1 - stable) * state.betaFrac)
        .isCloseTo(BetaAmylase.leftFrac(64, 30), percent(0.01));
    assertThat(state.alphaFrac)
        .isCloseTo(gylebook.science.Brandam2003.alphaLeftFrac(64, 30), percent(0.01));
  }

  @Test
  void theParabolaOfTheBoilingRiseIsWithinTwoHundredthsOfAKelvin() {
    Cases.each(
        50,
        draw -> {
          Member member = ReferenceBrew.member();
          double extractFrac = draw.nextDouble(0, 0.25);
          assertThat(member.boilsC(extractFrac) - member.waterBoilsC)
              .isCloseTo(BoilingRise.riseK(extractFrac, member.pressureKpa), within(0.02));
        });
  }
}
