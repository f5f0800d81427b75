package gylebook.app;

import gylebook.brewday.Command;
import gylebook.brewday.FixedPlan;
import gylebook.brewday.Gyle;
import gylebook.terminal.RehearseCommand;
import gylebook.web.Desk;
import gylebook.web.Papers;
import gylebook.web.Practice;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;

/// Runs the rehearsal command beside the page: with the page's buttons as its keyboard, or for a
/// practice day of the book, by what is noted on it.
final class Practising implements Practice {
  private static final String REVEALS = "What was hidden";

  // Readings come once a minute of the day, and each is followed (our judgement).
  private static final int NOTED_MOST_PACE = 20;

  private final Desk desk;
  private final Papers papers;
  private Optional<Run> run = Optional.empty();

  Practising(Desk desk, Papers papers) {
    this.desk = desk;
    this.papers = papers;
  }

  /// One rehearsal: its keyboard, its screen, whether it still goes on, and the day it is noted on.
  private record Run(
      RehearseCommand command, StringWriter screen, Thread thread, Optional<PracticeDay> day) {
    boolean underWay() {
      return thread.isAlive();
    }
  }

  @Override
  public synchronized boolean underWay() {
    return run.filter(Run::underWay).isPresent();
  }

  @Override
  public synchronized Optional<String> notedOn() {
    return run.filter(Run::underWay).flatMap(Run::day).map(PracticeDay::gyleId);
  }

  @Override
  public synchronized List<String> said() {
    return run.map(one -> one.screen().toString().lines().toList()).orElse(List.of());
  }

  @Override
  public synchronized Optional<String> begin(String address, Map<String, String> asked) {
    if (underWay()) {
      return Optional.of("A rehearsal is under way; end it first.");
    }
    String seed = asked.getOrDefault("seed", "").strip();
    if (!seed.matches("\\d{0,15}")) {
      return Optional.of("'" + seed + "' is no number of a rehearsal; it has digits only.");
    }
    String pace = asked.getOrDefault("pace", "1");
    int paceCount = pace.matches("\\d{1,6}") ? Integer.parseInt(pace) : 1;
    long drawn = seed.isEmpty() ? desk.now().toEpochMilli() % 1_000_000 : Long.parseLong(seed);
    List<String> words = new ArrayList<>(List.of("--to=" + address, "--tie"));
    words.add("--pace=" + paceCount);
    words.add("--seed=" + drawn);
    if (asked.getOrDefault("acts", "").equals("itself")) {
      words.add("--by-itself");
    }
    if (asked.getOrDefault("wires", "").equals("sound")) {
      words.add("--no-glitches");
    }
    String gyleId = asked.getOrDefault("gyle", "");
    if (gyleId.isEmpty()) {
      start(words, new RehearseCommand(new Shelf()), Optional.empty());
      return Optional.empty();
    }
    return noted(gyleId, new Command.StartPractice(drawn, paceCount), words);
  }

  private Optional<String> noted(String gyleId, Command.StartPractice by, List<String> words) {
    Optional<Gyle> gyle = desk.book().gyle(gyleId);
    Optional<FixedPlan> plan = gyle.flatMap(Gyle::plan);
    if (plan.isEmpty()) {
      return Optional.of("No plan is fixed for that day. Make a forecast the plan of the day.");
    }
    if (by.pace() > NOTED_MOST_PACE) {
      return Optional.of(
          "A day that is noted goes at most "
              + NOTED_MOST_PACE
              + " times faster than life: each reading is followed.");
    }
    return switch (PracticeDay.open(desk, papers, gyle.orElseThrow(), plan.get(), by)) {
      case PracticeDay.Opened.Refused(String because) -> Optional.of(because);
      case PracticeDay.Opened.Begun(PracticeDay day) -> {
        start(words, new RehearseCommand(day, day), Optional.of(day));
        yield Optional.empty();
      }
    };
  }

  private void start(List<String> words, RehearseCommand command, Optional<PracticeDay> day) {
    StringWriter screen = new StringWriter();
    CommandLine line = new CommandLine(command);
    line.setOut(new PrintWriter(screen)).setErr(new PrintWriter(screen));
    Runnable play = () -> line.execute(words.toArray(String[]::new));
    Runnable whole =
        day.map(one -> (Runnable) () -> noted(one, command, screen, play)).orElse(play);
    Thread thread = Thread.ofVirtual().name("rehearsal").start(whole);
    run = Optional.of(new Run(command, screen, thread, day));
  }

  /// Plays while listening to what is noted; at the end the page gets to know what was hidden.
  private void noted(PracticeDay day, RehearseCommand rig, StringWriter screen, Runnable play) {
    Runnable deaf = desk.listen(written -> day.hear(written, rig));
    try {
      play.run();
    } finally {
      deaf.run();
    }
    String said = screen.toString();
    int from = said.indexOf(REVEALS);
    day.over("The rehearsal is over. " + (from < 0 ? said : said.substring(from)).strip());
  }

  @Override
  public synchronized Optional<String> act(String line) {
    if (!underWay()) {
      return Optional.of("No rehearsal is under way.");
    }
    Optional<Command> switched = PracticeDay.switched(line);
    Optional<String> day = notedOn();
    if (switched.isPresent() && day.isPresent()) {
      // It is noted as if it were done at the kettle; the hidden rig hears the note.
      return PracticeDay.refusal(desk.note(day.get(), switched.get(), "", Optional.empty()));
    }
    run.ifPresent(one -> one.command().act(line));
    return Optional.empty();
  }
}
