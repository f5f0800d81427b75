package gylebook.app;

import gylebook.brewday.Command;
import gylebook.brewday.DayNote;
import gylebook.brewday.FixedPlan;
import gylebook.brewday.Gyle;
import gylebook.brewday.PlanChange;
import gylebook.journal.Event;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.terminal.PlanSources;
import gylebook.terminal.RehearseCommand;
import gylebook.terminal.RehearsedDay;
import gylebook.web.Desk;
import gylebook.web.Papers;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// A practice day of the book, as the hidden rig sees it: its plan and its clock; and what is noted
/// on it, which is what the brewer does to the rig.
final class PracticeDay implements RehearsedDay, PlanSources {
  private static final double MS_PER_SEC = 1000;

  private final Desk desk;
  private final Papers papers;
  private final String gyleId;
  private final FixedPlan plan;
  private final Instant began;
  private long heardSeq;

  private PracticeDay(Desk desk, Papers papers, Gyle gyle, DayNote beginning) {
    this.desk = desk;
    this.papers = papers;
    this.gyleId = gyle.gyleId();
    this.plan = gyle.brewedBy().orElseThrow();
    this.began = beginning.at();
    this.heardSeq = beginning.seq();
  }

  /// Opens a page for practice with the plan of a gyle, and begins its day.
  static Opened open(Desk desk, Papers papers, Gyle of, FixedPlan plan, Command.StartPractice by) {
    int number = 1;
    while (desk.book().gyle("rehearsal-" + number).isPresent()) {
      number++;
    }
    String gyleId = "rehearsal-" + number;
    String name = "Rehearsal " + number + ": " + of.name();
    List<Command> commands =
        List.of(
            new Command.OpenGyle(name, of.invented(), plan.recipe(), plan.rig()),
            new Command.FixPlan(plan.engine(), plan.seed(), plan.days(), plan.report()),
            by);
    for (Command command : commands) {
      Desk.Answer answer = desk.write(gyleId, desk.book().seen(gyleId), command, "");
      Optional<String> refusal = refusal(answer);
      if (refusal.isPresent()) {
        return new Opened.Refused(refusal.get());
      }
    }
    Gyle gyle = desk.book().gyle(gyleId).orElseThrow();
    return new Opened.Begun(new PracticeDay(desk, papers, gyle, gyle.practice().orElseThrow()));
  }

  /// Why nothing was noted, if nothing was.
  static Optional<String> refusal(Desk.Answer answer) {
    return switch (answer) {
      case Desk.Answer.Written _ -> Optional.empty();
      case Desk.Answer.Refused(String because, String maybe) -> Optional.of(because + " " + maybe);
      case Desk.Answer.Overtaken _ -> Optional.of("Somebody else began one; look and try again.");
      case Desk.Answer.NotSaved(String says) -> Optional.of("Not saved. " + says);
    };
  }

  /// What came of opening one.
  sealed interface Opened {
    /// Its day goes.
    record Begun(PracticeDay day) implements Opened {}

    /// Nothing goes.
    record Refused(String because) implements Opened {}
  }

  String gyleId() {
    return gyleId;
  }

  private Gyle gyle() {
    return desk.book().gyle(gyleId).orElseThrow();
  }

  /// Does to the hidden rig what was noted since. A note that is struck was done all the same.
  synchronized void hear(String written, RehearseCommand rig) {
    if (!written.equals(gyleId)) {
      return;
    }
    for (DayNote note : gyle().day()) {
      if (note.seq() > heardSeq) {
        heardSeq = note.seq();
        does(note.event(), rig);
      }
    }
  }

  private static void does(Event event, RehearseCommand rig) {
    switch (event) {
      case Event.PointReached(String milestone) -> rig.reached(milestone);
      case Event.SwitchSet(String what, String state) -> rig.act(line(what, state));
      case Event.PlanChanged(_, String document) ->
          PlanChange.read(document).ifPresent(change -> rig.changed(change.changes()));
      default -> {}
    }
  }

  /// A switch as it is typed in a terminal.
  private static String line(String what, String state) {
    boolean heater = what.equals("heater");
    String planned = heater ? "auto" : "plan";
    String bare = state.replace("%", "").replace(',', '.').strip();
    String value =
        bare.isEmpty()
            ? planned
            : heater ? String.format(Locale.ROOT, "%.0f", Double.parseDouble(bare)) : bare;
    return (heater ? "heat " : what + " ") + value;
  }

  /// The note of a switch that was typed in a terminal; empty when the line is something else.
  static Optional<Command> switched(String line) {
    String[] words = line.strip().toLowerCase(Locale.ROOT).split("\\s+", 2);
    String state = words.length > 1 ? words[1] : "";
    boolean planned = state.equals("auto") || state.equals("plan") || state.isEmpty();
    return switch (words[0]) {
      case "heat" -> Optional.of(new Command.Switch("heater", planned ? "" : state));
      case "pump", "lid" -> Optional.of(new Command.Switch(words[0], planned ? "" : state));
      default -> Optional.empty();
    };
  }

  /// Notes what was hidden, for whoever reads the page later.
  void over(String words) {
    desk.note(gyleId, new Command.Say("rehearsal", words), "", Optional.empty());
  }

  @Override
  public String tiedAs(String instrument) {
    return gyle().tiedAs(instrument);
  }

  @Override
  public double nowSec() {
    return Duration.between(began, gyle().now(desk.now())).toMillis() / MS_PER_SEC;
  }

  @Override
  public void reached(String milestone, double atSec) {
    Instant at = began.plusMillis(Math.round(atSec * MS_PER_SEC));
    desk.note(gyleId, new Command.Reach(milestone), "", Optional.of(at));
  }

  @Override
  public int plannedCount() {
    return plan.days();
  }

  @Override
  public long plannedSeed() {
    return plan.seed();
  }

  @Override
  public Found recipe(String name) {
    Recipe recipe = papers.recipe(plan.recipe());
    return new Found(recipe, List.of());
  }

  @Override
  public Rig rig(String name) {
    return papers.rig(plan.rig());
  }
}
