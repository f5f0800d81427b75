package gylebook.telling;

import gylebook.plan.Band;
import gylebook.plan.Figure;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/// The day on the wall sheet: a row a moment, with what to do to get there and what to expect.
@AnyUnit("shows every quantity of a plan")
final class SheetDay {
  private static final double SAME_MOMENT_SEC = 20;
  private static final char NO_BREAK = '\u00a0';

  private final Plan plan;
  private final Shown shown;
  private final List<Plan.PlannedStep> open;

  SheetDay(Plan plan, Shown shown) {
    this.plan = plan;
    this.shown = shown;
    this.open = new ArrayList<>(plan.steps());
  }

  /// One value to expect.
  private record Expected(String what, String key, Band band) {}

  /// Milestones of one moment.
  private record Row(List<Milestone> milestones) {
    Milestone first() {
      return milestones.getFirst();
    }
  }

  String section() {
    StringBuilder html = new StringBuilder("<section><h2>The day</h2>");
    html.append("<table class=\"day\"><thead><tr><th></th><th>Clock</th>")
        .append("<th>What is, and what to do</th><th>Expect ±</th>")
        .append("<th>Read</th><th>Real time</th></tr></thead><tbody>\n");
    List<Row> rows = rows();
    for (int i = 0; i < rows.size(); i++) {
      html.append(row(rows, i));
    }
    return html.append("</tbody></table></section>\n").toString();
  }

  /// What comes at the same moment shares a row.
  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (Milestone milestone : plan.forecast().milestones()) {
      boolean same =
          !rows.isEmpty()
              && Math.abs(middleSec(milestone) - middleSec(rows.getLast().first()))
                  < SAME_MOMENT_SEC;
      if (same) {
        rows.getLast().milestones().add(milestone);
      } else {
        rows.add(new Row(new ArrayList<>(List.of(milestone))));
      }
    }
    return rows;
  }

  private static double middleSec(Milestone milestone) {
    return milestone.atSec().middle();
  }

  private String row(List<Row> rows, int number) {
    Row row = rows.get(number);
    Milestone first = row.first();
    StringBuilder expects = new StringBuilder();
    StringBuilder blanks = new StringBuilder();
    for (Expected value : expected(row)) {
      String giveOrTake = shown.giveOrTake(value.key(), value.band());
      expects.append(
          "<span>%s%s%s</span>"
              .formatted(
                  value.what().isEmpty() ? "" : value.what() + " ",
                  WallSheet.escaped(shown.value(value.key(), value.band().middle())),
                  giveOrTake.isEmpty() ? "" : " ± " + giveOrTake));
      blanks.append("<span>&#160;</span>");
    }
    return ("<tr><td class=\"tick\"><b></b></td><td class=\"clock\">%s%s</td>"
            + "<td class=\"does\">%s</td><td class=\"expect\">%s</td>"
            + "<td class=\"blank\">%s</td><td class=\"blank\"><span>&#160;</span></td></tr>\n")
        .formatted(
            Shown.clock(first.atSec().middle()),
            between(first),
            does(row, steps(rows, number), hands(rows, number)),
            expects,
            blanks);
  }

  private static String between(Milestone milestone) {
    String low = Shown.clock(milestone.atSec().low());
    String high = Shown.clock(milestone.atSec().high());
    return low.equals(high) ? "" : "<span>" + low + " to " + high + "</span>";
  }

  /// What the moment is, then what is done now.
  private String does(Row row, List<Plan.PlannedStep> steps, boolean twoPairs) {
    StringBuilder text = new StringBuilder();
    List<String> says =
        row.milestones().stream()
            .filter(milestone -> steps.isEmpty() || !namedByStep(milestone))
            .map(Milestone::says)
            .distinct()
            .toList();
    if (!says.isEmpty()) {
      text.append("<b>")
          .append(WallSheet.escaped(capital(String.join(", ", says))))
          .append(".</b> ");
    }
    for (Milestone milestone : row.milestones()) {
      if (!stepsSay(milestone)) {
        // What the next step begins with is not said twice.
        String doing = milestone.doing().replaceAll("; heater to zero.*", "");
        text.append(WallSheet.escaped(capital(doing))).append(". ");
      }
    }
    for (Plan.PlannedStep step : steps) {
      text.append(WallSheet.escaped(step.does()));
      if (!step.key().isEmpty()) {
        String figure = shown.value(step.key(), step.amountNumber()).replace(' ', NO_BREAK);
        text.append(" <strong>").append(WallSheet.escaped(figure)).append("</strong>");
      }
      text.append(". ");
    }
    if (twoPairs) {
      text.append("<b class=\"hands\">Two pairs of hands.</b>");
    }
    return text.toString().strip();
  }

  /// "Heater off. Heater off after 60 min." says it twice.
  private static boolean namedByStep(Milestone milestone) {
    return Set.of("hop", "sugarIn", "flameOut").contains(kind(milestone.key()));
  }

  /// Two pairs of hands at this row: for pouring and lifting they are needed before the moment.
  private static boolean hands(List<Row> rows, int number) {
    boolean next =
        number + 1 < rows.size()
            && rows.get(number + 1).milestones().stream().anyMatch(m -> m.hands() > 1 && before(m));
    return next
        || rows.get(number).milestones().stream().anyMatch(m -> m.hands() > 1 && !before(m));
  }

  private static boolean before(Milestone milestone) {
    return milestone.key().equals("doughedIn") || milestone.key().equals("bagOut");
  }

  /// Whether nothing is done there, or the steps already say it.
  private static boolean stepsSay(Milestone milestone) {
    return switch (kind(milestone.key())) {
      case "liquorIn", "mashDone", "boilReached", "knockOut", "chilled", "cast" ->
          milestone.doing().isEmpty();
      default -> true;
    };
  }

  private static String kind(String key) {
    int dot = key.indexOf('.');
    return dot < 0 ? key : key.substring(0, dot);
  }

  /// The steps to begin at this row: those done at its moments, and those that lead to the next
  /// row's. A step whose moment the day does not have goes with the step after it.
  private List<Plan.PlannedStep> steps(List<Row> rows, int number) {
    Set<String> here = keys(rows, number);
    Set<String> next = keys(rows, number + 1);
    int end = number == rows.size() - 1 ? open.size() : 0;
    for (int i = 0; i < open.size(); i++) {
      Plan.PlannedStep step = open.get(i);
      if (here.contains(step.milestone()) || (next.contains(step.milestone()) && leads(step))) {
        end = Math.max(end, i + 1);
      }
    }
    List<Plan.PlannedStep> taken = new ArrayList<>(open.subList(0, end));
    open.subList(0, end).clear();
    return taken;
  }

  private static Set<String> keys(List<Row> rows, int number) {
    Set<String> keys = new HashSet<>();
    if (number < rows.size()) {
      rows.get(number).milestones().forEach(milestone -> keys.add(milestone.key()));
    }
    return keys;
  }

  /// Whether a step is begun before its moment, not done at it.
  private static boolean leads(Plan.PlannedStep step) {
    return switch (kind(step.milestone())) {
      case "strikeReady", "doughedIn", "toRest", "rest", "boilReached", "stood" -> true;
      case "cast" -> step.key().equals("fermenterL");
      case "bagOut" -> step.key().isEmpty();
      case "standAt" -> step.key().equals("standC");
      default -> false;
    };
  }

  private static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private List<Expected> expected(Row row) {
    List<Expected> found = new ArrayList<>();
    Set<String> known = new HashSet<>();
    for (Milestone milestone : row.milestones()) {
      for (Expected value : expected(milestone)) {
        if (Double.isFinite(value.band().middle()) && known.add(value.key())) {
          found.add(value);
        }
      }
    }
    return found;
  }

  private List<Expected> expected(Milestone milestone) {
    Expected wort = new Expected("", "wortC", milestone.wortC());
    Expected grain = new Expected("grain", "grainC", milestone.grainC());
    Expected litres = new Expected("", "hotL", milestone.hotL());
    Expected strength = new Expected("", "wortPlato", milestone.wortPlato());
    return switch (kind(milestone.key())) {
      case "liquorIn" -> List.of(litres, wort);
      case "strikeReady", "doughedIn", "standAt", "stood", "chilled" -> List.of(wort);
      case "settled", "toRest", "rest" -> List.of(grain);
      case "mashDone" -> List.of(strength);
      case "bagOut" -> List.of(litres, strength);
      case "boilReached" -> List.of(litres, wort);
      case "hop", "sugarIn" -> List.of(litres);
      case "flameOut" -> List.of(litres, strength);
      case "cast" -> ended();
      default -> List.of();
    };
  }

  /// What is in the fermenter.
  private List<Expected> ended() {
    List<Expected> found = new ArrayList<>();
    for (String key : List.of("fermenterL", "strengthPlato", "castC")) {
      plan.forecast().figure(key).map(SheetDay::expected).ifPresent(found::add);
    }
    return found;
  }

  private static Expected expected(Figure figure) {
    return new Expected("", figure.key(), figure.band());
  }
}
