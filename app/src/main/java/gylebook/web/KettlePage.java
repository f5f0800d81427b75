package gylebook.web;

import gylebook.brewday.DayNote;
import gylebook.brewday.Followed;
import gylebook.brewday.Follower;
import gylebook.brewday.Gyle;
import gylebook.estimate.Held;
import gylebook.estimate.Suspicion;
import gylebook.plan.Band;
import gylebook.plan.Plan;
import gylebook.simulate.Outcome;
import gylebook.telling.Shown;
import gylebook.units.ReadingUnits;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/// At the kettle: what is under way, three big numbers, one thing to do.
final class KettlePage {
  private static final double SEC_PER_MIN = 60;
  private static final double MS_PER_SEC = 1000;

  private final Shown shown;
  private final KettleBehind behind;
  private final KettleNotes notes;
  private final Follower follower;
  private final Gyle gyle;
  private final Instant began;

  /// @param sending what tied instruments are called on this day
  KettlePage(ReadingUnits units, Follower follower, Gyle gyle, Instant now, Set<String> sending) {
    this.shown = new Shown(units);
    this.follower = follower;
    this.gyle = gyle;
    this.began = gyle.started().map(DayNote::at).orElse(now);
    this.behind = new KettleBehind(shown, units, follower, gyle, began);
    this.notes = new KettleNotes(shown, follower, gyle, sending);
  }

  /// The page round what changes.
  static String whole(Gyle gyle, Instant now, String inside) {
    return Html.page(
            gyle.name() + ": at the kettle",
            "<p class=\"over\"><a href=\"/gyles/%s\">%s</a></p><h1 class=\"quiet\">At the kettle</h1>"
                    .formatted(Html.escaped(gyle.gyleId()), Html.escaped(gyle.name()))
                + "<p id=\"strip\" hidden></p><p id=\"state\" role=\"status\"></p>"
                + "<div id=\"kettle\" data-gyle=\"%s\" data-seq=\"%d\" data-now=\"%d\" data-pace=\"%d\">%s</div>"
                    .formatted(
                        Html.escaped(gyle.gyleId()),
                        gyle.lastSeq(),
                        now.toEpochMilli(),
                        gyle.pace(),
                        inside)
                + "<p><small id=\"reload\"></small></p><p><small id=\"awake\"></small></p>")
        .replace("/page.js", "/kettle.js");
  }

  /// Before the day.
  static String before(Gyle gyle) {
    if (gyle.plan().isEmpty()) {
      return "<p>No plan is fixed for the day yet. Go to <a href=\"/gyles/%s\">the gyle</a> and make its forecast the plan of the day.</p>"
          .formatted(Html.escaped(gyle.gyleId()));
    }
    return Checklists.heat()
        + "<p><button type=\"button\" data-try-sound>Try the sound</button></p>"
        + "<p>House wiring and lifting gear are for those who are licensed for them; your local"
        + " code counts, not this page.</p>"
        + "<p>The clock starts when the cold liquor stands in the kettle.</p>"
        + "<button type=\"button\" class=\"main\" data-do=\"start\">Start the day</button>"
        + "<p><a href=\"/rehearsal\">Rehearse it first, on a hidden rig</a></p>";
  }

  /// When the plan cannot be computed any more.
  static String lost() {
    return "<p>The plan of this day cannot be computed by this version any more. Your notes are all"
        + " kept; what the plan said stands on its page.</p>";
  }

  /// A forecast is missing in the book; what was noted is not.
  static String notKept(String because) {
    return "<p class=\"not-kept\">What was forecast at the last point is not kept, so it cannot be compared with what comes: %s Your notes are safe.</p>"
        .formatted(Html.escaped(because));
  }

  /// The day under way.
  ///
  /// @param beside what a rehearsal adds behind the hands
  String during(Followed day, String beside) {
    StringBuilder html = new StringBuilder();
    String plates = new LivePlates(shown, began).html(day);
    boolean calm = day.guards().isEmpty();
    // What is wrong comes before everything; that nothing is does not push a number off a phone.
    html.append(top(day)).append(calm ? "" : plates).append(numbers(day));
    html.append(calm ? plates : "").append(next(day)).append(due(day)).append(hands(day));
    html.append(safe()).append(beside).append(holder());
    html.append(new Checklists(shown, follower.plan()).of(day)).append(reach(day));
    html.append(
        "<section><h2>Put it right</h2><p>Each way is simulated with the same luck as the forecast above.</p><button type=\"button\" data-levers>What could be done now?</button><div id=\"levers\" aria-live=\"polite\"></div></section>");
    html.append(behind.entries(day)).append(behind.witnesses(day));
    html.append(behind.coming(day)).append(behind.plans()).append(notes.html(day));
    return html.toString();
  }

  /// Which screen is at the kettle. Every screen gets the same words; each shows its own half.
  private String holder() {
    String take = "<button type=\"button\" class=\"take\" data-take>%s</button>";
    return gyle.atKettle()
        .map(
            held ->
                "<p class=\"holder\" data-holder=\"%s\"><span class=\"mine\">This screen is at the kettle.</span><span class=\"theirs\">At the kettle: %s. This screen watches.</span> <span class=\"theirs\">%s</span></p>"
                    .formatted(
                        Html.escaped(held.screen()),
                        Html.escaped(held.called()),
                        take.formatted("Hold to take over")))
        .orElseGet(
            () ->
                "<p class=\"holder\" data-holder=\"\">No screen has been taken to the kettle yet. %s</p>"
                    .formatted(take.formatted("Hold: this screen is at the kettle")));
  }

  private String top(Followed day) {
    if (!day.underWay()) {
      return "<p class=\"leg\">The day is done. Clean up, then see <a href=\"/gyles/%1$s/forecasts\">what was forecast and what came</a>, and <a href=\"/gyles/%1$s/learnt\">what the day says of the rig</a>.</p>"
          .formatted(Html.escaped(gyle.gyleId()));
    }
    double left = day.endsSec().mean() - day.clockSec();
    long ends = began.toEpochMilli() + Math.round(day.endsSec().mean() * MS_PER_SEC);
    String about = day.timed() ? "" : "about ";
    return "<p class=\"leg\"><b>To: %s</b> <span class=\"left\" data-ends=\"%d\" data-about=\"%s\">%s%s left</span> <span>%s</span></p>"
        .formatted(
            Html.escaped(day.says()), ends, about, about, minutes(left), late(day.lateSec()));
  }

  private static String minutes(double sec) {
    return Shown.clock(Math.max(0, sec)).strip();
  }

  private static String late(double sec) {
    long min = Math.round(sec / SEC_PER_MIN);
    return min == 0 ? "as planned" : min > 0 ? "+" + min + " min late" : -min + " min early";
  }

  private String numbers(Followed day) {
    String where = day.inBag() ? "grain" : "wort";
    return "<div class=\"three\">"
        + number("temperature", where, "wortC", day.grainC())
        + number("level", "in the kettle", "hotL", day.hotL())
        + number("gravity", "strength", "wortPlato", day.wortPlato())
        + "</div>"
        + day.leads().map(share -> led(share, where, day)).orElse("");
  }

  /// By what the numbers are held, where that is not what was told.
  private String led(Suspicion.Share share, String where, Followed day) {
    String onward =
        share.supposition().passes()
            ? " The rest of the day is told as if that were mended now."
            : "";
    return "<p class=\"led\">These numbers hold something to be wrong: %s The chances of that are %d in 100. Were all as you told it, the %s would be at %s.%s</p>"
        .formatted(
            Html.escaped(share.supposition().says()),
            Math.round(100 * share.shareFrac()),
            where,
            Html.escaped(shown.value("wortC", day.soundC().mean())),
            onward);
  }

  private String number(String role, String says, String key, Held held) {
    return "<p class=\"%s\"><b>%s</b><span>%s, give or take %s</span></p>"
        .formatted(
            role,
            big(shown.value(key, held.mean())),
            says,
            Html.escaped(shown.giveOrTake(key, band(held))));
  }

  /// The number as large as the screen allows; its unit needs less.
  private static String big(String amount) {
    int gap = amount.lastIndexOf(' ');
    return gap < 0
        ? Html.escaped(amount)
        : Html.escaped(amount.substring(0, gap))
            + "<small>"
            + Html.escaped(amount.substring(gap))
            + "</small>";
  }

  static Band band(Held held) {
    return new Band(held.low(), held.mean(), held.high());
  }

  /// One thing to do now; then when hands are needed next.
  private String next(Followed day) {
    StringBuilder html = new StringBuilder("<div class=\"next\"><h2>Next</h2>");
    if (day.doNow().isEmpty()) {
      html.append("<p>Nothing to do but watch.</p>");
    }
    for (Plan.PlannedStep step : day.doNow()) {
      html.append("<p>").append(Html.escaped(step.does()));
      if (!step.key().isEmpty()) {
        html.append(" <b>")
            .append(Html.escaped(shown.value(step.key(), step.amountNumber())))
            .append("</b>");
      }
      html.append("</p>");
    }
    Optional<Followed.Coming> hands =
        day.coming().stream().filter(coming -> coming.hands() > 0).findFirst();
    hands.ifPresent(
        coming ->
            html.append(
                "<p>%s needed %s: %s.</p>"
                    .formatted(
                        coming.hands() > 1 ? "Two pairs of hands are" : "Hands are",
                        at(coming.atSec().mean()),
                        Html.escaped(coming.doing().isEmpty() ? coming.says() : coming.doing()))));
    return html.append("</div>").toString();
  }

  private String at(double sec) {
    Instant at = began.plusMillis(Math.round(sec * MS_PER_SEC));
    return "<time datetime=\"%s\">%s after the start</time>"
        .formatted(at, Shown.clock(sec).strip());
  }

  /// What was wanted, and what is held to come.
  private String reach(Followed day) {
    StringBuilder html = new StringBuilder("<div class=\"reach\"><h2>Reach</h2>");
    for (Outcome outcome :
        List.of(Outcome.STRENGTH, Outcome.FERMENTER, Outcome.BITTERNESS, Outcome.ALCOHOL)) {
      Held held = day.outcomes().get(outcome);
      Double wanted = day.planned().get(outcome);
      if (held != null && wanted != null && Double.isFinite(held.mean())) {
        html.append(bar(outcome, held, wanted));
      }
    }
    day.offTime().stream()
        .filter(Followed.OffTime::matters)
        .forEach(off -> html.append(offTime(off)));
    return html.append("</div>").toString();
  }

  private String offTime(Followed.OffTime off) {
    return "<p class=\"off-time\">%s, %d min %s: the bitterness to come is about %s %s for it; the boil ends when it would have.</p>"
        .formatted(
            Html.escaped(off.says()),
            Math.round(Math.abs(off.bySec()) / SEC_PER_MIN),
            off.bySec() > 0 ? "late" : "early",
            Html.escaped(shown.value("bitternessMgPerL", Math.abs(off.bitternessMgPerL()))),
            off.bitternessMgPerL() < 0 ? "lower" : "higher");
  }

  private String bar(Outcome outcome, Held held, double wanted) {
    double span = Math.max(Math.abs(wanted) * 0.25, 1e-6);
    double low = 50 + 50 * Math.clamp((held.low() - wanted) / span, -1, 1);
    double high = 50 + 50 * Math.clamp((held.high() - wanted) / span, -1, 1);
    String says =
        follower.plan().forecast().figure(outcome.key()).map(f -> f.says()).orElse(outcome.key());
    String words =
        "%s: the plan has %s, carrying on gives %s (9 times in 10)"
            .formatted(
                says, shown.value(outcome.key(), wanted), shown.range(outcome.key(), band(held)));
    return String.format(
        Locale.ROOT,
        "<p>%s</p><svg class=\"bar\" viewBox=\"0 0 100 8\" preserveAspectRatio=\"none\" role=\"img\" aria-label=\"%s\"><rect class=\"all\" x=\"0\" y=\"3\" width=\"100\" height=\"2\"/><rect class=\"held\" x=\"%.1f\" y=\"1\" width=\"%.1f\" height=\"6\"/><rect class=\"want\" x=\"49.6\" y=\"0\" width=\"0.8\" height=\"8\"/></svg>",
        Html.escaped(words),
        Html.escaped(words),
        low,
        Math.max(0.8, high - low));
  }

  /// Points the day went past without a word.
  private String due(Followed day) {
    if (day.due().isEmpty()) {
      return "";
    }
    StringBuilder html = new StringBuilder("<div class=\"thumb due\">");
    for (Plan.PlannedStep step : day.due()) {
      html.append(
          "<button type=\"button\" class=\"main\" data-do=\"reach\" data-what=\"%s\">Due, done? %s %s</button>"
              .formatted(
                  Html.escaped(step.milestone()),
                  Html.escaped(step.does()),
                  Html.escaped(shown.value(step.key(), step.amountNumber()))));
    }
    return html.append("</div>").toString();
  }

  /// What a hand wants now; it stays in reach of the thumb, however long the page is.
  private String hands(Followed day) {
    StringBuilder html = new StringBuilder("<div class=\"thumb reach-me\">");
    if (day.underWay()) {
      html.append(
          "<button type=\"button\" class=\"main\" data-do=\"reach\" data-what=\"%s\">Done: %s</button>"
              .formatted(Html.escaped(day.leg()), Html.escaped(day.says())));
      html.append("<button type=\"button\" data-snooze=\"5\">Not yet, +5 min</button>");
    }
    html.append("<button type=\"button\" data-open=\"happened\">Say what happened</button></div>");
    notes
        .last()
        .ifPresent(
            note ->
                html.append(
                    "<div class=\"thumb\"><button type=\"button\" data-do=\"strike\" data-what=\"%d\">Undo: %s</button></div>"
                        .formatted(note.seq(), Html.escaped(notes.says(note)))));
    return html.toString();
  }

  private static String safe() {
    return "<details class=\"safe\"><summary>Make safe</summary><ol>"
        + "<li>Heater to zero at the controller; then switch it off where you can reach it dry.</li>"
        + "<li>Pump off. Close the valve at the kettle before you touch a hose.</li>"
        + "<li>A hanging bag: let it down, or secure the hoist. Nobody stands under it.</li>"
        + "<li>Lid ajar. Leave hot wort alone; do not carry it.</li>"
        + "<li>Smoke, a shock or a tripped breaker: switch off at the board, touch nothing wet,"
        + " call somebody who is licensed. Scald: cool water for 20 minutes, then the doctor.</li></ol>"
        + "<p>Wort that has boiled may wait covered for some hours; a mash that waits goes on"
        + " converting and turns sour in a day (common practice, no source).</p></details>";
  }
}
