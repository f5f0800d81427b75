package gylebook.brewday;

import gylebook.journal.Entry;
import gylebook.journal.Event;
import gylebook.journal.Journal;
import gylebook.units.ReadingUnits;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.Consumer;

/// The whole book as its entries tell it; a fold, so the same entries always give the same book.
///
/// @param lastSeq the last entry that was read
/// @param houseSeq the last entry that belongs to no gyle
/// @param units what is read in
/// @param tiedByName the instruments that are listened to, in the order they were tied
/// @param byId every gyle, in the order they were opened
/// @param forecasts what was forecast, as it was given
public record Book(
    long lastSeq,
    long houseSeq,
    ReadingUnits units,
    SequencedMap<String, TiedInstrument> tiedByName,
    SequencedMap<String, Gyle> byId,
    ForecastsGiven forecasts) {

  /// A book nobody has written in.
  public static final Book EMPTY =
      new Book(
          0,
          0,
          ReadingUnits.METRIC,
          new LinkedHashMap<>(),
          new LinkedHashMap<>(),
          ForecastsGiven.NONE);

  /// Copies what it is given.
  public Book {
    tiedByName = new LinkedHashMap<>(tiedByName);
    byId = new LinkedHashMap<>(byId);
  }

  /// The instruments that are listened to, in the order they were tied.
  public List<TiedInstrument> tied() {
    return List.copyOf(tiedByName.values());
  }

  /// Every gyle, in the order they were opened.
  public List<Gyle> gyles() {
    return List.copyOf(byId.values());
  }

  /// The gyle of that name.
  public Optional<Gyle> gyle(String gyleId) {
    return Optional.ofNullable(byId.get(gyleId));
  }

  /// Whether an instrument, by the name it is tied under, belongs to a rehearsal of this book.
  public boolean rehearses(String tied) {
    return byId.values().stream()
        .anyMatch(gyle -> gyle.practice().isPresent() && tied.startsWith(gyle.tiedAs("")));
  }

  /// The last entry on one gyle's page; 0 when there is none.
  public long seen(String gyleId) {
    return switch (gyleId) {
      case Journal.HOUSE -> houseSeq;
      case Journal.FORECASTS -> forecasts.lastSeq();
      default -> gyle(gyleId).map(Gyle::lastSeq).orElse(0L);
    };
  }

  /// The book with these entries read as well.
  public Book after(List<Entry> entries) {
    Book book = this;
    for (Entry entry : entries) {
      book = book.after(entry);
    }
    return book;
  }

  private Book after(Entry entry) {
    if (entry.event() instanceof Event.UnitsChosen chosen) {
      // A unit that this build no longer has leaves the choice as it was.
      ReadingUnits now = ReadingChoice.applied(units, chosen).orElse(units);
      return new Book(entry.seq(), entry.seq(), now, tiedByName, byId, forecasts);
    }
    if (entry.event() instanceof Event.InstrumentTied(var name, var place, var document)) {
      return withTied(
          entry,
          tied ->
              tied.put(name, new TiedInstrument(entry.seq(), entry.at(), name, place, document)));
    }
    if (entry.event() instanceof Event.InstrumentLoosed(String name)) {
      return withTied(entry, tied -> tied.remove(name));
    }
    if (entry.event() instanceof Event.ForecastGiven given) {
      return new Book(entry.seq(), houseSeq, units, tiedByName, byId, forecasts.with(entry, given));
    }
    SequencedMap<String, Gyle> gyles = new LinkedHashMap<>(byId);
    if (entry.event() instanceof Event.GyleOpened opened) {
      gyles.put(entry.gyleId(), Gyle.opened(entry, opened));
    } else {
      gyles.computeIfPresent(entry.gyleId(), (_, gyle) -> gyle.after(entry));
    }
    return new Book(entry.seq(), houseSeq, units, tiedByName, gyles, forecasts);
  }

  private Book withTied(Entry entry, Consumer<SequencedMap<String, TiedInstrument>> change) {
    SequencedMap<String, TiedInstrument> tied = new LinkedHashMap<>(tiedByName);
    change.accept(tied);
    return new Book(entry.seq(), entry.seq(), units, tied, byId, forecasts);
  }

  /// What may come of a command on a gyle's page.
  public Verdict decide(String gyleId, Command command) {
    return switch (command) {
      case Command.OpenGyle open -> open(gyleId, open);
      case Command.ChooseUnits(String quantity, String symbol) ->
          choose(gyleId, new Event.UnitsChosen(quantity, symbol));
      case Command.TieInstrument tie -> tie(gyleId, tie);
      case Command.LooseInstrument(String name) -> loose(gyleId, name);
      case Command.KeepRecipe keep ->
          gyle(gyleId).map(gyle -> keep(gyle, keep)).orElseGet(() -> unknown(gyleId));
      case Command.KeepRig keep ->
          gyle(gyleId).map(gyle -> keep(gyle, keep)).orElseGet(() -> unknown(gyleId));
      case Command.FixPlan fix ->
          gyle(gyleId).map(gyle -> fix(gyle, fix)).orElseGet(() -> unknown(gyleId));
      case Command.KeepForecast keep -> keep(gyleId, keep);
      case Command.Undo _ -> gyle(gyleId).map(Book::undo).orElseGet(() -> unknown(gyleId));
      case Command.StartDay _,
          Command.StartPractice _,
          Command.Reach _,
          Command.Note _,
          Command.Switch _,
          Command.Say _,
          Command.TakeKettle _,
          Command.ChangePlan _,
          Command.Strike _ ->
          gyle(gyleId).map(gyle -> DayRules.decide(gyle, command)).orElseGet(() -> unknown(gyleId));
    };
  }

  private Verdict open(String gyleId, Command.OpenGyle open) {
    if (gyle(gyleId).isPresent() || !free(gyleId)) {
      return new Verdict.Refused(
          "The page '" + gyleId + "' is taken.", "Open the gyle under another name.");
    }
    return new Verdict.Accepted(
        List.of(
            new Event.GyleOpened(open.name(), open.invented()),
            new Event.RecipeKept(open.recipe(), "opened"),
            new Event.RigKept(open.rig(), "opened")));
  }

  private static boolean free(String gyleId) {
    return !gyleId.equals(Journal.HOUSE) && !gyleId.equals(Journal.FORECASTS);
  }

  /// A forecast is given once after one entry, whoever sends it again.
  private Verdict keep(String place, Command.KeepForecast keep) {
    if (!place.equals(Journal.FORECASTS) || gyle(keep.gyleId()).isEmpty()) {
      return unknown(keep.gyleId());
    }
    if (GivenForecast.read(keep.document()).isEmpty()) {
      return new Verdict.Refused("That is no forecast.", "Look at how forecasts are kept.");
    }
    boolean there = forecasts.after(keep.gyleId(), keep.afterSeq()).isPresent();
    return there
        ? new Verdict.Accepted(List.of())
        : Verdict.accept(new Event.ForecastGiven(keep.gyleId(), keep.afterSeq(), keep.document()));
  }

  private Verdict choose(String gyleId, Event.UnitsChosen chosen) {
    if (!gyleId.equals(Journal.HOUSE)) {
      return new Verdict.Refused(
          "Units are chosen for the whole house, not for '" + gyleId + "'.", "Choose them there.");
    }
    if (ReadingChoice.applied(units, chosen).isEmpty()) {
      return new Verdict.Refused(
          "There is no unit '" + chosen.symbol() + "' to read " + spoken(chosen) + " in.",
          "The sets are " + String.join(", ", ReadingChoice.SETS) + ".");
    }
    return Verdict.accept(chosen);
  }

  private Verdict tie(String gyleId, Command.TieInstrument tie) {
    if (!gyleId.equals(Journal.HOUSE)) {
      return new Verdict.Refused(
          "An instrument is tied to the whole house, not to '" + gyleId + "'.", "Tie it there.");
    }
    if (tie.name().isBlank()) {
      return new Verdict.Refused("The instrument has no name.", "Call it after its place.");
    }
    return Verdict.accept(new Event.InstrumentTied(tie.name(), tie.place(), tie.document()));
  }

  private Verdict loose(String gyleId, String name) {
    return gyleId.equals(Journal.HOUSE) && tiedByName.containsKey(name)
        ? Verdict.accept(new Event.InstrumentLoosed(name))
        : new Verdict.Refused(
            "There is no instrument '" + name + "'.", "Look at the list of instruments.");
  }

  private static String spoken(Event.UnitsChosen chosen) {
    return chosen.quantity().isEmpty() ? "everything" : "'" + chosen.quantity() + "'";
  }

  private static Verdict keep(Gyle gyle, Command.KeepRecipe keep) {
    return gyle.recipe().document().equals(keep.document())
        ? new Verdict.Accepted(List.of())
        : Verdict.accept(new Event.RecipeKept(keep.document(), keep.because()));
  }

  private static Verdict keep(Gyle gyle, Command.KeepRig keep) {
    return gyle.rig().document().equals(keep.document())
        ? new Verdict.Accepted(List.of())
        : Verdict.accept(new Event.RigKept(keep.document(), keep.because()));
  }

  private static Verdict fix(Gyle gyle, Command.FixPlan fix) {
    return Verdict.accept(
        new Event.PlanFixed(
            gyle.recipe().seq(),
            gyle.rig().seq(),
            fix.engine(),
            fix.seed(),
            fix.days(),
            fix.report()));
  }

  private static Verdict undo(Gyle gyle) {
    return gyle.undoable()
        .<Verdict>map(last -> Verdict.accept(new Event.Undone(last.seq())))
        .orElseGet(
            () ->
                new Verdict.Refused(
                    "There is nothing to undo on this page.", "Change a value first."));
  }

  private static Verdict unknown(String gyleId) {
    return new Verdict.Refused(
        "There is no gyle '" + gyleId + "'.", "Look at the list of gyles for its name.");
  }
}
