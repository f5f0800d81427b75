package gylebook.brewday;

import gylebook.journal.Event;
import gylebook.rig.Probe;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// What may be noted of a day, and when.
final class DayRules {
  private static final List<String> SWITCHES = List.of("heater", "pump", "lid");

  private static final int MOST_NAME = 60;

  // Faster than this no belief follows (our judgement).
  private static final int MOST_PACE = 1000;

  private DayRules() {}

  static Verdict decide(Gyle gyle, Command command) {
    if (command instanceof Command.StartDay) {
      return start(gyle);
    }
    if (command instanceof Command.StartPractice practice) {
      return start(gyle, practice);
    }
    if (gyle.started().isEmpty()) {
      return new Verdict.Refused("The day has not begun.", "Start the day first.");
    }
    return switch (command) {
      case Command.Reach(String milestone) -> reach(gyle, milestone);
      case Command.Note(Event.ReadingTaken reading) -> note(reading);
      case Command.Switch(String what, String state) -> set(what, state);
      case Command.Say(String kind, String words) ->
          words.isBlank()
              ? new Verdict.Refused("Nothing was said.", "Say in a few words what happened.")
              : Verdict.accept(new Event.WordSaid(kind, words));
      case Command.TakeKettle(String screen, String called) -> take(gyle, screen, called);
      case Command.ChangePlan(String says, String document) ->
          PlanChange.read(document).isPresent() && !says.isBlank()
              ? Verdict.accept(new Event.PlanChanged(says, document))
              : new Verdict.Refused(
                  "That is no way to put a day right.", "Look at what could be done now.");
      case Command.Strike(long seq) -> strike(gyle, seq);
      default -> throw new IllegalArgumentException("not a matter of the day: " + command);
    };
  }

  private static Verdict start(Gyle gyle) {
    if (gyle.practice().isPresent()) {
      return new Verdict.Refused(
          "This page is for practice; no real day stands on it.",
          "Start the day on the gyle's own page.");
    }
    if (gyle.started().isPresent()) {
      return new Verdict.Refused(
          "The day has begun already.", "Go on at the kettle, or strike the beginning.");
    }
    return gyle.plan()
        .<Verdict>map(plan -> Verdict.accept(new Event.DayStarted(plan.seq())))
        .orElseGet(DayRules::noPlan);
  }

  private static Verdict noPlan() {
    return new Verdict.Refused(
        "No plan is fixed for the day.", "Make the forecast the plan of the day first.");
  }

  private static Verdict start(Gyle gyle, Command.StartPractice practice) {
    if (!gyle.day().isEmpty()) {
      return new Verdict.Refused(
          "A day stands on this page already.", "Practise on a page of its own.");
    }
    if (!(practice.pace() >= 1 && practice.pace() <= MOST_PACE)) {
      return new Verdict.Refused(
          "A day cannot go " + practice.pace() + " times faster than life.",
          "It may go 1 to " + MOST_PACE + " times as fast.");
    }
    return gyle.plan()
        .<Verdict>map(
            plan ->
                Verdict.accept(
                    new Event.PracticeStarted(plan.seq(), practice.seed(), practice.pace())))
        .orElseGet(DayRules::noPlan);
  }

  private static Verdict reach(Gyle gyle, String milestone) {
    if (milestone.isBlank()) {
      return new Verdict.Refused("No point of the day was named.", "Choose the one you saw.");
    }
    boolean before =
        gyle.happened().stream()
            .anyMatch(
                note ->
                    note.event() instanceof Event.PointReached(String seen)
                        && seen.equals(milestone));
    // Two people may see the boil; it is reached once.
    return before
        ? new Verdict.Accepted(List.of())
        : Verdict.accept(new Event.PointReached(milestone));
  }

  private static Verdict note(Event.ReadingTaken reading) {
    if (reading.instrument().isBlank() || reading.asRead().isBlank()) {
      return new Verdict.Refused(
          "The reading is not whole.", "Name the instrument and its figure.");
    }
    boolean known =
        Arrays.stream(Probe.Place.values()).anyMatch(place -> place.name().equals(reading.place()));
    return known
        ? Verdict.accept(reading)
        : new Verdict.Refused(
            "There is no place '" + reading.place() + "' in the rig.",
            "The places are kettle, bed, suction and return.");
  }

  private static Verdict take(Gyle gyle, String screen, String called) {
    if (!screen.matches("[A-Za-z0-9-]{4,64}") || called.isBlank() || called.length() > MOST_NAME) {
      return new Verdict.Refused(
          "This screen has no name that could be told.", "Load the page anew and try again.");
    }
    boolean there = gyle.atKettle().filter(held -> held.screen().equals(screen)).isPresent();
    return there
        ? new Verdict.Accepted(List.of())
        : Verdict.accept(new Event.KettleTaken(screen, called.strip()));
  }

  private static Verdict set(String what, String state) {
    if (!SWITCHES.contains(what)) {
      return new Verdict.Refused(
          "There is no switch '" + what + "'.", "There are " + String.join(", ", SWITCHES) + ".");
    }
    boolean heater = what.equals("heater");
    boolean fits =
        state.isEmpty()
            || (heater ? duty(state).isPresent() : state.equals("on") || state.equals("off"));
    return fits
        ? Verdict.accept(new Event.SwitchSet(what, state))
        : new Verdict.Refused(
            "The " + what + " cannot be '" + state + "'.",
            heater ? "Give the duty from 0 to 100 %." : "It is on or off.");
  }

  /// The duty that was typed, as a part of the whole.
  static Optional<Double> duty(String typed) {
    String bare = typed.replace("%", "").replace(',', '.').strip();
    if (!bare.matches("[0-9]{1,3}([.][0-9]{1,3})?")) {
      return Optional.empty();
    }
    double partFrac = Double.parseDouble(bare) / 100;
    return partFrac <= 1 ? Optional.of(partFrac) : Optional.empty();
  }

  private static Verdict strike(Gyle gyle, long seq) {
    if (gyle.practice().filter(began -> began.seq() == seq).isPresent()) {
      return new Verdict.Refused(
          "The beginning of practice stays.", "Begin another rehearsal; it has its own page.");
    }
    return gyle.day().stream().anyMatch(note -> note.seq() == seq && note.stands())
        ? Verdict.accept(new Event.Undone(seq))
        : new Verdict.Refused("No entry " + seq + " of the day stands.", "Look at the list.");
  }
}
