package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.journal.Addition;
import gylebook.journal.Entry;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.journal.MemoryJournal;
import gylebook.testing.Cases;
import gylebook.units.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class BookTest {
  private static final Instant AT = Instant.parse("2026-03-14T08:00:00Z");

  private final Journal journal = new MemoryJournal();
  private Book book = Book.EMPTY;

  private Verdict say(String gyleId, Command command) {
    Verdict verdict = book.decide(gyleId, command);
    if (verdict instanceof Verdict.Accepted(List<Event> events) && !events.isEmpty()) {
      book =
          book.after(journal.append(new Addition(gyleId, book.seen(gyleId), "", AT, AT, events)));
    }
    return verdict;
  }

  private Gyle bitter() {
    return book.gyle("bitter").orElseThrow();
  }

  private void open() {
    say("bitter", new Command.OpenGyle("Copper bitter", true, "r0", "g0"));
  }

  @Test
  void anOpenedGyleHasItsRecipeAndRig() {
    open();

    assertThat(bitter().recipe().document()).isEqualTo("r0");
    assertThat(bitter().rig().document()).isEqualTo("g0");
    assertThat(bitter().invented()).isTrue();
    assertThat(bitter().undoable()).isEmpty();
  }

  @Test
  void aPageOpensOnce() {
    open();

    assertThat(say("bitter", new Command.OpenGyle("Other", false, "x", "y")))
        .isInstanceOf(Verdict.Refused.class);
    assertThat(say(Journal.HOUSE, new Command.OpenGyle("Other", false, "x", "y")))
        .isInstanceOf(Verdict.Refused.class);
    assertThat(book.gyles()).hasSize(1);
  }

  @Test
  void undoStrikesTheLastChangeThatStandsWhicheverPaperItWasOn() {
    open();
    say("bitter", new Command.KeepRecipe("r1", "length"));
    say("bitter", new Command.KeepRig("g1", "element"));
    say("bitter", new Command.KeepRecipe("r2", "hops"));

    say("bitter", new Command.Undo());
    assertThat(bitter().recipe().document()).isEqualTo("r1");
    say("bitter", new Command.Undo());
    assertThat(bitter().rig().document()).isEqualTo("g0");
    assertThat(bitter().recipe().document()).isEqualTo("r1");
    say("bitter", new Command.Undo());
    assertThat(bitter().recipe().document()).isEqualTo("r0");
    assertThat(say("bitter", new Command.Undo())).isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void aFixedPlanKeepsItsPapersWhateverIsChangedOrStruckLater() {
    open();
    say("bitter", new Command.KeepRecipe("r1", "length"));
    say("bitter", new Command.FixPlan("1", 7, 1000, "20 L at noon"));
    say("bitter", new Command.Undo());
    say("bitter", new Command.KeepRecipe("r2", "hops"));

    FixedPlan plan = bitter().plan().orElseThrow();
    assertThat(plan.recipe()).isEqualTo("r1");
    assertThat(plan.rig()).isEqualTo("g0");
    assertThat(plan.seed()).isEqualTo(7);
    assertThat(plan.report()).isEqualTo("20 L at noon");
    assertThat(bitter().recipe().document()).isEqualTo("r2");
  }

  @Test
  void whatChangesNothingWritesNothing() {
    open();

    assertThat(say("bitter", new Command.KeepRecipe("r0", "length")))
        .isEqualTo(new Verdict.Accepted(List.of()));
    assertThat(say("bitter", new Command.KeepRig("g0", "element")))
        .isEqualTo(new Verdict.Accepted(List.of()));
  }

  @Test
  void unitsAreChosenForTheHouseBySetThenByQuantity() {
    say(Journal.HOUSE, new Command.ChooseUnits("", "us"));
    say(Journal.HOUSE, new Command.ChooseUnits("TEMPERATURE", "\u00b0C"));

    assertThat(book.units().unit(Quantity.TEMPERATURE).symbol()).isEqualTo("\u00b0C");
    assertThat(book.units().unit(Quantity.VOLUME).symbol()).isEqualTo("US gal");
    for (Command wrong :
        List.of(
            new Command.ChooseUnits("", "furlongs"),
            new Command.ChooseUnits("TEMPERATURE", "kg"),
            new Command.ChooseUnits("SMELL", "kg"))) {
      assertThat(say(Journal.HOUSE, wrong)).isInstanceOf(Verdict.Refused.class);
    }
    assertThat(say("bitter", new Command.ChooseUnits("", "us")))
        .isInstanceOf(Verdict.Refused.class);
  }

  @Test
  void anUnknownPageIsRefusedByName() {
    for (Command command :
        List.of(
            new Command.KeepRecipe("r", "x"),
            new Command.KeepRig("g", "x"),
            new Command.FixPlan("1", 1, 1, ""),
            new Command.Undo())) {
      Verdict verdict = say("nowhere", command);
      assertThat(verdict).isInstanceOf(Verdict.Refused.class);
      assertThat(((Verdict.Refused) verdict).because()).contains("nowhere");
    }
  }

  /// Whatever is said in whatever order: reading the entries from the start, or in any two parts,
  /// gives the book that was kept up to date entry by entry.
  @Test
  void theBookIsTheFoldOfItsEntries() {
    Cases.each(
        200,
        random -> {
          Journal fresh = new MemoryJournal();
          Book kept = Book.EMPTY;
          for (int i = 0; i < 30; i++) {
            String gyleId = random.nextInt(8) == 0 ? Journal.HOUSE : "g" + random.nextInt(3);
            if (kept.decide(gyleId, any(random)) instanceof Verdict.Accepted(List<Event> events)
                && !events.isEmpty()) {
              kept =
                  kept.after(
                      fresh.append(new Addition(gyleId, kept.seen(gyleId), "", AT, AT, events)));
            }
          }
          List<Entry> entries = fresh.entries(0);
          int cut = random.nextInt(entries.size() + 1);

          assertThat(Book.EMPTY.after(entries)).isEqualTo(kept);
          assertThat(
                  Book.EMPTY
                      .after(entries.subList(0, cut))
                      .after(entries.subList(cut, entries.size())))
              .isEqualTo(kept);
        });
  }

  private static Command any(RandomGenerator random) {
    String paper = "p" + random.nextInt(5);
    return switch (random.nextInt(6)) {
      case 0 -> new Command.OpenGyle(paper, random.nextBoolean(), paper, paper);
      case 1 -> new Command.KeepRecipe(paper, "changed");
      case 2 -> new Command.KeepRig(paper, "changed");
      case 3 -> new Command.FixPlan("1", random.nextLong(), 10, paper);
      case 4 -> new Command.ChooseUnits("", "us");
      default -> new Command.Undo();
    };
  }

  @Test
  void anInstrumentIsTiedToTheHouseAnewUnderItsNameAndLoosed() {
    say(Journal.HOUSE, new Command.TieInstrument("suction", "at the pump", "d0"));
    say(Journal.HOUSE, new Command.TieInstrument("wall", "in the wall", "d1"));
    say(Journal.HOUSE, new Command.TieInstrument("suction", "in the hose", "d2"));

    assertThat(book.tied()).extracting(TiedInstrument::name).containsExactly("suction", "wall");
    assertThat(book.tied()).extracting(TiedInstrument::document).containsExactly("d2", "d1");
    assertThat(book.seen(Journal.HOUSE)).isEqualTo(book.lastSeq());
    say(Journal.HOUSE, new Command.LooseInstrument("suction"));
    assertThat(book.tied()).extracting(TiedInstrument::place).containsExactly("in the wall");
  }

  @Test
  void anInstrumentBelongsToNoGyleAndWhatIsNotTiedCannotBeLoosed() {
    open();

    assertThat(say("bitter", new Command.TieInstrument("suction", "", "d")))
        .isInstanceOf(Verdict.Refused.class);
    assertThat(say(Journal.HOUSE, new Command.TieInstrument(" ", "", "d")))
        .isInstanceOf(Verdict.Refused.class);
    assertThat(say(Journal.HOUSE, new Command.LooseInstrument("suction")))
        .isInstanceOf(Verdict.Refused.class);
    assertThat(book.tied()).isEmpty();
  }

  private Verdict keep(String place, String gyleId, long afterSeq, String document) {
    return say(place, new Command.KeepForecast(gyleId, afterSeq, document));
  }

  @Test
  void aForecastIsKeptOnceOnAPageOfItsOwnAndGetsInNobodysWay() {
    open();
    long seen = book.seen("bitter");
    String document = "engine 5\nat -1\nboilReached atSec 9300 210 8950 9660";
    keep(Journal.FORECASTS, "bitter", 3, document);
    keep(Journal.FORECASTS, "bitter", 3, document.replace("9300", "9301"));

    assertThat(book.seen("bitter")).isEqualTo(seen);
    assertThat(book.forecasts().of("bitter"))
        .extracting(ForecastsGiven.Kept::document)
        .containsExactly(document);
    assertThat(book.forecasts().after("bitter", 3)).isPresent();
    assertThat(book.forecasts().after("bitter", 4)).isEmpty();
    assertThat(Book.EMPTY.after(journal.entries(0))).isEqualTo(book);
  }

  @Test
  void whatIsNoForecastOrOfNoGyleIsNotKept() {
    open();
    String document = "engine 5\nat -1";
    for (Verdict verdict :
        List.of(
            keep(Journal.FORECASTS, "bitter", 3, "it will be fine"),
            keep(Journal.FORECASTS, "stout", 3, document),
            keep("bitter", "bitter", 3, document),
            say(Journal.FORECASTS, new Command.OpenGyle("Other", false, "x", "y")))) {
      assertThat(verdict).isInstanceOf(Verdict.Refused.class);
    }
    assertThat(book.forecasts()).isEqualTo(ForecastsGiven.NONE);
  }
}
