package gylebook.web;

import gylebook.brewday.Followed;
import gylebook.estimate.LiveGuard;
import gylebook.telling.Shown;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/// What goes wrong at the kettle now or soon, as plates: what, do this, by when.
final class LivePlates {
  private static final double MS_PER_SEC = 1000;

  private final Shown shown;
  private final Instant began;

  LivePlates(Shown shown, Instant began) {
    this.shown = shown;
    this.began = began;
  }

  /// All of them, the loudest first; a calm word when there are none.
  String html(Followed day) {
    StringBuilder html =
        new StringBuilder("<section class=\"guards\" aria-label=\"What goes wrong\">");
    if (day.guards().isEmpty() && day.underWay()) {
      html.append("<p class=\"calm\">Nothing is wrong as far as can be told from the notes.</p>");
    }
    day.guards().forEach(guard -> html.append(plate(guard, day.clockSec())));
    return html.append("</section>").toString();
  }

  private String plate(LiveGuard guard, double clockSec) {
    String level = guard.level().name();
    return "<article class=\"plate %s\" data-guard=\"%s\" data-level=\"%s\"><h2>%s %s %s</h2><p>%s</p><p class=\"do\"><b>Do this:</b> %s <b>By when:</b> %s</p><p>Why: %s</p><p class=\"caution\">%s</p></article>"
        .formatted(
            level.toLowerCase(Locale.ROOT),
            guard.kind(),
            level,
            Plates.sign(guard.level()),
            level,
            Html.escaped(guard.kind().says()),
            Html.escaped(seen(guard)),
            Html.escaped(guard.kind().doThis()),
            by(guard, clockSec),
            Html.escaped(guard.kind().cause()),
            Html.escaped(guard.kind().caution()));
  }

  private String seen(LiveGuard guard) {
    return shown.sentence(guard.what()) + ".";
  }

  private Instant at(LiveGuard guard) {
    return began.plusMillis(Math.round(guard.bySec() * MS_PER_SEC));
  }

  private String by(LiveGuard guard, double clockSec) {
    return guard.bySec() <= clockSec
        ? "now"
        : "<time datetime=\"%s\">%s after the start</time>"
            .formatted(at(guard), Shown.clock(guard.bySec()).strip());
  }

  /// The same as data.
  Map<String, Object> told(LiveGuard guard) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("kind", guard.kind().name());
    told.put("level", guard.level().name());
    told.put("says", guard.kind().says());
    told.put("seen", seen(guard));
    told.put("doThis", guard.kind().doThis());
    told.put("by", at(guard).toString());
    told.put("cause", guard.kind().cause());
    told.put("caution", guard.kind().caution());
    return told;
  }
}
