package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/// The simulator against the printed run of an independent prototype of the same model (table
/// "reference brew" of rig.csv), and against itself with finer steps.
class ReferenceBrewTest {
  private static final String KIND = "reference brew of the state-space model";

  private static DayLog run(Simulator simulator, BrewState state) {
    DayLog log = new DayLog(0, 0);
    simulator.run(ReferenceBrew.day(), ReferenceBrew.member(), state, log, false);
    return log;
  }

  private static double answer(ReferenceRow row) {
    DayLog log = run(new Simulator(), ReferenceBrew.start());
    double strikeSec = log.at("strikeReady", DayLog.Column.AT_SEC);
    return switch (row.detail()) {
      case "minutes to strike" -> strikeSec / 60;
      case "kettle after dough-in and 6 min open" -> log.at("doughedIn", DayLog.Column.WORT_C);
      case "duty that holds the mash" -> heldDutyPercent(log);
      case "minutes from bag pull to boil" ->
          (log.at("boilReached", DayLog.Column.AT_SEC) - log.at("bagOut", DayLog.Column.AT_SEC))
              / 60;
      case "temperature after 15 min open whirlpool" -> log.at("stood", DayLog.Column.WORT_C);
      case "electricity to the end of the boil" ->
          log.at("boilDone", DayLog.Column.ELEMENT_J) / 3.6e6;
      default -> throw new AssertionError("nothing answers " + row);
    };
  }

  private static double heldDutyPercent(DayLog log) {
    double joule =
        log.at("mashDone", DayLog.Column.ELEMENT_J) - log.at("halfMash", DayLog.Column.ELEMENT_J);
    double sec =
        log.at("mashDone", DayLog.Column.AT_SEC) - log.at("halfMash", DayLog.Column.AT_SEC);
    return 100 * joule / sec / 5500;
  }

  /// The rows of this kind.
  static Checks checks() {
    return new Checks().kind(KIND, ReferenceBrewTest::answer);
  }

  @TestFactory
  Stream<DynamicTest> meetsThePrototypesPrintedRun() {
    return checks()
        .tests(
            ReferenceRows.of("rig.csv").stream().filter(row -> row.kind().equals(KIND)).toList());
  }

  @Test
  void halvingTheStepHardlyMovesTheResult() {
    BrewState usual = ReferenceBrew.start();
    BrewState fine = ReferenceBrew.start();
    DayLog usualLog = run(new Simulator(), usual);
    DayLog fineLog = run(new Simulator(Simulator.TOLERANCE_K / 4, 0.5), fine);
    for (int i = 0; i < usualLog.milestones(); i++) {
      assertThat(usualLog.at(i, DayLog.Column.AT_SEC))
          .as(usualLog.keys().get(i))
          .isCloseTo(fineLog.at(i, DayLog.Column.AT_SEC), within(3.0));
      assertThat(usualLog.at(i, DayLog.Column.WORT_C))
          .as(usualLog.keys().get(i))
          .isCloseTo(fineLog.at(i, DayLog.Column.WORT_C), within(0.03));
    }
    assertThat(usual.extractFrac()).isCloseTo(fine.extractFrac(), within(2e-5));
    assertThat(usual.fermentableKg / usual.extractKg())
        .isCloseTo(fine.fermentableKg / fine.extractKg(), within(2e-3));
  }

  @Test
  void massAndExtractClose() {
    BrewState state = ReferenceBrew.start();
    double waterKg = state.waterKg;
    run(new Simulator(), state);
    assertThat(state.waterKg + state.bagWaterKg + state.steamKg)
        .as("water")
        .isCloseTo(waterKg, within(1e-9));
    double potentialKg = 7.0 * 0.78;
    double leftInMaltKg = state.bagUndissolvedKg - (7.0 - potentialKg);
    assertThat(state.extractKg() + state.bagExtractKg + leftInMaltKg)
        .as("extract")
        .isCloseTo(potentialKg, within(1e-9));
  }

  @Test
  void energyCloses() {
    BrewState state = ReferenceBrew.start();
    double startJ = heldJ(state);
    run(new Simulator(Simulator.TOLERANCE_K / 10, 0.2), state);
    double lostJ =
        state.wallLossJ + state.surfaceLossJ + state.hoseLossJ + state.chilledJ + state.carriedJ;
    double missingJ = startJ + state.elementJ - heldJ(state) - lostJ;
    assertThat(missingJ / state.elementJ).as("share of the electricity").isCloseTo(0, within(5e-3));
  }

  /// Heat above 0 C in wort and steel.
  private static double heldJ(BrewState state) {
    return state.liquidKg() * Flows.wortJPerKgK(state.extractFrac()) * state.kettleC
        + ReferenceBrew.member().steelJPerK * state.wallC;
  }

  @Test
  void theSameSeedGivesTheSameBits() {
    BrewState one = ReferenceBrew.start();
    BrewState two = ReferenceBrew.start();
    run(new Simulator(), one);
    run(new Simulator(), two);
    assertThat(Double.doubleToLongBits(one.kettleC))
        .isEqualTo(Double.doubleToLongBits(two.kettleC));
    assertThat(one.clockSec).isEqualTo(two.clockSec);
  }
}
