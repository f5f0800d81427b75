package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.journal.Addition;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.MemoryJournal;
import gylebook.rig.DemoRigs;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// What counts as having come, and which forecasts are held against it; expected is what the notes
/// written here say.
class DayJudgedTest {
  private static final Instant BEGAN = Instant.parse("2026-03-14T08:00:00Z");
  private static final String FORECAST =
      """
      engine 5
      at AT
      strikeReady atSec 2300 100 2140 2460
      rest.0 atSec 6000 10 5990 6010
      settled grainC 66.5 0.5 65.7 67.3
      bagOut hotL 25.4 0.4 24.7 26.1
      boilReached atSec 9000 200 8670 9330
      boilReached hotL 25.8 0.4 25.1 26.5
      flameOut wortPlato 12.1 0.4 11.4 12.8
      day firstWortPlato 10.6 0.3 10.1 11.1
      day preBoilPlato 10.2 0.3 9.7 10.7
      day castC 19 1 17.4 20.6
      day fermenterL 20 0.5 19.2 20.8
      day strengthPlato 12 0.4 11.3 12.7""";

  private final Journal journal = new MemoryJournal();
  private Book book = Book.EMPTY;

  private long write(String place, double min, Event event) {
    Instant at = BEGAN.plusMillis(Math.round(60_000 * min));
    List<Event> one = List.of(event);
    book = book.after(journal.append(new Addition(place, book.seen(place), "", at, at, one)));
    return book.lastSeq();
  }

  private long note(double min, Event event) {
    return write("bitter", min, event);
  }

  private void read(double min, String instrument, String place, String asRead) {
    note(min, new Event.ReadingTaken(instrument, place, true, asRead, ""));
  }

  private long reached(double min, String point) {
    return note(min, new Event.PointReached(point));
  }

  private void given(double min, long afterSeq, String atSec) {
    write(
        Journal.FORECASTS,
        min,
        new Event.ForecastGiven("bitter", afterSeq, FORECAST.replace("AT", atSec)));
  }

  @BeforeEach
  void begin() {
    note(-60, new Event.GyleOpened("Bitter", false));
    long recipe = note(-60, new Event.RecipeKept("recipe", "opened"));
    long rig = note(-60, new Event.RigKept("rig", "opened"));
    note(-50, new Event.PlanFixed(recipe, rig, "5", 20, 100, ""));
    given(-50, plan(), "-1");
    note(0, new Event.DayStarted(plan()));
  }

  private long plan() {
    return gyle().plan().orElseThrow().seq();
  }

  private Gyle gyle() {
    return book.gyle("bitter").orElseThrow();
  }

  private DayJudged judged() {
    return DayJudged.of(gyle(), book.forecasts(), Follower.instruments(DemoRigs.household()))
        .orElseThrow();
  }

  private DayJudged.Row row(String point, String key) {
    return judged().numbers().stream()
        .filter(one -> one.point().equals(point) && one.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private Optional<Double> came(String point, String key) {
    return row(point, key).came().map(Came::value);
  }

  @Test
  void aTimeIsThatOfTheTickAndWhatAClockEndsIsNotAsked() {
    reached(39, "strikeReady");
    reached(101, "rest.0");

    assertThat(came("strikeReady", Foreseen.AT)).contains(39.0 * 60);
    assertThat(row("strikeReady", Foreseen.AT).byPlan().orElseThrow().held()).isTrue();
    assertThat(judged().numbers()).noneMatch(one -> one.point().equals("rest.0"));
    assertThat(came("boilReached", Foreseen.AT)).as("not ticked off").isEmpty();
  }

  /// Nobody's dip is a forecast: without a reading there is nothing to judge by.
  @Test
  void whatNobodyMeasuredIsNotJudged() {
    reached(120, "bagOut");
    reached(150, "boilReached");

    assertThat(row("bagOut", "hotL").judged()).isEmpty();
    assertThat(row(Foreseen.DAY, "fermenterL").came()).isEmpty();
    assertThat(row(Foreseen.DAY, "preBoilPlato").came()).isEmpty();
  }

  @Test
  void aReadingCountsForThePointItWasTakenNear() {
    reached(120, "bagOut");
    read(122, "dip-stick", "KETTLE", "25.0 L");
    reached(150, "boilReached");
    read(151, "dip-stick", "KETTLE", "26.0 L");
    read(170, "dip-stick", "KETTLE", "24.0 L");

    assertThat(came("bagOut", "hotL")).contains(25.0);
    assertThat(came("boilReached", "hotL")).contains(26.0);
    // Scatter 0.3 L and marks 0.15 L together.
    assertThat(row("bagOut", "hotL").came().orElseThrow().doubt())
        .isCloseTo(Math.sqrt(0.3 * 0.3 + 0.15 * 0.15), within(1e-9));
  }

  @Test
  void theGrainIsReadInTheGrainAndAStirredStrengthAtItsOwnWarmth() {
    reached(50, "settled");
    read(51, Follower.HAND_HELD, "KETTLE", "70 \u00b0C");
    assertThat(came("settled", "grainC")).isEmpty();
    read(52, Follower.HAND_HELD, "BED", "66 \u00b0C");
    assertThat(came("settled", "grainC")).contains(66.0);

    reached(120, "bagOut");
    note(121, new Event.ReadingTaken("hydrometer", "KETTLE", false, "9 \u00b0P", "20 \u00b0C"));
    assertThat(came(Foreseen.DAY, "preBoilPlato")).as("not stirred").isEmpty();
    reached(150, "boilReached");
    note(140, new Event.ReadingTaken("hydrometer", "KETTLE", true, "10 \u00b0P", "20 \u00b0C"));
    assertThat(came(Foreseen.DAY, "preBoilPlato").orElseThrow()).isCloseTo(10, within(1e-9));
    note(141, new Event.ReadingTaken("hydrometer", "KETTLE", true, "9.6 \u00b0P", "40 \u00b0C"));
    assertThat(came(Foreseen.DAY, "preBoilPlato").orElseThrow())
        .as("nearer to the boil, and warm wort reads low")
        .isBetween(9.9, 12.0);
  }

  @Test
  void theStrengthOfTheMashIsReadWhenTheLastRestIsOver() {
    reached(101, "rest.0");
    read(102, "hydrometer", "KETTLE", "9 \u00b0P");
    reached(118, "rest.1");
    read(119, "hydrometer", "KETTLE", "10.4 \u00b0P");
    reached(130, "bagOut");
    read(131, "hydrometer", "KETTLE", "10 \u00b0P");

    assertThat(came(Foreseen.DAY, "firstWortPlato")).contains(10.4);
    reached(150, "boilReached");
    assertThat(came(Foreseen.DAY, "preBoilPlato")).contains(10.0);
  }

  @Test
  void theWortIsReadAsItRunsIn() {
    reached(230, "knockOut");
    reached(250, "chilled");
    read(252, Follower.HAND_HELD, "KETTLE", "19.5 \u00b0C");
    reached(260, "cast");
    assertThat(came(Foreseen.DAY, "castC")).contains(19.5);
    read(255, "wort out of the chiller", "KETTLE", "18.5 \u00b0C");
    assertThat(came(Foreseen.DAY, "castC")).contains(18.5);
    read(262, "hydrometer", "KETTLE", "12.3 \u00b0P");
    assertThat(came(Foreseen.DAY, "strengthPlato")).contains(12.3);
  }

  /// The last counts, for more may run in; what was read before the run-off is of another gyle.
  @Test
  void theLitresInTheFermenterAreReadOffItsMarks() {
    read(100, "litres in the fermenter", "KETTLE", "1 L");
    reached(260, "cast");
    assertThat(came(Foreseen.DAY, "fermenterL")).isEmpty();
    read(255, "litres in the fermenter", "KETTLE", "15 L");
    read(265, "litres in the fermenter", "KETTLE", "5 gal");
    assertThat(came(Foreseen.DAY, "fermenterL").orElseThrow()).isCloseTo(18.927, within(1e-3));
    assertThat(row(Foreseen.DAY, "fermenterL").came().orElseThrow().doubt())
        .isCloseTo(0.03 * 18.927, within(1e-3));
  }

  @Test
  void aForecastThatCameAfterwardsIsNotHeldAgainstIt() {
    long strike = reached(39, "strikeReady");
    reached(120, "bagOut");
    read(122, "dip-stick", "KETTLE", "25.0 L");
    given(123, strike, "7380");

    assertThat(row("bagOut", "hotL").judged()).extracting(Judged::byPlan).containsExactly(true);
    reached(150, "boilReached");
    assertThat(row("boilReached", Foreseen.AT).judged())
        .extracting(Judged::after)
        .containsExactly("", "strikeReady");
    assertThat(row("boilReached", Foreseen.AT).last().orElseThrow().atSec()).isEqualTo(7380);
  }

  @Test
  void whatWasGivenAtAPointThatWasStruckOrByAnotherPlanCountsNoMore() {
    long wrong = reached(30, "strikeReady");
    given(30.1, wrong, "1800");
    note(31, new Event.Undone(wrong));
    given(32, 999, "-1");
    reached(39, "strikeReady");
    reached(150, "boilReached");

    assertThat(row("boilReached", Foreseen.AT).judged())
        .extracting(Judged::after)
        .containsExactly("");
  }

  @Test
  void aReadingThatWasStruckIsNoMeasurement() {
    reached(120, "bagOut");
    long slip = note(121, new Event.ReadingTaken("dip-stick", "KETTLE", true, "52 L", ""));
    note(122, new Event.Undone(slip));

    assertThat(came("bagOut", "hotL")).isEmpty();
  }

  @Test
  void withoutADayOrAForecastThereIsNothingToJudge() {
    assertThat(DayJudged.of(gyle(), ForecastsGiven.NONE, List.of())).isEmpty();
    note(1, new Event.Undone(gyle().started().orElseThrow().seq()));
    assertThat(DayJudged.of(gyle(), book.forecasts(), List.of())).isEmpty();
  }
}
