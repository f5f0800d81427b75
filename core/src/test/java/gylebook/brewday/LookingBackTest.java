package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.estimate.Finding;
import gylebook.estimate.Held;
import gylebook.estimate.Supposition;
import gylebook.journal.Event;
import gylebook.plan.Demo;
import gylebook.plan.Planner;
import gylebook.rig.DemoRigs;
import gylebook.rig.Origin;
import gylebook.simulate.BrewDay;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// A day looked at again by its notes. Good days of sixteen seeds had something lead for three
/// minutes at most, days with a fault of twenty minutes for eighteen at least; so ten are asked.
class LookingBackTest {
  private static final int TWINS = 100;
  private static Follower follower;

  @BeforeAll
  static void plan() {
    follower =
        Follower.of(Demo.copperBitter(), DemoRigs.household(), 100, 20, NotedDay.START)
            .orElseThrow();
  }

  private static List<DayNote> notes(Supposition wrong) {
    return NotedDay.notes(Demo.copperBitter(), DemoRigs.household(), follower, wrong, 1);
  }

  private static LookedBack looked(List<DayNote> notes) {
    return looked(notes, TWINS);
  }

  private static LookedBack looked(List<DayNote> notes, int twins) {
    BrewDay day =
        Planner.day(Demo.copperBitter(), DemoRigs.household(), follower.plan().settings());
    return new LookingBack(day, follower.plan(), NotedDay.START, follower.instruments(), 20)
        .at(notes, twins, "learnt from a day in March");
  }

  @Test
  void aDayThatWentAsToldTeaches() {
    LookedBack back = looked(notes(Supposition.NOTHING), 200);

    assertThat(back.otherwise()).isEmpty();
    assertThat(back.teaches()).isTrue();
    List<String> seen = back.findings().stream().filter(Finding::seen).map(Finding::path).toList();
    assertThat(seen)
        .contains("kettle.evaporationFactor", "probes.0.biasK", "bag.squeezedKgPerKg")
        .doesNotContain("kettle.deadL", "site.roomC", "element.mainsV", "working.doughInSec");
    assertThat(back.findings().stream().filter(Finding::seen).map(each -> each.after().basis()))
        .containsOnly("learnt from a day in March");
    assertThat(back.findings().stream().filter(Finding::seen).map(each -> each.after().origin()))
        .containsOnly(Origin.LEARNT);
    LookedBack.Told litres =
        back.told().stream()
            .filter(each -> each.key().equals("postBoilL"))
            .findFirst()
            .orElseThrow();
    assertThat(litres.planned()).isPresent();
    assertThat(litres.again().doubt()).isLessThan(1);
    assertThat(overlap(litres.onDay(), litres.again())).isTrue();
  }

  private static boolean overlap(Held one, Held other) {
    return one.low() < other.high() && other.low() < one.high();
  }

  /// A heater that was dead for twenty minutes would pass for a wall that loses heat.
  @Test
  void aDayThatDidNotTeachesNothing() {
    LookedBack back = looked(notes(Supposition.HEATER_DEAD));

    assertThat(back.teaches()).isFalse();
    assertThat(back.otherwise())
        .extracting(LookedBack.Otherwise::key, LookedBack.Otherwise::what)
        .contains(org.assertj.core.groups.Tuple.tuple("rest.0", Supposition.HEATER_DEAD));
  }

  @Test
  void aDayWithoutReadingsTeachesNothing() {
    List<DayNote> bare =
        notes(Supposition.NOTHING).stream()
            .filter(note -> !(note.event() instanceof Event.ReadingTaken))
            .filter(note -> !(note.event() instanceof Event.PointReached))
            .toList();
    LookedBack back = looked(bare);

    assertThat(back.readings()).isZero();
    assertThat(back.teaches()).isFalse();
  }

  /// A flood of one instrument counts once a minute: the error of place does not average out.
  @Test
  void moreReadingsThanOneAMinuteCountNoMore() {
    List<DayNote> morning = notes(Supposition.NOTHING).stream().limit(60).toList();
    List<DayNote> flood = new ArrayList<>();
    for (DayNote note : morning) {
      for (int i = 0; i < 5; i++) {
        boolean once = i > 0 && !(note.event() instanceof Event.ReadingTaken);
        if (!once) {
          flood.add(
              new DayNote(
                  5 * note.seq() + i, note.at().plusSeconds(i), note.noted(), note.event(), true));
        }
      }
    }
    assertThat(flood).hasSizeGreaterThan(4 * morning.size());
    assertThat(looked(flood).readings()).isEqualTo(looked(morning).readings());
  }
}
