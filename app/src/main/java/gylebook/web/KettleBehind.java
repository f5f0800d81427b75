package gylebook.web;

import gylebook.brewday.AsRead;
import gylebook.brewday.DayNote;
import gylebook.brewday.Followed;
import gylebook.brewday.Follower;
import gylebook.brewday.Gyle;
import gylebook.brewday.PlanChange;
import gylebook.brewday.Sighting;
import gylebook.estimate.Held;
import gylebook.estimate.Instrument;
import gylebook.estimate.Suspicion;
import gylebook.estimate.Witness;
import gylebook.journal.Event;
import gylebook.rig.Probe;
import gylebook.telling.Shown;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/// What stands behind the glance: entries, instruments, the rest of the day, the notes.
final class KettleBehind {
  private static final double MS_PER_SEC = 1000;
  private static final List<String> SAID =
      List.of(
          "It boiled over",
          "Hops were missed",
          "The hoist slipped",
          "The pump lost its prime",
          "The power was out",
          "I had to leave");

  private final Shown shown;
  private final ReadingUnits units;
  private final Follower follower;
  private final Gyle gyle;
  private final Instant began;

  KettleBehind(Shown shown, ReadingUnits units, Follower follower, Gyle gyle, Instant began) {
    this.shown = shown;
    this.units = units;
    this.follower = follower;
    this.gyle = gyle;
    this.began = began;
  }

  /// Two taps for a dip, a temperature, a gravity; and what no instrument shows.
  String entries(Followed day) {
    StringBuilder html = new StringBuilder("<section class=\"entries\"><h2>Note a reading</h2>");
    follower.instruments().forEach(instrument -> html.append(entry(instrument, day)));
    html.append(
        "</section><details><summary>Seen beside that: flow, level, chiller, fermenter, circuit</summary>");
    for (Sighting sighting : Sighting.values()) {
      html.append(seen(sighting));
    }
    html.append("</details><details><summary>Switched otherwise than planned</summary>");
    html.append(switched("heater", "duty in %, empty for as planned"));
    html.append(switched("pump", "on, off, or empty for as planned"));
    html.append(switched("lid", "on, off, or empty for as planned"));
    html.append(
        "</details><details id=\"happened\"><summary>Say what happened</summary><div class=\"thumb\">");
    for (String words : SAID) {
      html.append(
          "<button type=\"button\" data-do=\"say\" data-what=\"mishap\" data-value=\"%s\">%s</button>"
              .formatted(words, words));
    }
    return html.append("</div>")
        .append(
            "<form class=\"entry\" data-do=\"say\" data-what=\"words\"><label>In your words <input name=\"value\" autocomplete=\"off\" maxlength=\"500\"></label> ")
        .append(at())
        .append(
            "<button>Note it</button><span class=\"problem\" role=\"alert\"></span></form></details>")
        .toString();
  }

  private String entry(Instrument instrument, Followed day) {
    boolean carried = instrument.role() == Instrument.Role.CARRIED;
    boolean warmth = instrument.measures() == Instrument.Measures.TEMPERATURE;
    boolean strength = instrument.measures() == Instrument.Measures.STRENGTH;
    StringBuilder more = new StringBuilder();
    if (carried && warmth) {
      more.append("<label>where <select name=\"place\">");
      for (Probe.Place place : Probe.Place.values()) {
        boolean usual = place == (day.inBag() ? Probe.Place.BED : Probe.Place.KETTLE);
        more.append(
            "<option value=\"%s\"%s>%s</option>"
                .formatted(place, usual ? " selected" : "", says(place)));
      }
      more.append("</select></label>");
    }
    if (strength) {
      more.append(
          "<label>sample at <input name=\"sample\" size=\"7\" autocomplete=\"off\"></label>");
    }
    if (carried) {
      more.append(
          "<label>stirred before <select name=\"mixed\"><option value=\"yes\">yes</option><option value=\"no\">no</option></select></label>");
    }
    return "<form class=\"entry\" data-do=\"read\" data-what=\"%s\"><label>%s <input name=\"value\" size=\"8\" inputmode=\"decimal\" autocomplete=\"off\" placeholder=\"%s\"></label> <button>Note it</button><details><summary>how and when</summary>%s%s</details><span class=\"problem\" role=\"alert\"></span></form>"
        .formatted(
            Html.escaped(instrument.name()),
            Html.escaped(instrument.name()),
            Html.escaped(units.unit(quantity(instrument)).symbol()),
            more,
            at());
  }

  private static String at() {
    return "<label>at <input name=\"at\" size=\"6\" autocomplete=\"off\" placeholder=\"now\"></label>";
  }

  private static Quantity quantity(Instrument instrument) {
    return AsRead.quantity(instrument);
  }

  private static String says(Probe.Place place) {
    return switch (place) {
      case SUCTION -> "before the pump";
      case RETURN -> "in the return";
      case KETTLE -> "in the kettle";
      case BED -> "in the grain";
    };
  }

  /// The guards look at these; the belief does not follow them.
  private String seen(Sighting sighting) {
    return "<form class=\"entry\" data-do=\"read\" data-what=\"%s\"><label>%s <input name=\"value\" size=\"8\" inputmode=\"decimal\" autocomplete=\"off\" placeholder=\"%s\"></label> <button>Note it</button><small>%s</small><span class=\"problem\" role=\"alert\"></span></form>"
        .formatted(
            sighting.says(),
            sighting.says(),
            Html.escaped(units.unit(sighting.quantity()).symbol()),
            sighting.where());
  }

  private static String switched(String what, String hint) {
    return "<form class=\"entry\" data-do=\"switch\" data-what=\"%s\"><label>%s <input name=\"value\" size=\"8\" autocomplete=\"off\"></label> <button>Note it</button><small>%s</small><span class=\"problem\" role=\"alert\"></span></form>"
        .formatted(what, what, hint);
  }

  /// What the instruments say: verdict, reason, give or take, and the test that would settle it.
  String witnesses(Followed day) {
    StringBuilder html = new StringBuilder("<h2>What the instruments say</h2>");
    day.leads().map(KettleBehind::led).ifPresent(html::append);
    for (Witness witness : day.witnesses()) {
      html.append(witness(witness));
    }
    if (!day.worthDoing().isEmpty()) {
      html.append("<p><b>One test that would settle most about what comes next:</b> ")
          .append(Html.escaped(says(day.worthDoing().getFirst())))
          .append("</p>");
    }
    return html.toString();
  }

  private static String led(Suspicion.Share share) {
    return "<p class=\"plate\"><b>SOON</b> %s By what was read since the last point the chances of that are %d in 100.</p>"
        .formatted(Html.escaped(share.supposition().says()), Math.round(100 * share.shareFrac()));
  }

  private String witness(Witness witness) {
    String verdict =
        switch (witness.verdict()) {
          case TRUST -> "take it as it reads";
          case CORRECT ->
              witness.readsHigh().mean() < 0
                  ? "add what it reads low"
                  : "take off what it reads high";
          case CANNOT_TELL -> "cannot be told yet";
          case DOUBT -> "do not go by it";
        };
    Held high = witness.readsHigh();
    String settles = witness.settles().map(test -> " To settle it: " + says(test)).orElse("");
    return "<div class=\"dial\"><p><b>%s</b>: %s. %s</p><p>%s%s</p></div>"
        .formatted(
            Html.escaped(witness.instrument()),
            verdict,
            Html.escaped(high(witness.instrument(), high)),
            Html.escaped(witness.because().says()),
            Html.escaped(settles));
  }

  /// A test with the instrument it is done with, which need not be the one it settles.
  private static String says(Witness.WorthDoing test) {
    String with = test.instrument().isEmpty() ? "" : "With the " + test.instrument() + ": ";
    return "%s%s It would leave %d of 100 parts of the doubt."
        .formatted(with, test.test().says(), Math.round(100 * test.leftRatio()));
  }

  private String high(String name, Held high) {
    Instrument.Measures measures =
        follower.instruments().stream()
            .filter(one -> one.name().equals(name))
            .findFirst()
            .map(Instrument::measures)
            .orElse(Instrument.Measures.TEMPERATURE);
    String unit =
        switch (measures) {
          case TEMPERATURE -> "K";
          case HOT_VOLUME -> "L";
          case STRENGTH -> "°P";
        };
    String by = String.format(Locale.ROOT, "%.1f", Math.abs(high.mean()));
    String way =
        by.equals("0.0") ? "right" : (high.mean() < 0 ? "low by " : "high by ") + by + " " + unit;
    return String.format(Locale.ROOT, "Reads %s, give or take %.1f %s.", way, high.doubt(), unit);
  }

  /// The rest of the day, each point by when and how sure.
  String coming(Followed day) {
    StringBuilder html =
        new StringBuilder(
            "<h2>What comes</h2><div class=\"wide\"><table><tr><th>What</th><th>When</th><th>Give or take</th><th>Hands</th></tr>");
    for (Followed.Coming coming : day.coming()) {
      Held at = coming.atSec();
      html.append(
          "<tr><td>%s</td><td>%s</td><td>%d min</td><td>%s</td></tr>"
              .formatted(
                  Html.escaped(coming.says()),
                  time(at.mean()),
                  Math.max(1, Math.round((at.high() - at.low()) / 2 / 60)),
                  coming.hands() == 0 ? "" : coming.hands() + ": " + Html.escaped(coming.doing())));
    }
    return html.append("</table></div>").toString();
  }

  private String time(double sec) {
    Instant at = began.plusMillis(Math.round(sec * MS_PER_SEC));
    return "<time datetime=\"%s\">%s after the start</time>"
        .formatted(at, Shown.clock(sec).strip());
  }

  /// The plan as it was fixed, and every plan that came beside it.
  String plans() {
    StringBuilder html =
        new StringBuilder(
            "<details class=\"plans\"><summary>The plan and what was changed</summary><ol>");
    gyle.brewedBy()
        .ifPresent(
            plan ->
                html.append(
                    "<li>As it was fixed <time datetime=\"%s\">%s</time>.<details><summary>What it said</summary><pre>%s</pre></details></li>"
                        .formatted(plan.at(), plan.at(), Html.escaped(plan.report()))));
    for (DayNote note : gyle.day()) {
      if (note.event() instanceof Event.PlanChanged(String says, String document)) {
        html.append(changed(note, says, document));
      }
    }
    return html.append("</ol></details>").toString();
  }

  private String changed(DayNote note, String says, String document) {
    String wanted =
        PlanChange.read(document)
            .map(PlanChange::wanted)
            .map(
                all ->
                    "%s, %s, bitterness %s, colour %s"
                        .formatted(
                            shown.value("strengthPlato", all.strengthPlato()),
                            shown.value("fermenterL", all.fermenterL()),
                            shown.value("bitternessMgPerL", all.bitternessMgPerL()),
                            shown.value("colourEbc", all.colourEbc())))
            .orElse("");
    String words = Html.escaped(says + ". Wanted from then on: " + wanted + ".");
    return "<li>Changed <time datetime=\"%s\">%s</time>: %s</li>"
        .formatted(note.at(), note.at(), note.stands() ? words : "<del>" + words + "</del> struck");
  }
}
