package gylebook.web;

import gylebook.brewday.Followed;
import gylebook.brewday.Follower;
import gylebook.estimate.Held;
import gylebook.estimate.Lever;
import gylebook.estimate.Weighed;
import gylebook.simulate.Outcome;
import gylebook.telling.Shown;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// Ways to put it right beside one another: what each costs.
final class LeverTable {
  private static final List<Outcome> COLUMNS =
      List.of(Outcome.STRENGTH, Outcome.FERMENTER, Outcome.BITTERNESS, Outcome.COLOUR, Outcome.DAY);

  private final Shown shown;
  private final Follower follower;

  LeverTable(Shown shown, Follower follower) {
    this.shown = shown;
    this.follower = follower;
  }

  String html(Followed day, List<Lever> levers) {
    StringBuilder html = new StringBuilder(believable(day));
    html.append("<div class=\"wide\"><table><tr><th>way</th>");
    for (Outcome outcome : COLUMNS) {
      html.append("<th>").append(Html.escaped(says(outcome))).append("</th>");
    }
    html.append("<th>can be taken back</th></tr>");
    levers.forEach(lever -> html.append(row(lever)));
    return html.append("</table></div>")
        .append(
            "<p>Nothing is done by this table: do it, then note it under \"Say what happened\". Sugar"
                + " or extract into boiling wort foams: heater off first. Hot wort scalds.</p>")
        .toString();
  }

  /// First of all: is what was read last to be believed?
  private static String believable(Followed day) {
    Optional<Weighed> last =
        day.weighedBySeq().entrySet().stream()
            .max(Comparator.comparingLong(one -> one.getKey()))
            .map(one -> one.getValue());
    return last.filter(Weighed.SetAside.class::isInstance)
        .map(
            aside ->
                "<p class=\"plate\"><b>NOTE</b> The last reading, by the %s, is hard to believe. Read it again first.</p>"
                    .formatted(Html.escaped(aside.reading().instrument())))
        .orElse("");
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
    html.append(Html.escaped(lever.kind().says())).append(Html.escaped(amount(lever)));
    if (!lever.reaches() && lever.kind() != Lever.Kind.ACCEPT) {
      html.append("; even so it does not come to the aim");
    }
    html.append("</th>");
    for (Outcome outcome : COLUMNS) {
      Held held = lever.outcomes().get(outcome);
      String cell = held == null ? "none" : shown.range(outcome.key(), KettlePage.band(held));
      html.append("<td>").append(Html.escaped(cell)).append("</td>");
    }
    return html.append("<td>")
        .append(lever.kind().undoable() ? "until it is done" : "no")
        .append("</td></tr>")
        .toString();
  }

  private String amount(Lever lever) {
    if (lever.key().isEmpty()) {
      return "";
    }
    return lever.key().equals("hopsFactor")
        ? String.format(Locale.ROOT, ": %.2f times as many", lever.amountNumber())
        : ": " + shown.value(lever.key(), lever.amountNumber());
  }
}
