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

  /// Heat above 0 C: what came in is in wort and steel, or was lost, or was carried off.
  @Test
  void theHeatOfARampedAndCoveredDayIsAllAccountedFor() {
    DemoDays.Ready ready = DemoDays.ready(DemoDays.ramped(), 7, -1);
    BrewState state = ready.filled();
    Member member = ready.member();
    double startJ = heldJ(state, member);
    new Simulator(Simulator.TOLERANCE_K / 10, 0.2)
        .run(ready.actions(), member, state, new DayLog(0, 0), false);
    double lostJ =
        state.wallLossJ + state.surfaceLossJ + state.hoseLossJ + state.chilledJ + state.carriedJ;
    double missingJ = startJ + state.elementJ - heldJ(state, member) - lostJ;
    assertThat(missingJ / state.elementJ).as("share of the electricity").isCloseTo(0, within(5e-3));
  }

  private static double heldJ(BrewState state, Member member) {
    return state.liquidKg() * Flows.wortJPerKgK(state.extractFrac()) * state.kettleC
        + member.steelJPerK * state.wallC;
  }

  /// Water is in the fermenter, the kettle, the bag or the air, whatever the lid and the ramp do.
  @Test
  void noWaterIsLostToARampOrALid() {
    DemoDays.Ready ready = DemoDays.ready(DemoDays.ramped(), 7, -1);
    BrewState state = ready.filled();
    double inKg = state.waterKg;
    for (Action action : ready.actions()) {
      switch (action) {
        case Action.DoughIn malt -> inKg += malt.grainKg() * malt.moistureFrac();
        case Action.TopUp liquor -> inKg += liquor.waterKg();
        case Action.AddExtract added -> inKg += added.waterKg();
        default -> {}
      }
    }
    new Simulator().run(ready.actions(), ready.member(), state, new DayLog(0, 0), false);
    assertThat(state.waterKg + state.castWaterKg + state.bagWaterKg + state.steamKg)
        .isCloseTo(inKg, within(1e-9));
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
