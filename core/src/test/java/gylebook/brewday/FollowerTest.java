package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.journal.Event;
import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.simulate.Outcome;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// A day followed by its notes; what is expected comes from the plan and from the notes, not from
/// figures written here.
class FollowerTest {
  private static final Instant START = Instant.parse("2026-03-14T08:00:00Z");
  private static Follower usual;

  @BeforeAll
  static void plan() {
    usual = follower();
  }

  private static Follower follower() {
    return Follower.of(Demo.copperBitter(), DemoRigs.household(), 100, 20, START).orElseThrow();
  }

  private static DayNote note(long seq, double min, Event event) {
    Instant at = START.plusMillis(Math.round(60_000 * min));
    return new DayNote(seq, at, at, event, true);
  }

  private static DayNote warm(long seq, double min, String asRead) {
    return note(seq, min, new Event.ReadingTaken(Follower.HAND_HELD, "KETTLE", true, asRead, ""));
  }

  private static DayNote reached(long seq, double min, String milestone) {
    return note(seq, min, new Event.PointReached(milestone));
  }

  private static Instant at(double min) {
    return START.plusMillis(Math.round(60_000 * min));
  }

  private static List<DayNote> morning() {
    return List.of(
        note(1, 0, new Event.DayStarted(9)),
        warm(2, 10, "28 \u00b0C"),
        warm(3, 20, "45 \u00b0C"),
        reached(4, 38, "strikeReady"));
  }

  @Test
  void theSameNotesGiveTheSameDayToldAtOnceOrOneByOne() {
    Follower slowly = follower();
    for (int i = 1; i <= morning().size(); i++) {
      slowly.at(morning().subList(0, i), at(38));
    }

    assertThat(slowly.at(morning(), at(45)).outcomes())
        .isEqualTo(usual.at(morning(), at(45)).outcomes());
  }

  @Test
  void aLateNoteCountsFromWhenItHappened() {
    List<DayNote> late = new ArrayList<>(morning());
    DayNote dip = note(5, 5, new Event.ReadingTaken("dip-stick", "KETTLE", true, "25.6 L", ""));
    Follower told = follower();
    told.at(late, at(40));
    late.add(dip);
    late.sort(Comparator.comparing(DayNote::at));

    assertThat(told.at(late, at(45)).outcomes()).isEqualTo(follower().at(late, at(45)).outcomes());
  }

  /// More notes than lie between two places that are kept, and late ones at every distance.
  @Test
  void aLateNoteGivesTheSameDayWhereverItIsTakenUpAgain() {
    List<DayNote> notes = new ArrayList<>();
    notes.add(note(1, 0, new Event.DayStarted(9)));
    for (int i = 0; i < 70; i++) {
      notes.add(warm(2 + i, 0.3 * (i + 1), "%d.%d \u00b0C".formatted(13 + i / 2, i % 10)));
    }
    Follower told = follower();
    told.at(notes, at(22));
    long seq = 300;
    for (double min : new double[] {20.9, 9.97, 0.01}) {
      notes.add(note(++seq, min, new Event.ReadingTaken("dip-stick", "KETTLE", true, "27 L", "")));
      notes.sort(Comparator.comparing(DayNote::at).thenComparingLong(DayNote::seq));
      Followed late = told.at(notes, at(22));
      Followed anew = follower().at(notes, at(22));

      assertThat(late.outcomes()).isEqualTo(anew.outcomes());
      assertThat(late.weighedBySeq()).isEqualTo(anew.weighedBySeq());
      assertThat(late.shares()).isEqualTo(anew.shares());
    }
  }

  @Test
  void aReadingShrinksTheDoubtAboutWhatItReads() {
    Followed before = usual.at(morning().subList(0, 1), at(20));
    Followed after = usual.at(morning().subList(0, 3), at(20));

    assertThat(after.grainC().doubt()).isLessThan(before.grainC().doubt());
    assertThat(after.grainC().mean()).isBetween(40.0, 50.0);
    assertThat(after.weighedBySeq()).containsOnlyKeys(2L, 3L);
  }

  @Test
  void theBoilIsCountedFromWhenItWasSeen() {
    List<DayNote> notes = new ArrayList<>(morning());
    // Far later than planned; whoever sees the boil has passed all before it.
    notes.add(reached(5, 220, "boilReached"));
    Followed day = usual.at(notes, at(221));
    double holdSec = Demo.copperBitter().boil().holdSec().inside();

    assertThat(day.lateSec()).isGreaterThan(600);
    double flameOutSec =
        day.coming().stream()
            .filter(coming -> coming.key().equals("flameOut"))
            .findFirst()
            .orElseThrow()
            .atSec()
            .mean();
    assertThat(flameOutSec).isCloseTo(220 * 60 + holdSec, within(1.0));
    assertThat(day.due()).hasSize(1);
    notes.add(reached(6, 221, day.due().getFirst().milestone()));
    assertThat(usual.at(notes, at(222)).due()).isEmpty();
  }

  @Test
  void whoForgetsToNoteThePointsOfTheMashHasMashedAllTheSame() {
    List<DayNote> notes = new ArrayList<>(morning());
    notes.add(warm(5, 100, "66 \u00b0C"));
    notes.add(reached(6, 200, "boilReached"));
    double plannedPlato =
        usual.plan().forecast().figure("preBoilPlato").orElseThrow().band().middle();

    assertThat(usual.at(notes, at(201)).wortPlato().mean())
        .isBetween(0.85 * plannedPlato, 1.15 * plannedPlato);
  }

  @Test
  void whoSaysTheStrikeIsReachedHasReadItOffTheController() {
    Followed day =
        usual.at(
            List.of(note(1, 0, new Event.DayStarted(9)), reached(2, 36, "strikeReady")), at(36));

    assertThat(day.leg()).isEqualTo("doughedIn");
    assertThat(day.planned().get(Outcome.FERMENTER)).isBetween(15.0, 25.0);
  }

  @Test
  void aReadingThatCannotBeReadIsKeptAndMovesNothing() {
    List<DayNote> notes = List.of(note(1, 0, new Event.DayStarted(9)), warm(2, 5, "hot"));

    assertThat(usual.at(notes, at(6)).weighedBySeq()).isEmpty();
  }

  @Test
  void afterTheLastPointTheDayIsDone() {
    List<DayNote> notes = List.of(note(1, 0, new Event.DayStarted(9)), reached(2, 400, "cast"));
    Followed day = usual.at(notes, at(401));

    assertThat(day.underWay()).isFalse();
    assertThat(day.coming()).isEmpty();
  }
}
