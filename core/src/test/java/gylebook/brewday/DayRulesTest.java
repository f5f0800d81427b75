package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.estimate.Lever;
import gylebook.estimate.Wanted;
import gylebook.journal.Addition;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.MemoryJournal;
import gylebook.simulate.Change;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DayRulesTest {
  private static final Instant START = Instant.parse("2026-03-14T08:00:00Z");
  private static final Event.ReadingTaken WARM =
      new Event.ReadingTaken("hand-held", "KETTLE", true, "40 \u00b0C", "");

  private final Journal journal = new MemoryJournal();
  private Book book = Book.EMPTY;

  private Verdict say(Command command, long min) {
    Verdict verdict = book.decide("bitter", command);
    if (verdict instanceof Verdict.Accepted(List<Event> events) && !events.isEmpty()) {
      Instant at = START.plusSeconds(60 * min);
      Addition more = new Addition("bitter", book.seen("bitter"), "", at, START, events);
      book = book.after(journal.append(more));
    }
    return verdict;
  }

  private Gyle gyle() {
    return book.gyle("bitter").orElseThrow();
  }

  @BeforeEach
  void open() {
    say(new Command.OpenGyle("Copper bitter", true, "r0", "g0"), 0);
  }

  private void begun() {
    say(new Command.FixPlan("3", 20, 100, "as planned"), 0);
    say(new Command.StartDay(), 0);
  }

  @Test
  void aDayBeginsOnceAndOnlyByAPlan() {
    assertThat(say(new Command.StartDay(), 0)).isInstanceOf(Verdict.Refused.class);
    begun();
    assertThat(gyle().brewedBy()).isEqualTo(gyle().plan());
    assertThat(say(new Command.StartDay(), 1)).isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void nothingIsNotedBeforeTheDayBegins() {
    assertThat(say(new Command.Note(WARM), 0)).isInstanceOf(Verdict.Refused.class);
    assertThat(say(new Command.Reach("boilReached"), 0)).isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void whatTwoPeopleSawIsReachedOnce() {
    begun();
    say(new Command.Reach("strikeReady"), 40);
    say(new Command.Reach("strikeReady"), 41);

    assertThat(gyle().happened()).hasSize(2);
  }

  @Test
  void theKettleGoesToWhoTookItLastWheneverTheirWordArrived() {
    begun();
    say(new Command.TakeKettle("tablet-1", "a tablet"), 10);
    say(new Command.TakeKettle("phone-22", "a phone"), 30);
    say(new Command.TakeKettle("tablet-1", "a tablet"), 20);

    assertThat(gyle().atKettle().orElseThrow().called()).isEqualTo("a phone");
    assertThat(gyle().happened()).as("it is no note of the day").hasSize(1);
    assertThat(book.decide("bitter", new Command.TakeKettle("phone-22", "a phone")))
        .as("who is there stays there")
        .isEqualTo(new Verdict.Accepted(List.of()));
    assertThat(say(new Command.TakeKettle("<b>", "a phone"), 40))
        .isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void notesStandInTheOrderTheyHappened() {
    begun();
    say(new Command.Reach("strikeReady"), 40);
    say(new Command.Note(WARM), 20);

    assertThat(gyle().happened().stream().map(DayNote::event))
        .containsExactly(
            new Event.DayStarted(gyle().plan().orElseThrow().seq()),
            WARM,
            new Event.PointReached("strikeReady"));
  }

  @Test
  void aStruckNoteStaysButCountsNoLonger() {
    begun();
    say(new Command.Note(WARM), 20);
    long seq = gyle().day().getLast().seq();
    say(new Command.Strike(seq), 21);

    assertThat(gyle().happened()).hasSize(1);
    assertThat(gyle().day()).hasSize(2);
    assertThat(say(new Command.Strike(seq), 22)).isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void aStruckBeginningEndsTheDay() {
    begun();
    say(new Command.Reach("boilReached"), 1);
    say(new Command.Strike(gyle().started().orElseThrow().seq()), 2);

    assertThat(gyle().started()).isEmpty();
    assertThat(gyle().happened()).isEmpty();
    assertThat(say(new Command.StartDay(), 3)).isInstanceOf(Verdict.Accepted.class);
    assertThat(gyle().happened())
        .extracting(DayNote::event)
        .hasOnlyElementsOfType(Event.DayStarted.class);
    assertThat(gyle().day()).hasSize(3);
  }

  @Test
  void theDayKeepsItsPlanWhenAnotherIsFixedMeanwhile() {
    begun();
    long first = gyle().plan().orElseThrow().seq();
    say(new Command.FixPlan("3", 20, 100, "another"), 5);

    assertThat(gyle().brewedBy().orElseThrow().seq()).isEqualTo(first);
  }

  @Test
  void aSwitchTakesOnlyWhatItCanBe() {
    begun();
    assertThat(say(new Command.Switch("heater", "40 %"), 1)).isInstanceOf(Verdict.Accepted.class);
    assertThat(say(new Command.Switch("heater", "12,5"), 1)).isInstanceOf(Verdict.Accepted.class);
    assertThat(say(new Command.Switch("heater", "140 %"), 1)).isInstanceOf(Verdict.Refused.class);
    assertThat(say(new Command.Switch("pump", "maybe"), 1)).isInstanceOf(Verdict.Refused.class);
    assertThat(say(new Command.Switch("radio", "on"), 1)).isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void aWayIsTakenOnlyAsWhatCanBeReadBackAndCanBeStruck() {
    begun();
    PlanChange change =
        new PlanChange(
            Lever.Kind.BOIL_ON,
            "longerSec",
            600,
            List.of(new Change.Lasts("flameOut", 600)),
            new Wanted(12, 18, 30, 20));
    assertThat(say(new Command.ChangePlan("Pray.", "way PRAY"), 1))
        .isInstanceOf(Verdict.Refused.class);
    assertThat(say(new Command.ChangePlan("Boil on. 10 min", change.text()), 1))
        .isInstanceOf(Verdict.Accepted.class);
    assertThat(gyle().happened().getLast().event())
        .isEqualTo(new Event.PlanChanged("Boil on. 10 min", change.text()));
    assertThat(gyle().brewedBy()).isEqualTo(gyle().plan());

    say(new Command.Strike(gyle().day().getLast().seq()), 2);
    assertThat(gyle().happened()).hasSize(1);
    assertThat(gyle().day()).hasSize(2);
  }

  @Test
  void aPlaceThatTheRigDoesNotHaveIsRefused() {
    begun();
    assertThat(
            say(new Command.Note(new Event.ReadingTaken("dial", "ROOF", true, "4 \u00b0C", "")), 1))
        .isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void aPageForPracticeNeverHoldsARealDay() {
    say(new Command.FixPlan("3", 20, 100, "as planned"), 0);
    say(new Command.StartPractice(7, 20), 0);
    assertThat(gyle().brewedBy()).isEqualTo(gyle().plan());
    assertThat(say(new Command.StartDay(), 1)).isInstanceOf(Verdict.Refused.class);
    long began = gyle().practice().orElseThrow().seq();
    assertThat(say(new Command.Strike(began), 1)).isInstanceOf(Verdict.Refused.class);
    assertThat(say(new Command.StartPractice(8, 1), 1)).isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void aPageWithARealDayIsNotForPractice() {
    begun();
    assertThat(say(new Command.StartPractice(7, 20), 1)).isInstanceOf(Verdict.Refused.class);
    assertThat(gyle().practice()).isEmpty();
  }

  @Test
  void aPaceThatNoDayCanGoIsRefused() {
    say(new Command.FixPlan("3", 20, 100, "as planned"), 0);
    for (int pace : new int[] {-1, 0, 1001}) {
      assertThat(say(new Command.StartPractice(7, pace), 0)).isInstanceOf(Verdict.Refused.class);
    }
    assertThat(gyle().day()).isEmpty();
  }

  @Test
  void theClockOfAPracticeDayGoesByItsPaceAndThatOfARealDayAsInLife() {
    assertThat(gyle().now(START.plusSeconds(90))).isEqualTo(START.plusSeconds(90));
    say(new Command.FixPlan("3", 20, 100, "as planned"), 0);
    say(new Command.StartPractice(7, 20), 0);
    assertThat(gyle().now(START)).isEqualTo(START);
    assertThat(gyle().now(START.plusSeconds(90))).isEqualTo(START.plusSeconds(1800));
  }
}
