package gylebook.telling;

import gylebook.plan.Band;
import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.plan.Guard;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Trace;
import gylebook.rig.Rig;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/// A plan as text for a terminal of 80 columns.
public final class Report {
  private static final int CHART_ROWS = 9;
  private static final int CHART_COLUMNS = 64;
  private static final int INDENT = Columns.INDENT;
  private static final int DAY_INDENT = 13;
  private static final int NAME_COLUMNS = 34;
  private static final char NO_BREAK = '\u00a0';

  private static final List<String> OUT =
      List.of(
          "fermenterL",
          "kegL",
          "strengthPlato",
          "finalPlato",
          "attenuationFrac",
          "alcoholByVolumeFrac",
          "bitternessMgPerL",
          "tinsethMgPerL",
          "colourEbc",
          "mashPh",
          "preBoilL",
          "preBoilPlato",
          "boilOffLPerHr",
          "conversionFrac",
          "brewhouseFrac",
          "castC",
          "cellsWantedNumber",
          "cellsBroughtNumber",
          "driedYeastWantedG",
          "oxygenFromAirMgPerL",
          "fermentGasKg",
          "fermentGasPeakLPerHr",
          "closedRoomM3",
          "fermentEndSec",
          "packedPlato",
          "packagedVol",
          "daySec",
          "energyJ",
          "waterL",
          "bagWetKg",
          "bagDrippedKg");

  private final ReadingUnits units;
  private final Shown shown;
  private final List<String> lines = new ArrayList<>();

  private Report(ReadingUnits units) {
    this.units = units;
    this.shown = new Shown(units);
  }

  /// The report.
  public static String text(Planned planned, ReadingUnits units) {
    Report report = new Report(units);
    switch (planned) {
      case Planned.Feasible feasible -> report.plan(feasible.plan());
      case Planned.Impossible impossible -> report.impossible(impossible);
    }
    return report.lines.stream()
            .map(Letters::plain)
            .collect(Collectors.joining("\n"))
            .replace(NO_BREAK, ' ')
        + "\n";
  }

  private void impossible(Planned.Impossible impossible) {
    lines.add("It cannot be brewed as wanted.");
    wrap(shown.sentence(impossible.says()), INDENT);
    wrap(impossible.maybe(), INDENT);
    if (impossible.nearest().isPresent()) {
      lines.add("");
      Nearest.says(impossible, units).ifPresent(says -> wrap(says, 0));
      lines.add("");
      plan(impossible.nearest().get());
    }
  }

  private void plan(Plan plan) {
    String invented = plan.recipe().invented() || plan.rig().invented() ? " (invented)" : "";
    lines.add(plan.recipe().name() + ", on " + plan.rig().name() + invented);
    lines.add("=".repeat(Math.min(Columns.MOST, lines.getLast().length())));
    weigh(plan);
    set(plan);
    day(plan.forecast());
    chart(plan.forecast());
    out(plan.forecast());
    guards(plan.forecast());
    slopes(plan);
    worth(plan);
    lines.add("");
    wrap(
        "From "
            + plan.forecast().days()
            + " simulated days: what stands beside a figure holds 9"
            + " times in 10. Gylebook advises; it never switches anything. Follow your local"
            + " code; wiring, gas and pressure are work for licensed people.",
        0);
  }

  private void heading(String words) {
    lines.add("");
    lines.add(words);
    lines.add("-".repeat(words.length()));
  }

  private void weigh(Plan plan) {
    heading("To weigh");
    for (ToWeigh.Thing thing : ToWeigh.of(plan, units)) {
      row(thing.name(), thing.amount(), thing.moment());
    }
  }

  private void set(Plan plan) {
    heading("To do");
    for (Plan.PlannedStep step : plan.steps()) {
      String figure =
          step.key().isEmpty() ? "" : together(shown.value(step.key(), step.amountNumber()));
      wrap(figure.isEmpty() ? step.does() + "." : step.does() + " " + figure + ".", INDENT);
    }
  }

  /// A figure and its unit stay on one line.
  private static String together(String figure) {
    return figure.replace(' ', NO_BREAK);
  }

  private void day(Forecast forecast) {
    heading("The day");
    lines.add("  after    (earliest, latest)  wort      it fills       strength   hands");
    lines.add("             (each holds 9 times in 10)");
    for (Milestone milestone : forecast.milestones()) {
      String hands = milestone.hands() == 2 ? "two pairs" : milestone.hands() == 1 ? "one" : "";
      boolean cast = milestone.key().equals("cast");
      Band wortC = cast ? band(forecast, "castC") : milestone.wortC();
      Band litresL = cast ? band(forecast, "fermenterL") : milestone.hotL();
      lines.add(
          String.format(
              Locale.ROOT,
              "  %-6s   (%s, %s)%s%-9s %-14s %-10s %s",
              Shown.clock(milestone.atSec().middle()),
              Shown.clock(milestone.atSec().low()),
              Shown.clock(milestone.atSec().high()),
              " ".repeat(8),
              shown.value("wortC", wortC.middle()),
              shown.value("hotL", litresL.middle()),
              milestone.wortPlato().middle() > 0.05
                  ? shown.value("wortPlato", milestone.wortPlato().middle())
                  : "-",
              hands));
      wrap(milestone.says() + (cast ? "" : wortAlone(milestone.coldL())), DAY_INDENT);
      lines.add("             " + ranges(wortC, litresL, milestone.wortPlato()));
    }
  }

  /// What stands in the kettle is hot and holds the goods; this is its wort as it would be cold.
  private String wortAlone(Band coldL) {
    String middle = shown.value("coldL", coldL.middle());
    return "; wort at 20 C: " + together(middle + " (" + shown.range("coldL", coldL) + ")");
  }

  /// Where each figure of a milestone lies 9 times in 10.
  private String ranges(Band wortC, Band litresL, Band wortPlato) {
    String strength = wortPlato.middle() > 0.05 ? ", " + shown.range("wortPlato", wortPlato) : "";
    return "(" + shown.range("wortC", wortC) + ", " + shown.range("hotL", litresL) + strength + ")";
  }

  private static Band band(Forecast forecast, String key) {
    return forecast.figure(key).orElseThrow().band();
  }

  private void row(String what, String value, String words) {
    if (what.length() > NAME_COLUMNS) {
      lines.add("  " + what);
      row("", value, words);
      return;
    }
    lines.add(
        String.format(Locale.ROOT, "  %-" + NAME_COLUMNS + "s %-12s %s", what, value, words)
            .stripTrailing());
  }

  private void out(Forecast forecast) {
    heading("What comes out");
    for (String key : OUT) {
      forecast
          .figure(key)
          .ifPresent(
              figure ->
                  row(
                      figure.says(),
                      shown.value(key, figure.band().middle()),
                      "(" + shown.range(key, figure.band()) + ")"));
    }
  }

  private void guards(Forecast forecast) {
    heading("What could go wrong");
    if (forecast.guards().isEmpty()) {
      lines.add("  Nothing that shows in the simulated days.");
    }
    for (Guard guard : forecast.guards()) {
      wrap(
          guard.level()
              + "  "
              + shown.sentence(guard.what())
              + " "
              + Shown.odds(guard.chanceFrac())
              + ".",
          INDENT);
      wrap("When: " + GuardWords.moment(forecast, guard) + ".", 2 * INDENT);
      wrap("Why: " + guard.cause(), 2 * INDENT);
      wrap(guard.doThis(), 2 * INDENT);
      if (!guard.caution().isEmpty()) {
        wrap(guard.caution(), 2 * INDENT);
      }
    }
  }

  private void slopes(Plan plan) {
    heading("If you are off");
    for (OffBy.Line line : OffBy.of(plan, shown)) {
      wrap(line.what() + " by " + line.by() + " (holds up to " + line.within() + "):", INDENT);
      line.then().forEach(change -> wrap(change, 2 * INDENT));
    }
    wrap(OffBy.CAUTION, INDENT);
  }

  private void worth(Plan plan) {
    heading("Worth measuring");
    if (plan.forecast().worthMeasuring().isEmpty()) {
      lines.add("  Nothing that is only assumed moves the day much.");
      return;
    }
    wrap("Assumed so far; with its share of the doubt in litres, strength and times:", INDENT);
    Map<String, String> named = rigNames(plan.rig());
    for (Figure.Mover mover : plan.forecast().worthMeasuring()) {
      String says = named.getOrDefault(mover.path(), mover.says());
      wrap(Math.round(100 * mover.shareFrac()) + " %  " + says, 2 * INDENT);
    }
  }

  /// What each number of a rig is called where the rig is told in words, by its path.
  private Map<String, String> rigNames(Rig rig) {
    Map<String, String> named = new HashMap<>();
    for (Section section : RigWords.of(rig, units)) {
      for (Sentence sentence : section.sentences()) {
        for (Piece piece : sentence.pieces()) {
          if (piece instanceof Piece.Slot slot) {
            String path = slot.slot().replaceAll("^probes\\.\\d+\\.", "probe.");
            named.putIfAbsent(path, slot.hint() + " (" + section.heading() + ")");
          }
        }
      }
    }
    return named;
  }

  /// The kettle through the day: `#` the middle, `.` where 9 days in 10 lie.
  private void chart(Forecast forecast) {
    Trace trace =
        forecast.traces().stream().filter(t -> t.key().equals("wortC")).findFirst().orElseThrow();
    heading("Kettle, " + shown.value("wortC", 10) + " to " + shown.value("wortC", 100));
    int points = trace.middle().length;
    for (int row = CHART_ROWS; row >= 0; row--) {
      double rowC = 10 + row * 90.0 / CHART_ROWS;
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < CHART_COLUMNS; column++) {
        int i = Math.min(points - 1, column * points / CHART_COLUMNS);
        line.append(mark(trace, i, rowC));
      }
      lines.add(
          String.format(Locale.ROOT, "%9s |%s", shown.value("wortC", rowC), line).stripTrailing());
    }
    lines.add(
        " ".repeat(10)
            + "0:00"
            + " ".repeat(CHART_COLUMNS - 8)
            + Shown.clock(points * forecast.stepSec()));
  }

  private static char mark(Trace trace, int i, double rowC) {
    double half = 45.0 / CHART_ROWS;
    if (Math.abs(trace.middle()[i] - rowC) <= half) {
      return '#';
    }
    return trace.low()[i] - half <= rowC && rowC <= trace.high()[i] + half ? '.' : ' ';
  }

  private void wrap(String text, int indent) {
    Columns.wrap(lines, text, indent);
  }
}
