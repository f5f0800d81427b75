package gylebook.web;

import gylebook.plan.Band;
import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Trace;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What stands behind each strip of the day chart: a sentence, and a table with the same figures.
@AnyUnit("tells every quantity")
final class DayBehind {
  private final Plan plan;
  private final Forecast forecast;
  private final Shown shown;
  private final TimeAxis axis;
  private final StringBuilder html = new StringBuilder();

  DayBehind(Plan plan, Shown shown) {
    this.plan = plan;
    this.forecast = plan.forecast();
    this.shown = shown;
    this.axis = new TimeAxis(forecast);
  }

  /// What the whole drawing shows.
  static String sentence(Plan plan) {
    Milestone end = plan.forecast().milestones().getLast();
    return "The day on one time axis, in strips: temperature, level, duty, additions, strength,"
        + " hands. It ends after about "
        + Shown.clock(end.atSec().middle())
        + ". Each strip stands below in words and numbers.";
  }

  String html() {
    html.append("<div class=\"behind\">");
    temperature();
    level();
    duty();
    additions();
    gravity();
    hands();
    return html.append("</div>").toString();
  }

  private void strip(String name, String sentence, List<String> heads, List<List<String>> rows) {
    html.append("<details><summary>")
        .append(name)
        .append(" in words and numbers</summary><p>")
        .append(Html.escaped(sentence))
        .append("</p><div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"")
        .append(name)
        .append(", table\"><table><thead><tr>");
    heads.forEach(head -> html.append("<th scope=\"col\">").append(head).append("</th>"));
    html.append("</tr></thead><tbody>");
    for (List<String> row : rows) {
      html.append("<tr>");
      row.forEach(cell -> html.append("<td>").append(Html.escaped(cell)).append("</td>"));
      html.append("</tr>");
    }
    html.append("</tbody></table></div></details>");
  }

  private String at(String milestone) {
    return forecast.milestone(milestone).map(m -> Shown.clock(m.atSec().middle())).orElse("");
  }

  private String figure(String key) {
    return forecast
        .figure(key)
        .map(Figure::band)
        .map(band -> shown.value(key, band.middle()) + " (" + shown.range(key, band) + ")")
        .orElse("none");
  }

  private static String clock(Milestone milestone) {
    return Shown.clock(milestone.atSec().middle());
  }

  private String band(String key, Band band) {
    return shown.value(key, band.middle()) + " (" + shown.range(key, band) + ")";
  }

  private void temperature() {
    List<List<String>> rows = new ArrayList<>();
    boolean bagIn = false;
    for (Milestone milestone : forecast.milestones()) {
      bagIn = (bagIn || milestone.key().equals("doughedIn")) && !milestone.key().equals("bagOut");
      rows.add(
          List.of(
              clock(milestone),
              milestone.says(),
              band("wortC", milestone.wortC()),
              bagIn ? band("grainC", milestone.grainC()) : "-"));
    }
    String sentence =
        "The malt goes into liquor read at %s; the grain is held at %s on the first rest; the wort boils at %s from %s to %s and enters the fermenter at %s."
            .formatted(
                shown.value("strikeC", plan.settings().strikeC()),
                figure("grainHeldC"),
                figure("boilsC"),
                at("boilReached"),
                at("flameOut"),
                figure("castC"));
    strip("Temperature", sentence, List.of("After", "What", "Wort", "Grain"), rows);
  }

  private void level() {
    Optional<Trace> trace = axis.trace("levelM");
    List<List<String>> rows = new ArrayList<>();
    for (Milestone milestone : forecast.milestones()) {
      double sec = milestone.atSec().middle();
      String level =
          trace
              .filter(t -> !milestone.key().equals("cast"))
              .map(t -> levelAt(t, axis.point(sec, t)))
              .orElse("-");
      rows.add(List.of(clock(milestone), milestone.says(), level, band("hotL", milestone.hotL())));
    }
    double topM = plan.rig().element().topM().value();
    String sentence =
        "The top of the element lies %s above the floor. At its lowest while it heats, the wort stands %s above that."
            .formatted(shown.value("topM", topM), figure("elementCoverM"));
    strip("Level", sentence, List.of("After", "What", "Level", "In the kettle"), rows);
  }

  private String levelAt(Trace trace, int point) {
    return band("levelM", new Band(trace.low()[point], trace.middle()[point], trace.high()[point]));
  }

  private void duty() {
    Optional<Trace> trace = axis.trace("dutyFrac");
    List<List<String>> rows = new ArrayList<>();
    List<Milestone> day = forecast.milestones();
    for (int i = 0; trace.isPresent() && i + 1 < day.size(); i++) {
      double fromSec = day.get(i).atSec().middle();
      double toSec = day.get(i + 1).atSec().middle();
      if (toSec > fromSec) {
        int from = axis.point(fromSec, trace.get());
        int to = Math.max(from + 1, axis.point(toSec, trace.get()));
        rows.add(
            List.of(
                Shown.clock(fromSec) + " to " + Shown.clock(toSec),
                day.get(i).says() + ", to: " + day.get(i + 1).says(),
                shown.value("dutyFrac", mean(trace.get().middle(), from, to))));
      }
    }
    String sentence =
        "The boil is held with a duty of %s; the day takes %s."
            .formatted(shown.value("dutyFrac", plan.settings().boilDutyFrac()), figure("energyJ"));
    strip("Duty", sentence, List.of("When", "What", "Mean duty"), rows);
  }

  private static double mean(double[] values, int from, int to) {
    double sum = 0;
    int count = 0;
    for (int i = from; i < Math.min(to, values.length); i++) {
      if (Double.isFinite(values[i])) {
        sum += values[i];
        count++;
      }
    }
    return count == 0 ? 0 : sum / count;
  }

  private void additions() {
    List<List<String>> rows = new ArrayList<>();
    for (DayMarks.Addition addition : new DayMarks(plan, shown).additions()) {
      Band atSec = addition.atSec();
      rows.add(
          List.of(
              Shown.clock(atSec.middle()),
              Shown.clock(atSec.low()) + " to " + Shown.clock(atSec.high()),
              addition.amount(),
              addition.name()));
    }
    String sentence = rows.size() + " things go in on the hot day, each at its moment.";
    strip("Additions", sentence, List.of("After", "Earliest to latest", "How much", "What"), rows);
  }

  private void gravity() {
    List<List<String>> rows = new ArrayList<>();
    for (Milestone milestone : forecast.milestones()) {
      if (milestone.wortPlato().middle() > 0.05) {
        rows.add(
            List.of(clock(milestone), milestone.says(), band("wortPlato", milestone.wortPlato())));
      }
    }
    String sentence =
        "Before the boil %s, in the fermenter %s."
            .formatted(figure("preBoilPlato"), figure("strengthPlato"));
    strip("Strength", sentence, List.of("After", "What", "Strength"), rows);
  }

  private void hands() {
    List<List<String>> rows = new ArrayList<>();
    int both = 0;
    for (DayMarks.Busy busy : new DayMarks(plan, shown).busy()) {
      boolean two = busy.milestone().hands() > 1;
      both += two ? 1 : 0;
      String when =
          busy.toSec() > busy.fromSec()
              ? Shown.clock(busy.fromSec()) + " to " + Shown.clock(busy.toSec())
              : Shown.clock(busy.fromSec());
      rows.add(List.of(when, two ? "two pairs" : "one pair", busy.milestone().doing()));
    }
    String sentence = "Two pairs of hands are wanted " + both + " times, one pair in between.";
    strip("Hands", sentence, List.of("When", "Hands", "What they do"), rows);
  }
}
