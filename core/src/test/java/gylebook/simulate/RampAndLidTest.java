package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.recipe.Boil;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/// A rest that is heated to in a wanted time, and a boil under the lid.
class RampAndLidTest {
  private record Ran(BrewState state, DayLog log, Member member) {
    double at(String key) {
      return log.at(key, DayLog.Column.AT_SEC);
    }

    double steamKg() {
      return log.at("flameOut", DayLog.Column.STEAM_KG)
          - log.at("boilReached", DayLog.Column.STEAM_KG);
    }
  }

  private static Ran ran(BrewDay day, Simulator simulator) {
    DemoDays.Ready ready = DemoDays.ready(day, 7, -1);
    DayLog log = new DayLog(0, 0);
    simulator.run(ready.actions(), ready.member(), ready.start(), log, false);
    return new Ran(ready.start(), log, ready.member());
  }

  @Test
  void theMashIsHeatedNoFasterThanAskedAndNoFasterThanTheElementCan() {
    Ran ramped = ran(DemoDays.ramped(), new Simulator());
    double slowSec = ramped.at("toRest.1") - ramped.at("rest.0");
    assertThat(slowSec).isBetween(25 * 60.0, 28 * 60.0);
    double wantedTooFastSec = ramped.at("toRest.2") - ramped.at("rest.1");
    assertThat(wantedTooFastSec).isGreaterThan(4 * 60.0);
    // Heating 8 K by the element alone, no loss: m c dT / P is the least time there is.
    double liquidKg = ramped.state.castWaterKg + ramped.state.castExtractKg;
    assertThat(wantedTooFastSec).isGreaterThan(0.8 * liquidKg * 4186 * 8 / ramped.member.elementW);
  }

  @Test
  void halvingTheStepHardlyMovesAClimbingSetPoint() {
    Ran coarse = ran(DemoDays.ramped(), new Simulator());
    Ran fine = ran(DemoDays.ramped(), new Simulator(Simulator.TOLERANCE_K / 4, 0.5));
    assertThat(coarse.at("toRest.1")).isCloseTo(fine.at("toRest.1"), within(6.0));
    assertThat(coarse.at("toRest.2")).isCloseTo(fine.at("toRest.2"), within(6.0));
    assertThat(coarse.state.elementJ)
        .isCloseTo(fine.state.elementJ, Percentage.withPercentage(0.05));
  }

  /// Heat in is heat kept, lost, carried off: the account of the whole day, at 0 C.
  @Test
  void theHeatOfARampedAndCoveredDayIsAllAccountedFor() {
    Ran day = ran(DemoDays.ramped(), new Simulator());
    Ran plain = ran(DemoDays.household(), new Simulator());
    assertThat(day.log.gaveUp).isFalse();
    // Water and extract that came in are in the fermenter, the kettle, the bag or the air.
    assertThat(massKg(day)).isCloseTo(massKg(plain), within(0.02));
  }

  private static double massKg(Ran day) {
    BrewState s = day.state;
    return s.liquidKg()
        + s.castWaterKg
        + s.castExtractKg
        + s.steamKg
        + s.bagWaterKg
        + s.bagExtractKg
        + s.bagUndissolvedKg;
  }

  private static BrewDay covered(Boil.Lid lid, double dutyFrac) {
    BrewDay day = DemoDays.household();
    Settings s = day.settings();
    Settings set =
        new Settings(
            s.liquorL(),
            s.strikeC(),
            s.mashOffsetK(),
            s.gristFactor(),
            s.hopFactor(),
            dutyFrac,
            s.topUpL());
    return new BrewDay(DemoDays.covered(Demo.copperBitter(), lid), day.rig(), set);
  }

  /// What leaves is the heat that wall and top do not lose, over the latent heat: by hand.
  @Test
  void underTheLidTheBoilLosesWhatTheLidLoses() {
    for (Boil.Lid lid : Boil.Lid.values()) {
      Ran day = ran(covered(lid, 0.8), new Simulator());
      Member m = day.member;
      double overRoomK = m.boilsC(0.1) - m.roomC;
      double wallWPerK = 1 / (1 / m.wortToWallWPerK + 1 / m.wallWPerK);
      double topWPerK = lid == Boil.Lid.ON ? m.lidOnWPerK : m.lidOffWPerK;
      double netW = 0.8 * m.elementW - (wallWPerK + topWPerK) * overRoomK;
      double boiledSec = day.at("flameOut") - day.at("boilReached");
      assertThat(day.steamKg())
          .as("lid " + lid)
          .isCloseTo(netW / m.latentJPerKg * boiledSec, Percentage.withPercentage(1.5));
    }
  }

  @Test
  void aLidLetsAWeakerBoilRollAndThatLeavesMoreSulphide() {
    Ran open = ran(covered(Boil.Lid.OFF, 0.01), new Simulator());
    Ran under = ran(covered(Boil.Lid.ON, 0.01), new Simulator());
    assertThat(under.member.rollingDutyFrac(true))
        .isLessThan(0.5 * open.member.rollingDutyFrac(false));
    assertThat(under.steamKg()).isLessThan(0.5 * open.steamKg());
    assertThat(under.state.sulfideFrac).isGreaterThan(1.5 * open.state.sulfideFrac);
    assertThat(under.state.elementJ).isLessThan(open.state.elementJ);
  }
}
