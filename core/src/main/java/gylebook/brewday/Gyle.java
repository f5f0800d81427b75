package gylebook.brewday;

import gylebook.journal.Entry;
import gylebook.journal.Event;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// One gyle as its entries tell it.
///
/// @param gyleId its name in addresses
/// @param name what the brewer calls it
/// @param invented whether it is there to look round with
/// @param lastSeq its last entry
/// @param recipes every recipe that stands, oldest first; the last one counts
/// @param rigs every rig that stands, oldest first; the last one counts
/// @param plans the plans of the day, oldest first
/// @param day everything noted on the day, in the order it was written
/// @param atKettle the screen at the kettle; empty while none has said so
public record Gyle(
    String gyleId,
    String name,
    boolean invented,
    long lastSeq,
    List<Kept> recipes,
    List<Kept> rigs,
    List<FixedPlan> plans,
    List<DayNote> day,
    Optional<AtKettle> atKettle) {

  /// Copies the lists.
  public Gyle {
    day = List.copyOf(day);
    recipes = List.copyOf(recipes);
    rigs = List.copyOf(rigs);
    plans = List.copyOf(plans);
  }

  static Gyle opened(Entry entry, Event.GyleOpened event) {
    return new Gyle(
        entry.gyleId(),
        event.name(),
        event.invented(),
        entry.seq(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  /// The recipe that counts.
  public Kept recipe() {
    return recipes.getLast();
  }

  /// The rig that counts.
  public Kept rig() {
    return rigs.getLast();
  }

  /// The plan of the day, once one is fixed.
  public Optional<FixedPlan> plan() {
    return plans.isEmpty() ? Optional.empty() : Optional.of(plans.getLast());
  }

  /// When the day began; empty before it.
  public Optional<DayNote> started() {
    return day.stream()
        .filter(note -> note.stands() && (begins(note) || practises(note)))
        .findFirst();
  }

  private static boolean begins(DayNote note) {
    return note.event() instanceof Event.DayStarted;
  }

  private static boolean practises(DayNote note) {
    return note.event() instanceof Event.PracticeStarted;
  }

  /// The beginning of practice on this page, where it is one for practice.
  public Optional<DayNote> practice() {
    return day.stream().filter(Gyle::practises).findFirst();
  }

  /// How many times faster than life the clock of this day goes.
  public int pace() {
    return practice()
        .map(DayNote::event)
        .map(event -> event instanceof Event.PracticeStarted started ? started.pace() : 1)
        .orElse(1);
  }

  /// The time by the clock of this day; that of a day for practice may go faster than life.
  ///
  /// @param wall the time by the clock that notes are written by
  public Instant now(Instant wall) {
    return practice()
        .map(began -> began.at().plus(Duration.between(began.noted(), wall).multipliedBy(pace())))
        .orElse(wall);
  }

  /// The name under which an instrument of this day is tied; one of a rehearsal is never taken for
  /// one that is really there.
  public String tiedAs(String instrument) {
    return practice().isPresent() ? gyleId + " " + instrument : instrument;
  }

  /// The plan that the day is brewed by.
  public Optional<FixedPlan> brewedBy() {
    return started()
        .map(DayNote::event)
        .flatMap(
            event ->
                switch (event) {
                  case Event.DayStarted(long planSeq) -> plan(planSeq);
                  case Event.PracticeStarted(long planSeq, long _, int _) -> plan(planSeq);
                  default -> Optional.empty();
                });
  }

  private Optional<FixedPlan> plan(long seq) {
    return plans.stream().filter(plan -> plan.seq() == seq).findFirst();
  }

  /// What stands of the day, in the order it happened. A beginning that was struck takes along what
  /// was noted under it; late notes are written after the beginning, whenever they happened.
  public List<DayNote> happened() {
    long startSeq = started().map(DayNote::seq).orElse(Long.MAX_VALUE);
    return day.stream()
        .filter(note -> note.stands() && note.seq() >= startSeq)
        .sorted(Comparator.comparing(DayNote::at).thenComparingLong(DayNote::seq))
        .toList();
  }

  /// The change that would be undone next; what the page was opened with stays.
  public Optional<Kept> undoable() {
    Kept recipe = recipes.size() > 1 ? recipe() : null;
    Kept rig = rigs.size() > 1 ? rig() : null;
    if (recipe == null || rig == null) {
      return Optional.ofNullable(recipe == null ? rig : recipe);
    }
    return Optional.of(recipe.seq() > rig.seq() ? recipe : rig);
  }

  Gyle after(Entry entry) {
    Gyle seen = new Gyle(gyleId, name, invented, entry.seq(), recipes, rigs, plans, day, atKettle);
    return switch (entry.event()) {
      case Event.GyleOpened _ -> seen;
      case Event.RecipeKept(String document, String because) ->
          seen.withRecipes(with(recipes, kept(entry, document, because)));
      case Event.RigKept(String document, String because) ->
          seen.withRigs(with(rigs, kept(entry, document, because)));
      case Event.PlanFixed fixed -> seen.withPlan(entry, fixed);
      case Event.UnitsChosen _,
          Event.InstrumentTied _,
          Event.InstrumentLoosed _,
          Event.ForecastGiven _ ->
          seen;
      case Event.Undone(long undoneSeq) ->
          seen.withRecipes(without(recipes, undoneSeq))
              .withRigs(without(rigs, undoneSeq))
              .withDay(DayNote.struck(day, undoneSeq));
      case Event.KettleTaken(String screen, String called) ->
          seen.held(new AtKettle(screen, called, entry.at()));
      case Event.DayStarted _,
          Event.PracticeStarted _,
          Event.PointReached _,
          Event.ReadingTaken _,
          Event.SwitchSet _,
          Event.WordSaid _,
          Event.PlanChanged _ ->
          seen.withDay(with(day, DayNote.of(entry)));
    };
  }

  private static Kept kept(Entry entry, String document, String because) {
    return new Kept(entry.seq(), entry.at(), document, because);
  }

  private Gyle withRecipes(List<Kept> changed) {
    return new Gyle(gyleId, name, invented, lastSeq, changed, rigs, plans, day, atKettle);
  }

  private Gyle withRigs(List<Kept> changed) {
    return new Gyle(gyleId, name, invented, lastSeq, recipes, changed, plans, day, atKettle);
  }

  private Gyle withDay(List<DayNote> changed) {
    return new Gyle(gyleId, name, invented, lastSeq, recipes, rigs, plans, changed, atKettle);
  }

  /// A word that was long on its way does not take the kettle from who came after it.
  private Gyle held(AtKettle holder) {
    boolean overtaken = atKettle.filter(held -> held.since().isAfter(holder.since())).isPresent();
    if (overtaken) {
      return this;
    }
    return new Gyle(
        gyleId, name, invented, lastSeq, recipes, rigs, plans, day, Optional.of(holder));
  }

  private Gyle withPlan(Entry entry, Event.PlanFixed fixed) {
    FixedPlan plan =
        new FixedPlan(
            entry.seq(),
            entry.at(),
            document(recipes, fixed.recipeSeq()),
            document(rigs, fixed.rigSeq()),
            fixed.engine(),
            fixed.seed(),
            fixed.days(),
            fixed.report());
    return new Gyle(
        gyleId, name, invented, lastSeq, recipes, rigs, with(plans, plan), day, atKettle);
  }

  private static String document(List<Kept> papers, long seq) {
    return papers.stream()
        .filter(paper -> paper.seq() == seq)
        .map(Kept::document)
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("a plan pins entry " + seq + ", which does not stand"));
  }

  private static <T> List<T> with(List<T> list, T last) {
    List<T> longer = new ArrayList<>(list);
    longer.add(last);
    return longer;
  }

  private static List<Kept> without(List<Kept> papers, long seq) {
    return papers.stream().filter(paper -> paper.seq() != seq).toList();
  }
}
