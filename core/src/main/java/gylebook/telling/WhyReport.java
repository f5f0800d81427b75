package gylebook.telling;

import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/// Why the figures of a forecast are what they are, as text for a terminal of 80 columns.
public final class WhyReport {
  private WhyReport() {}

  /// Equation, what went in, source, and what moves it most, of every figure there is.
  public static String text(Forecast forecast, ReadingUnits units) {
    Shown shown = new Shown(units);
    List<String> lines = new ArrayList<>(List.of("Why these numbers", "-----------------"));
    for (Figure figure : forecast.figures()) {
      if (Double.isFinite(figure.band().middle())) {
        figure(lines, figure, shown.value(figure.key(), figure.band().middle()));
      }
    }
    return lines.stream().map(Letters::plain).collect(Collectors.joining("\n")) + "\n";
  }

  private static void figure(List<String> lines, Figure figure, String value) {
    Figure.Why why = figure.why();
    Columns.wrap(lines, figure.says() + ": " + value, 2);
    Columns.wrap(lines, "by " + why.equation(), 4);
    Columns.wrap(lines, "from " + String.join("; ", why.inputs()), 4);
    if (!why.movers().isEmpty()) {
      Columns.wrap(
          lines,
          "moved most by "
              + why.movers().stream()
                  .map(mover -> mover.says() + " " + Math.round(100 * mover.shareFrac()) + " %")
                  .collect(Collectors.joining(", ")),
          4);
    }
    Columns.wrap(lines, "source: " + String.join(", ", why.sources()), 4);
  }
}
