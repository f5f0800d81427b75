package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.brewday.Gyle;
import gylebook.device.Decoded;
import gylebook.device.Heard;
import gylebook.device.Oddity;
import gylebook.journal.Addition;
import gylebook.journal.Entry;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.JournalUnavailable;
import gylebook.journal.MemoryJournal;
import gylebook.rig.DemoRigs;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class NoteTakerTest {
  private static final Instant NOW = Instant.parse("2026-03-14T08:00:00Z");
  private static final String PROBE = DemoRigs.household().probes().getFirst().name();

  private final Journal kept = new MemoryJournal();
  private boolean full;
  private final Journal disk =
      new Journal() {
        @Override
        public List<Entry> append(Addition addition) {
          if (full) {
            throw new JournalUnavailable("The disk is full.", new IOException());
          }
          return kept.append(addition);
        }

        @Override
        public List<Entry> entries(long afterSeq) {
          return kept.entries(afterSeq);
        }

        @Override
        public boolean has(String once) {
          return kept.has(once);
        }
      };
  private final Clerk clerk = new Clerk(disk, InstantSource.fixed(NOW.plusSeconds(3600)));
  private final Wallet wallet = new Wallet();
  private final NoteTaker taker = new NoteTaker(clerk, wallet);

  @BeforeEach
  void plan() {
    Serve.invent(clerk, wallet);
    long seen = gyle().lastSeq();
    clerk.write("bitter", seen, new Command.FixPlan("3", 20, 20, "as planned"), "fixed");
  }

  private Gyle gyle() {
    return clerk.book().gyle("bitter").orElseThrow();
  }

  private void start() {
    clerk.note("bitter", new Command.StartDay(), "began", Optional.of(NOW));
  }

  private static Heard heard(String name, double readC, long afterSec, Set<Oddity> oddities) {
    Entered amount = Entered.of(readC, Unit.known(Quantity.TEMPERATURE, "\u00b0C"));
    return new Heard(
        name, NOW.plusSeconds(afterSec), new Decoded.Value(amount, Optional.empty()), oddities, 0);
  }

  private List<String> read() {
    return gyle().happened().stream()
        .map(DayNote::event)
        .filter(Event.ReadingTaken.class::isInstance)
        .map(event -> ((Event.ReadingTaken) event).asRead())
        .toList();
  }

  @Test
  void nothingIsNotedWhileNoDayIsUnderWay() {
    taker.accept(heard(PROBE, 20, 0, Set.of()));

    assertThat(gyle().day()).isEmpty();
  }

  @Test
  void aTiedThermometerIsNotedOnceAMinute() {
    start();
    for (int sec = 0; sec <= 120; sec += 5) {
      taker.accept(heard(PROBE, 20 + sec / 10.0, sec, Set.of()));
    }

    assertThat(read()).hasSize(3);
    assertThat(gyle().happened().getLast().at()).isEqualTo(NOW.plusSeconds(120));
  }

  @Test
  void whatIsOddAndWhatTheRigDoesNotKnowStaysOffTheDay() {
    start();
    taker.accept(heard(PROBE, 85, 0, Set.of(Oddity.POWER_ON_VALUE)));
    taker.accept(heard("thermometer of the cellar", 12, 0, Set.of()));

    assertThat(read()).isEmpty();
  }

  @Test
  void afterTheLastPointNothingIsNotedAnyMore() {
    start();
    clerk.note("bitter", new Command.Reach("cast"), "done", Optional.of(NOW));
    taker.accept(heard(PROBE, 20, 60, Set.of()));

    assertThat(read()).isEmpty();
  }

  @Test
  void whatAFullDiskRefusedIsTriedAgainWithTheNextReading() {
    start();
    full = true;
    taker.accept(heard(PROBE, 20, 0, Set.of()));
    full = false;
    taker.accept(heard(PROBE, 21, 5, Set.of()));

    assertThat(read()).hasSize(1);
    assertThat(read().getFirst()).startsWith("21");
  }

  @Test
  void theControllersDutyIsNotedWhenItIsAShare() {
    start();
    Entered share = Entered.of(37, Unit.known(Quantity.SHARE, "%"));
    Decoded.Value said = new Decoded.Value(share, Optional.empty());
    taker.accept(new Heard("duty", NOW.plusSeconds(60), said, Set.of(), 0));
    taker.accept(heard("duty", 37, 120, Set.of()));

    assertThat(read()).containsExactly("37.0 %");
  }

  private List<String> readIn(String gyleId) {
    return clerk.book().gyle(gyleId).orElseThrow().happened().stream()
        .filter(note -> note.event() instanceof Event.ReadingTaken)
        .map(note -> note.at() + " " + ((Event.ReadingTaken) note.event()).instrument())
        .toList();
  }

  @Test
  void aRehearsalIsNotedOnItsOwnDayByThatDaysClockAndNowhereElse() {
    start();
    for (String page : List.of("rehearsal-1", "rehearsal-2")) {
      clerk.write(
          page,
          0,
          new Command.OpenGyle(page, true, gyle().recipe().document(), gyle().rig().document()),
          page);
      clerk.write(page, clerk.book().seen(page), new Command.FixPlan("3", 20, 20, ""), page + "f");
      clerk.note(page, new Command.StartPractice(7, 20), page + "s", Optional.of(NOW));
    }
    Instant noted = NOW.plusSeconds(3600);
    long afterSec = Duration.between(NOW, noted).toSeconds();
    for (int sec = 0; sec < 9; sec++) {
      taker.accept(heard("rehearsal-1 " + PROBE, 20, afterSec + sec, Set.of()));
    }

    // Nine seconds of the wall clock are three minutes of a day that goes twenty times faster.
    assertThat(readIn("rehearsal-1"))
        .containsExactly(
            NOW + " " + PROBE,
            NOW.plusSeconds(60) + " " + PROBE,
            NOW.plusSeconds(120) + " " + PROBE);
    assertThat(readIn("rehearsal-2")).isEmpty();
    assertThat(readIn("bitter")).isEmpty();

    taker.accept(heard(PROBE, 66, 60, Set.of()));
    assertThat(readIn("bitter")).hasSize(1);
    assertThat(readIn("rehearsal-1")).hasSize(3);
  }
}
