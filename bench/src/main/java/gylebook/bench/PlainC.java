package gylebook.bench;

import gylebook.simulate.DayScript;
import gylebook.simulate.DemoDays;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// The same scheme in plain scalar C, built by gcc and fed with the same members.
public final class PlainC {
  private static final List<String> SOURCES = List.of("main.c", "day.c", "thermal.c", "brew.c");

  /// Rounding as written, no fused multiply-add: the same numbers as Java wherever both add alike.
  private static final List<String> FLAGS =
      List.of("-std=gnu11", "-O3", "-march=native", "-ffp-contract=off", "-Wall", "-Werror");

  private final Path program;
  private final Path script;

  private PlainC(Path program, Path script) {
    this.program = program;
    this.script = script;
  }

  /// Whether gcc can be called.
  public static boolean hasGcc() {
    try {
      Process process = new ProcessBuilder("gcc", "--version").redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor() == 0;
    } catch (IOException missing) {
      return false;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /// Builds the program from the sources in a folder and hands it these days.
  ///
  /// @param sources folder of the C files
  /// @param into an existing folder for the program and the script
  /// @param days what it will run
  public static PlainC built(Path sources, Path into, List<DemoDays.Ready> days) {
    try {
      Path program = into.resolve("plain-day");
      List<String> command = new ArrayList<>(List.of("gcc"));
      command.addAll(FLAGS);
      command.addAll(List.of("-o", program.toString()));
      SOURCES.forEach(name -> command.add(sources.resolve(name).toString()));
      command.add("-lm");
      said(command);
      Path script = into.resolve("days.txt");
      Files.writeString(script, DayScript.of(days));
      return new PlainC(program, script);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /// How it was compiled, for the record.
  public static String flags() {
    return String.join(" ", FLAGS);
  }

  /// The ends of all days, a line of numbers each, as [DayScript#ran] gives them.
  public List<double[]> ends() {
    List<double[]> ends = new ArrayList<>();
    for (String line : said(List.of(program.toString(), script.toString())).lines().toList()) {
      List<Double> numbers = new ArrayList<>();
      for (String word : line.split(" ", -1)) {
        numbers.add(Double.parseDouble(word));
      }
      ends.add(numbers.stream().mapToDouble(Double::doubleValue).toArray());
    }
    return ends;
  }

  /// Seconds of processor time for one day, averaged over all of them, so many times.
  public double daySec(int repeats) {
    String told = said(List.of(program.toString(), script.toString(), Integer.toString(repeats)));
    return Double.parseDouble(told.substring(0, told.indexOf(' ')));
  }

  private static String said(List<String> command) {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (process.waitFor() != 0) {
        throw new IllegalStateException(command.getFirst() + " failed: " + said);
      }
      return said;
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while " + command.getFirst() + " ran", stopped);
    }
  }
}
