package gylebook.web;

import gylebook.brewday.Gyle;
import gylebook.brewday.LookedBack;
import gylebook.estimate.Held;
import gylebook.plan.Band;
import gylebook.rig.Rig;
import gylebook.telling.LearntWords;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/// What a finished day says of itself and of the rig, once all its notes are looked at together.
@AnyUnit("tells every quantity")
final class LearntPage {
  private static final Map<String, String> SAYS =
      Map.of(
          "grainMeanC", "grain, in the middle of the mash",
          "kettleYieldFrac", "share of the extract that came into the kettle",
          "preBoilPlato", "strength before the boil",
          "boilOffLPerHr", "boiled off",
          "postBoilL", "wort after the boil, cold",
          "fermenterL", "into the fermenter",
          "strengthPlato", "strength in the fermenter",
          "bitternessMgPerL", "bitterness",
          "attenuationFrac", "apparent attenuation to come",
          "energyJ", "energy of the day");

  private final Gyle gyle;

  LearntPage(Gyle gyle) {
    this.gyle = gyle;
  }

  /// The page before anything is reckoned; the script asks for the rest.
  String whole() {
    String at = Html.escaped(gyle.gyleId());
    return Html.page(
            gyle.name() + ": looking back",
            "<p class=\"over\"><a href=\"/gyles/%s\">%s</a></p><h1>Looking back</h1>"
                    .formatted(at, Html.escaped(gyle.name()))
                + "<p>On the day each reading counted with what was known by then. Now the whole day is"
                + " told over and over, so that early readings are met with what later ones taught.</p>"
                + "<p id=\"state\" role=\"status\"></p>"
                + "<div id=\"learnt\" data-gyle=\"%s\" data-seq=\"%d\" aria-busy=\"true\"><p>The day is being told again; that takes some seconds.</p></div>"
                    .formatted(at, gyle.lastSeq()))
        .replace("/page.js", "/learnt.js");
  }

  /// When there is nothing to look back on.
  static String tooSoon() {
    return "<p>This day is not over. Look back when everything is done.</p>";
  }

  /// What the day says.
  ///
  /// @param rig that the day was planned for
  /// @param onto where it could be kept, by page
  String told(LookedBack back, Rig rig, ReadingUnits units, Map<String, String> onto) {
    if (!back.otherwise().isEmpty()) {
      return otherwise(back);
    }
    StringBuilder html = new StringBuilder();
    html.append(came(back, new Shown(units)));
    html.append("<section><h2>What it says of the rig</h2>");
    List<LearntWords.Line> seen = LearntWords.seen(back.findings(), rig, units);
    if (seen.isEmpty()) {
      html.append("<p>Too little was read to say anything of the rig. Thermometers that send by")
          .append(" themselves, a dip before and after the boil and a gravity tell most.</p>");
    } else {
      html.append(table(seen, back.readings())).append(keep(onto));
    }
    List<String> unseen = LearntWords.unseen(back.findings(), rig, units);
    return html.append("<details><summary>What this day could not tell</summary>")
        .append(Html.list("These keep what they had:", unseen))
        .append("</details></section>")
        .toString();
  }

  private String came(LookedBack back, Shown shown) {
    StringBuilder html =
        new StringBuilder(
            "<section><h2>What the day was</h2><div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"What the day was, table\"><table><thead><tr><th scope=\"col\">What</th><th scope=\"col\">Looking back</th><th scope=\"col\">At the day's end</th><th scope=\"col\">Planned</th></tr></thead><tbody>");
    for (LookedBack.Told told : back.told()) {
      html.append(
          "<tr><th scope=\"row\">%s</th><td>%s</td><td>%s</td><td>%s</td></tr>"
              .formatted(
                  Html.escaped(SAYS.getOrDefault(told.key(), told.key())),
                  held(shown, told.key(), told.again()),
                  held(shown, told.key(), told.onDay()),
                  told.planned()
                      .map(each -> Html.whole(shown.value(told.key(), each)))
                      .orElse("")));
    }
    return html.append(
            "</tbody></table></div><p>Below each value: nine times in ten between these.</p>")
        .append("</section>")
        .toString();
  }

  private static String held(Shown shown, String key, Held held) {
    String range = shown.range(key, new Band(held.low(), held.mean(), held.high()));
    return ranged(shown.value(key, held.mean()), range);
  }

  /// On a phone both stay in their column: the range stands below.
  private static String ranged(String middle, String range) {
    return "%s<br><small>%s</small>".formatted(Html.whole(middle), Html.whole(range));
  }

  private static String otherwise(LookedBack back) {
    StringBuilder html =
        new StringBuilder(
            "<section><h2>Not as it was told</h2><p>Something was probably not as it was told, so nothing is learnt from this day: the rig would take the fault for its own. What the day was is not told again either: it would be told as if all had been well.</p><ul>");
    for (LookedBack.Otherwise one : back.otherwise()) {
      html.append(
          "<li>On the way to \u201c%s\u201d: %s</li>"
              .formatted(Html.escaped(one.says()), Html.escaped(one.what().says())));
    }
    return html.append("</ul><p>If you know what it was, note it at the kettle with its time; then")
        .append(" look back again.</p></section>")
        .toString();
  }

  private static String table(List<LearntWords.Line> seen, int readings) {
    StringBuilder html =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "<p>From %d readings. Below each value: nine times in ten between these.</p>",
                readings));
    html.append(
        "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"What the day says of the rig, table\"><table><thead><tr><th scope=\"col\">Number</th><th scope=\"col\">Would be carried on</th><th scope=\"col\">Was held</th><th scope=\"col\">Doubt left</th></tr></thead><tbody>");
    for (LearntWords.Line line : seen) {
      html.append(
          "<tr><th scope=\"row\">%s</th><td>%s</td><td>%s</td><td>%s</td></tr>"
              .formatted(
                  Html.escaped(line.name()),
                  ranged(line.after().middle(), line.after().range()),
                  ranged(line.before().middle(), line.before().range()),
                  Html.whole(line.left())));
    }
    return html.append("</tbody></table></div>").toString();
  }

  private String keep(Map<String, String> onto) {
    if (gyle.practice().isPresent()) {
      return "<p>This was a rehearsal on a hidden rig: nothing of it is carried to yours.</p>";
    }
    if (onto.isEmpty()) {
      return "<p>These numbers are taken, or were changed since; nothing is left to carry.</p>";
    }
    StringBuilder html =
        new StringBuilder(
            "<p>Nothing is changed until you take it. What you changed yourself since the day stays. Each time a number is carried on, its doubt grows by 3 in 100: rigs age.</p>");
    onto.forEach(
        (id, name) ->
            html.append(
                "<p><button type=\"button\" data-onto=\"%s\">Carry them to the rig of \u201c%s\u201d</button></p>"
                    .formatted(Html.escaped(id), Html.escaped(name))));
    return html.append(
            "<p>It can be undone on that page. A new gyle takes its rig from a page that you choose.</p>")
        .toString();
  }
}
