package gylebook.app;

import gylebook.terminal.RehearseCommand;
import gylebook.web.Practice;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;

/// Runs the rehearsal command beside the page, with the page's buttons as its keyboard.
final class Practising implements Practice {
  private static final int LINES_MOST = 200;

  private Optional<Run> run = Optional.empty();

  /// One rehearsal: its keyboard, its screen, and whether it still goes on.
  private record Run(RehearseCommand command, StringWriter screen, Thread thread) {}

  @Override
  public synchronized boolean underWay() {
    return run.filter(one -> one.thread().isAlive()).isPresent();
  }

  @Override
  public synchronized List<String> said() {
    List<String> lines = run.map(one -> one.screen().toString().lines().toList()).orElse(List.of());
    return lines.subList(Math.max(0, lines.size() - LINES_MOST), lines.size());
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
    List<String> words = new ArrayList<>(List.of("--to=" + address, "--tie"));
    String pace = asked.getOrDefault("pace", "1");
    words.add("--pace=" + (pace.matches("\\d{1,6}") ? pace : "1"));
    if (!seed.isEmpty()) {
      words.add("--seed=" + seed);
    }
    if (asked.getOrDefault("acts", "").equals("itself")) {
      words.add("--by-itself");
    }
    if (asked.getOrDefault("wires", "").equals("sound")) {
      words.add("--no-glitches");
    }
    StringWriter screen = new StringWriter();
    RehearseCommand command = new RehearseCommand(new Shelf());
    CommandLine line = new CommandLine(command);
    line.setOut(new PrintWriter(screen)).setErr(new PrintWriter(screen));
    Thread thread =
        Thread.ofVirtual()
            .name("rehearsal")
            .start(() -> line.execute(words.toArray(String[]::new)));
    run = Optional.of(new Run(command, screen, thread));
    return Optional.empty();
  }

  @Override
  public synchronized void act(String line) {
    run.ifPresent(one -> one.command().act(line));
  }
}
