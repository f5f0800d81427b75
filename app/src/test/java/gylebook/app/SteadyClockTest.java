package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.journal.MemoryJournal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// Clocks are set, stand wrong and change with the season; a boil of an hour lasts an hour.
class SteadyClockTest {
  private static final Instant MORNING = Instant.parse("2026-03-14T08:00:00Z");

  private Instant wall = MORNING;
  private Duration up = Duration.ofHours(3);

  private SteadyClock clock(Instant newest) {
    return new SteadyClock(() -> wall, () -> up, newest);
  }

  private void pass(Duration time) {
    wall = wall.plus(time);
    up = up.plus(time);
  }

  @Test
  void anHourIsAnHourWhateverTheWallClockIsSetTo() {
    SteadyClock clock = clock(Instant.EPOCH);
    Instant began = clock.instant();
    for (Duration step : List.of(Duration.ofHours(2), Duration.ofHours(-5), Duration.ofDays(400))) {
      Instant before = clock.instant();
      wall = wall.plus(step);
      pass(Duration.ofMinutes(20));
      assertThat(Duration.between(before, clock.instant()))
          .as("the wall clock was set by %s", step)
          .isEqualTo(Duration.ofMinutes(20));
    }
    assertThat(Duration.between(began, clock.instant())).isEqualTo(Duration.ofHours(1));
  }

  @Test
  void aClockThatIsKeptRightIsFollowedAndNeverRunsBackward() {
    SteadyClock clock = clock(Instant.EPOCH);
    pass(Duration.ofMinutes(10));
    wall = wall.plusMillis(300);
    assertThat(clock.instant()).isEqualTo(wall);

    Instant before = clock.instant();
    wall = wall.minusMillis(800);
    assertThat(clock.instant()).as("time stands still").isEqualTo(before);
    pass(Duration.ofSeconds(1));
    assertThat(clock.instant()).isEqualTo(wall).isAfter(before);
  }

  @Test
  void nothingHappensBeforeWhatIsWritten() {
    assertThat(clock(MORNING.plusSeconds(7200)).instant()).isEqualTo(MORNING.plusSeconds(7200));
    assertThat(clock(MORNING.plus(Duration.ofDays(900))).instant())
        .as("an entry years ahead was written by a wrong clock")
        .isEqualTo(MORNING);
  }

  @Test
  void thisMachinesClockRuns() {
    SteadyClock clock = SteadyClock.ofThisMachine(Instant.EPOCH);
    Instant first = clock.instant();
    assertThat(clock.instant()).isAfterOrEqualTo(first);
  }

  @Test
  void theNotesOfADayKeepTheirDistancesAcrossAClockThatIsSetAndTheChangeToSummerTime() {
    // In the night to 29 March the clocks of central Europe go from two to three.
    wall = ZonedDateTime.parse("2026-03-29T00:30:00+01:00[Europe/Berlin]").toInstant();
    Clerk clerk = new Clerk(new MemoryJournal(), clock(Instant.EPOCH));
    Serve.invent(clerk, new Wallet());
    clerk.write(
        "bitter",
        clerk.book().seen("bitter"),
        new Command.FixPlan("test", 20, 100, "as planned"),
        "plan");
    clerk.note("bitter", new Command.StartDay(), "", Optional.empty());
    pass(Duration.ofHours(1));
    wall = wall.minus(Duration.ofHours(6));
    clerk.note("bitter", new Command.Reach("strikeReady"), "", Optional.empty());
    pass(Duration.ofHours(2));
    clerk.note("bitter", new Command.Reach("doughedIn"), "", Optional.empty());

    List<DayNote> notes = clerk.book().gyle("bitter").orElseThrow().happened();
    Instant began = notes.getFirst().at();
    assertThat(notes.stream().map(note -> Duration.between(began, note.at()).toMinutes()))
        .containsExactly(0L, 60L, 180L);
  }
}
