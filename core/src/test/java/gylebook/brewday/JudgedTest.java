package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.estimate.Held;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/// One forecast against what came, by hand; and many of them.
class JudgedTest {
  private static final Instant BEGAN = Instant.parse("2026-03-14T08:00:00Z");

  // A normal forecast of spread 1 that is met in its middle (rig sheet, section 7, its [R30]), and
  // one that is missed by one spread: 1 (2 0.8413447 - 1) + 2 0.2419707 - 0.5641896, by hand.
  private static final double MET = 0.2336949773;
  private static final double MISSED_BY_1 = 0.6024414;

  private static Judged judged(double mean, double doubt, double came, double cameDoubt) {
    double half = 1.6448536 * doubt;
    Held held = new Held(mean, doubt, mean - half, mean + half);
    return new Judged(
        new Foreseen("bagOut", "hotL", held), "", -1, new Came(9, "dip-stick", came, cameDoubt));
  }

  @Test
  void theScoreIsThePublishedOneAndTheMeasuringsDoubtIsAllowedFor() {
    assertThat(judged(25, 1, 25, 0).score()).isCloseTo(MET, within(1e-9));
    assertThat(judged(25, 1, 26, 0).score()).isCloseTo(MISSED_BY_1, within(1e-6));
    // 0.6 and 0.8 together are 1: what would be read is that much wider.
    assertThat(judged(25, 0.6, 25, 0.8).score()).isCloseTo(MET, within(1e-9));
    assertThat(judged(25, 0.6, 24, 0.8).score()).isCloseTo(MISSED_BY_1, within(1e-6));
    // In the unit of the number: a third of a litre's spread, a third of the score.
    assertThat(judged(25, 1.0 / 3, 25, 0).score()).isCloseTo(MET / 3, within(1e-9));
    // A forecast that is sure scores its error.
    assertThat(judged(25, 1e-6, 27, 0).score()).isCloseTo(2, within(1e-5));
  }

  @Test
  void theRangeIsThatOfWhatWouldBeRead() {
    assertThat(judged(25, 0.6, 26.3, 0).held()).as("1.3 against 0.99").isFalse();
    assertThat(judged(25, 0.6, 26.3, 0.8).held()).as("1.3 against 1.64").isTrue();
    assertThat(judged(25, 0.6, 26.7, 0.8).held()).as("1.7 against 1.64").isFalse();
    Held range = judged(25, 0.6, 26, 0.8).range();
    assertThat(range.high()).isCloseTo(26.6448536, within(1e-6));
    assertThat(range.low()).isCloseTo(23.3551464, within(1e-6));
  }

  @Test
  void thePlaceIsTheShareOfTheForecastBelow() {
    assertThat(judged(25, 1, 25, 0).placeFrac()).isCloseTo(0.5, within(1e-9));
    assertThat(judged(25, 0.6, 26, 0.8).placeFrac()).isCloseTo(0.8413447, within(1e-6));
  }

  private static HouseRecord.OnRig day(
      int week, String rig, double came, double planned, double later) {
    List<Judged> judged = new ArrayList<>();
    judged.add(judged(planned, 1, came, 0));
    Held held = new Held(later, 0.5, later - 0.8, later + 0.8);
    judged.add(
        new Judged(new Foreseen("bagOut", "hotL", held), "rest.0", 3600, new Came(9, "", came, 0)));
    DayJudged.Row row =
        new DayJudged.Row("bagOut", "hotL", Optional.of(new Came(9, "dip-stick", came, 0)), judged);
    return new HouseRecord.OnRig(
        rig, new DayJudged(BEGAN.plus(Duration.ofDays(7L * week)), List.of(row)));
  }

  /// Three gyles, told in the wrong order, one on another rig. The rival of the third is what came
  /// of the first: 25, so it misses by 1.
  @Test
  void manyDaysAreCountedAndTheSkillIsAgainstThePlainerForecastOfTheSameThings() {
    HouseRecord record =
        HouseRecord.of(
            List.of(
                day(3, "house", 26, 25, 26),
                day(1, "house", 25, 25, 25),
                day(2, "flat", 30, 25, 30)));

    assertThat(record.gyles()).isEqualTo(3);
    HouseRecord.Line plan = record.byPlan().getFirst();
    assertThat(plan.ranges()).isEqualTo(3);
    assertThat(plan.held()).as("5 L beside it is no hit").isEqualTo(2);
    // 0.9^3 is the chance that three hold; two or fewer 1 - 0.729.
    assertThat(plan.verdict().fewerFrac()).isCloseTo(0.271, within(1e-9));
    assertThat(plan.verdict().honest()).isTrue();
    assertThat(plan.rival()).isEqualTo(OptionalDouble.of(1));
    assertThat(plan.skillRatio().orElseThrow()).isCloseTo(1 - MISSED_BY_1, within(1e-6));
    HouseRecord.Line last = record.last().getFirst();
    assertThat(last.held()).isEqualTo(3);
    assertThat(last.score()).isCloseTo(MET / 2, within(1e-9));
    // The plan's scores: met, missed by 5, missed by 1; its mean is the rival.
    double missedBy5 = 5 - 0.5641896;
    double planned = (MET + missedBy5 + MISSED_BY_1) / 3;
    assertThat(last.skillRatio().orElseThrow()).isCloseTo(1 - MET / 2 / planned, within(1e-4));
    assertThat(HouseRecord.ranges(record.byPlan())).isEqualTo(3);
    assertThat(HouseRecord.held(record.byPlan())).isEqualTo(2);
  }

  @Test
  void whereNothingWasJudgedThereIsNoLineAndNoSkill() {
    HouseRecord none = HouseRecord.of(List.of());
    assertThat(none.byPlan()).isEmpty();
    HouseRecord one = HouseRecord.of(List.of(day(1, "house", 25, 25, 25)));
    assertThat(one.byPlan().getFirst().skillRatio()).isEmpty();
  }
}
