package gylebook.web;

import gylebook.brewday.Followed;
import gylebook.brewday.Follower;
import gylebook.brewday.PlanChange;
import gylebook.estimate.Lever;
import gylebook.estimate.Levers;
import gylebook.estimate.Weighed;
import gylebook.plan.Band;
import gylebook.simulate.Outcome;
import gylebook.telling.Shown;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// Ways to put it right beside one another: what each costs.
final class LeverTable {
  // Below this a reading is worth taking again before anything is done (our judgement).
  private static final double DOUBTED_FRAC = 0.8;
  private static final List<Outcome> COLUMNS =
      List.of(
          Outcome.STRENGTH,
          Outcome.FERMENTER,
          Outcome.BITTERNESS,
          Outcome.COLOUR,
          Outcome.DAY,
          Outcome.ENERGY);

  private final Shown shown;
  private final Follower follower;

  LeverTable(Shown shown, Follower follower) {
    this.shown = shown;
    this.follower = follower;
  }

  String html(Followed day, Levers levers) {
    StringBuilder html = new StringBuilder(believable(day));
    levers.off().forEach(off -> html.append(off(off)));
    html.append("<div class=\"wide\"><table><tr><th>Way</th>");
    for (Outcome outcome : COLUMNS) {
      html.append("<th>").append(Html.escaped(Html.capital(says(outcome)))).append("</th>");
    }
    html.append("<th>Can be taken back</th><th>Take it</th></tr>");
    levers.offered().forEach(lever -> html.append(row(lever)));
    html.append("</table></div>");
    levers.refused().forEach(not -> html.append(refused(not)));
    return html.append(
            "<p>\"Do it\" writes a new plan beside the old one, from where the brew stands, and the day"
                + " goes on by it; striking its note brings the old one back. Nothing is switched: the"
                + " hands are yours. Sugar or extract into boiling wort foams: heater off first. Hot"
                + " wort scalds.</p>")
        .toString();
  }

  /// First of all: is what was read last to be believed?
  private static String believable(Followed day) {
    Optional<Weighed> last =
        day.weighedBySeq().entrySet().stream()
            .max(Comparator.comparingLong(one -> one.getKey()))
            .map(one -> one.getValue());
    return last.map(LeverTable::believable).orElse("");
  }

  private static String believable(Weighed last) {
    String says =
        "The last reading, by the %s, is right with %d in 100."
            .formatted(last.reading().instrument(), Math.round(100 * last.believableFrac()));
    return last.believableFrac() < DOUBTED_FRAC
        ? "<p class=\"plate\"><b>NOTE</b> " + Html.escaped(says) + " Read it again first.</p>"
        : "<p>" + Html.escaped(says) + "</p>";
  }

  private String off(Levers.Off off) {
    String key = off.goal().outcome().key();
    return "<p>Off the plan with %d in 100: %s. Planned %s, now %s.</p>"
        .formatted(
            Math.round(100 * off.chanceFrac()),
            Html.escaped(off.goal().says()),
            Html.escaped(shown.value(key, off.wanted())),
            Html.escaped(shown.range(key, off.comes())));
  }

  private static String refused(Levers.Refused not) {
    return "<p>Not now: %s %s</p>"
        .formatted(Html.escaped(not.kind().says()), Html.escaped(not.because().says()));
  }

  private String says(Outcome outcome) {
    return follower
        .plan()
        .forecast()
        .figure(outcome.key())
        .map(figure -> figure.says())
        .orElse(outcome.key());
  }

  private String row(Lever lever) {
    StringBuilder html = new StringBuilder("<tr><th scope=\"row\">");
    html.append(Html.escaped(lever.kind().says()))
        .append(Html.escaped(amount(shown, lever.amountKey(), lever.amountNumber())));
    lever
        .binds()
        .ifPresent(limit -> html.append("; no further: ").append(Html.escaped(limit.says())));
    html.append("</th>");
    for (Outcome outcome : COLUMNS) {
      String cell = shown.range(outcome.key(), band(lever.comes(), outcome));
      html.append("<td>").append(Html.escaped(cell)).append("</td>");
    }
    return html.append("<td>")
        .append(Html.escaped(lever.kind().undo().says()))
        .append(' ')
        .append(Html.escaped(lever.kind().undoSays()))
        .append("</td><td>")
        .append(take(lever))
        .append("</td></tr>")
        .toString();
  }

  private static Band band(Lever.Comes comes, Outcome outcome) {
    return switch (outcome) {
      case STRENGTH -> comes.strengthPlato();
      case FERMENTER -> comes.fermenterL();
      case BITTERNESS -> comes.bitternessMgPerL();
      case COLOUR -> comes.colourEbc();
      case DAY -> comes.endSec();
      case ENERGY -> comes.energyJ();
      default -> throw new IllegalArgumentException("No lever speaks of " + outcome.key());
    };
  }

  /// Asked once more before it is written.
  private String take(Lever lever) {
    if (lever.changes().isEmpty()) {
      return "";
    }
    PlanChange change = PlanChange.of(lever);
    String says = says(shown, change);
    return "<button type=\"button\" data-do=\"take\" data-what=\"%s\" data-value=\"%s\" data-sure=\"Press once more to do it: %s\" aria-label=\"Do it: %s\">Do it</button>"
        .formatted(
            lever.kind(), Html.escaped(change.text()), Html.escaped(says), Html.escaped(says));
  }

  /// A way with its amount, as the brewer reads it.
  static String says(Shown shown, PlanChange change) {
    return change.way().says() + amount(shown, change.amountKey(), change.amount());
  }

  private static String amount(Shown shown, String key, double amount) {
    if (key.isEmpty()) {
      return "";
    }
    return key.equals("hopFactor")
        ? String.format(Locale.ROOT, " %.2f times as much", amount)
        : " " + shown.value(key, amount);
  }
}
