package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Change;
import gylebook.simulate.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class HiddenDayTest {
  private static final double STEP_SEC = 30;

  private static HiddenDay day(Supposition wrong, long seed) {
    BrewDay planned =
        new BrewDay(
            Demo.copperBitter(), DemoRigs.household(), new Settings(27, 70.5, 0.4, 1, 1, 0.75, 0));
    return new HiddenDay(planned, wrong, seed);
  }

  /// Plays on, each thing done when it can be, to the end of a leg or of the day.
  private static List<String> playTo(HiddenDay day, String leg) {
    List<String> legs = new ArrayList<>();
    while (day.underWay() && !day.leg().equals(leg)) {
      if (day.pass(day.clockSec() + STEP_SEC)) {
        legs.add(day.leg());
        day.done();
      }
    }
    return legs;
  }

  private static void pass(HiddenDay day, double forSec) {
    double toSec = day.clockSec() + forSec;
    while (day.clockSec() < toSec) {
      day.pass(Math.min(toSec, day.clockSec() + STEP_SEC));
    }
  }

  @Test
  void aDayGoesFromColdLiquorToTheFermenter() {
    HiddenDay day = day(Supposition.NOTHING, 1);
    assertThat(playTo(day, ""))
        .startsWith("strikeReady", "doughedIn", "settled", "rest.0")
        .contains("bagOut", "boilReached", "flameOut")
        .endsWith("cast");
    // Common practice, no source: such a day takes from four hours to a long evening.
    assertThat(day.clockSec()).isBetween(4 * 3600.0, 12 * 3600.0);
  }

  @Test
  void theSameSeedIsTheSameDayAndAnotherIsAnother() {
    HiddenDay one = day(Supposition.NOTHING, 7);
    HiddenDay same = day(Supposition.NOTHING, 7);
    HiddenDay other = day(Supposition.NOTHING, 8);
    for (HiddenDay each : List.of(one, same, other)) {
      playTo(each, "rest.0");
    }
    assertThat(one.clockSec()).isEqualTo(same.clockSec()).isNotEqualTo(other.clockSec());
    assertThat(one.shown("controller")).isEqualTo(same.shown("controller"));
    assertThat(one.secrets()).isEqualTo(same.secrets()).isNotEqualTo(other.secrets());
    assertThat(one.secrets()).allMatch(secret -> secret.timesRatio() != 1);
  }

  @Test
  void nothingGoesOnBeforeSomebodyActs() {
    HiddenDay day = day(Supposition.NOTHING, 3);
    pass(day, 4 * 3600);
    assertThat(day.leg()).isEqualTo("strikeReady");
    assertThat(day.ready()).isTrue();
    // The controller holds the strike liquor while it waits.
    assertThat(day.shown("controller")).isBetween(68.0, 73.0);
    day.done();
    assertThat(day.leg()).isEqualTo("doughedIn");
    assertThat(day.ready()).isFalse();
  }

  @Test
  void aPumpThatStandsStillLetsTheControllerOverheatTheGrain() {
    HiddenDay well = day(Supposition.NOTHING, 5);
    HiddenDay still = day(Supposition.PUMP_OFF, 5);
    for (HiddenDay each : List.of(well, still)) {
      playTo(each, "rest.0");
      pass(each, 1700);
    }
    assertThat(well.shown("controller") - well.grainC()).isBetween(-2.5, 2.5);
    // The probe in its dead leg goes cold, the controller heats, and the grain pays for it.
    assertThat(still.grainC()).isGreaterThan(well.grainC() + 0.5);
    assertThat(still.wrong()).isEqualTo(Supposition.PUMP_OFF);
  }

  @Test
  void aDeadHeaterIsAskedForAndAStuckOneHeatsUnasked() {
    HiddenDay dead = day(Supposition.HEATER_DEAD, 5);
    HiddenDay stuck = day(Supposition.HEATER_STUCK_ON, 5);
    for (HiddenDay each : List.of(dead, stuck)) {
      playTo(each, "rest.0");
      pass(each, 1200);
    }
    assertThat(dead.shown(HiddenDay.DUTY)).isPositive();
    assertThat(stuck.shown(HiddenDay.DUTY)).isZero();
    assertThat(stuck.grainC()).isGreaterThan(dead.grainC() + 3);
  }

  @Test
  void aDialThatIsOffReadsHighByKelvins() {
    HiddenDay well = day(Supposition.NOTHING, 9);
    HiddenDay off = day(Supposition.DIAL_OFF, 9);
    for (HiddenDay each : List.of(well, off)) {
      playTo(each, "rest.0");
    }
    assertThat(off.shown("dial") - well.shown("dial")).isBetween(3.0, 5.5);
  }

  @Test
  void whatGoesWrongIsChancedBySeedAndEverythingComesUp() {
    assertThat(LongStream.range(0, 200).mapToObj(HiddenDay::chanced).distinct())
        .containsExactlyInAnyOrder(Supposition.values());
    assertThat(HiddenDay.chanced(17)).isEqualTo(HiddenDay.chanced(17));
  }

  @Test
  void whatSendsAndWhatIsReadByEyeIsToldApart() {
    HiddenDay day = day(Supposition.NOTHING, 1);
    assertThat(day.sending()).containsExactly("controller", "bag chip", "duty");
    assertThat(day.byEye())
        .extracting(Instrument::name)
        .containsExactly("dial", "hand-held", "dip-stick", "hydrometer");
  }

  @Test
  void aRigsOwnInstrumentsCanBePlayedAndWithoutADialNoneIsOff() {
    BrewDay planned =
        new BrewDay(
            Demo.copperBitter(), DemoRigs.household(), new Settings(27, 70.5, 0.4, 1, 1, 0.75, 0));
    List<Instrument> own =
        List.of(
            Instrument.of(DemoRigs.household().probes().getFirst()),
            Instrument.dipStick(),
            Instrument.hydrometer());
    HiddenDay day = new HiddenDay(planned, own, Supposition.DIAL_OFF, 1);
    assertThat(day.wrong()).isEqualTo(Supposition.NOTHING);
    assertThat(day.sending()).containsExactly("controller", "duty");
    assertThat(day.byEye()).extracting(Instrument::name).containsExactly("dip-stick", "hydrometer");
    assertThat(day(Supposition.DIAL_OFF, 1).wrong()).isEqualTo(Supposition.DIAL_OFF);
  }

  @Test
  void whatIsDoneOtherwiseIsDoneToTheHiddenRigUnlessItIsTooLate() {
    HiddenDay planned = day(Supposition.NOTHING, 2);
    HiddenDay longer = day(Supposition.NOTHING, 2);
    playTo(planned, "flameOut");
    playTo(longer, "flameOut");
    assertThat(longer.change(new Change.Lasts("flameOut", 900))).isTrue();
    assertThat(longer.change(new Change.Lasts("rest.0", 900))).isFalse();
    assertThat(longer.change(new Change.Pours("", 2))).isTrue();
    for (HiddenDay each : List.of(planned, longer)) {
      playTo(each, "knockOut");
    }
    assertThat(longer.clockSec() - planned.clockSec()).isGreaterThanOrEqualTo(900);
  }
}
