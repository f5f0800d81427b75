package gylebook.telling;

import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.plan.Guard;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.List;
import java.util.Locale;

/// A plan as one page to print and pin up: it works when network and power do not.
///
/// The page is whole in itself (no script, nothing fetched), black on white, and well-formed as
/// XML. It fits any paper; the ordinary plan takes two sides of A4 or Letter.
@AnyUnit("shows every quantity of a plan")
public final class WallSheet {
  /// What stays as a margin, in the order of the day. Figures that a rig does not have are left
  /// out.
  private static final List<String> RESERVES =
      List.of(
          "roomAtDoughInM",
          "elementCoverM",
          "roomAtBreakM",
          "suctionMarginM",
          "breakerShareFrac",
          "bagWetKg");

  /// Comes days after the sheet was taken down; what is always said names it, for paper is short.
  private static final String AFTER_THE_DAY = "gasInRoom";

  private final Plan plan;
  private final ReadingUnits units;
  private final Shown shown;
  private final StringBuilder html = new StringBuilder();

  private WallSheet(Plan plan, ReadingUnits units) {
    this.plan = plan;
    this.units = units;
    this.shown = new Shown(units);
  }

  /// The page.
  public static String html(Plan plan, ReadingUnits units) {
    WallSheet sheet = new WallSheet(plan, units);
    sheet.head();
    sheet.weigh();
    sheet.html.append(new SheetDay(plan, sheet.shown).section());
    sheet.off();
    sheet.reserves();
    sheet.guards();
    sheet.foot();
    return sheet.html.append("</body></html>\n").toString();
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  private void head() {
    String name = escaped(plan.recipe().name());
    String invented =
        plan.recipe().invented() || plan.rig().invented() ? " (recipe or rig are invented)" : "";
    html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/>")
        .append("<meta name=\"viewport\" content=\"width=device-width\"/><title>")
        .append(name)
        .append(": wall sheet</title><style>")
        .append(SheetLook.CSS)
        .append("</style></head><body><header><h1>")
        .append(name)
        .append("</h1><p class=\"fill\">Day <i></i> begun at <i></i></p><p>")
        .append(escaped(plan.recipe().wanted()))
        .append(", on ")
        .append(escaped(plan.rig().name() + invented))
        .append("</p>")
        .append(begin())
        .append("</header>\n");
  }

  private String begin() {
    String says = Finish.says(new Planned.Feasible(plan), plan.recipe());
    return says.isEmpty() ? "" : "<p>" + escaped(says) + "</p>";
  }

  private void weigh() {
    html.append("<section class=\"weigh\"><h2>To weigh and measure out</h2><div>");
    List<ToWeigh.Thing> things = ToWeigh.of(plan, units);
    for (ToWeigh.Group group : ToWeigh.Group.values()) {
      List<ToWeigh.Thing> here = things.stream().filter(t -> t.group() == group).toList();
      if (here.isEmpty()) {
        continue;
      }
      html.append("<table><caption>").append(group.words()).append("</caption>");
      for (ToWeigh.Thing thing : here) {
        html.append(
            "<tr><td class=\"tick\"><b></b></td><th>%s</th><td>%s, %s</td></tr>"
                .formatted(
                    escaped(thing.amount()), escaped(thing.name()), escaped(thing.moment())));
      }
      html.append("</table>");
    }
    html.append("</div></section>\n");
  }

  private void off() {
    html.append("<section class=\"whole\"><h2>If you are off</h2><p>")
        .append(escaped(OffBy.CAUTION))
        .append("</p><table class=\"off\"><thead><tr><th>What</th><th>by</th>")
        .append("<th>changes</th><th>holds up to</th></tr></thead><tbody>");
    for (OffBy.Line line : OffBy.of(plan, shown)) {
      html.append(
          "<tr><td>%s</td><th>%s</th><td>%s</td><td>%s</td></tr>"
              .formatted(
                  escaped(line.what()),
                  escaped(line.by()),
                  escaped(String.join("; ", line.then())),
                  escaped(line.within())));
    }
    html.append("</tbody></table></section>\n");
  }

  private void reserves() {
    html.append("<section class=\"whole\"><h2>Reserves and loads</h2><ul class=\"reserves\">");
    Forecast forecast = plan.forecast();
    double spareFrac = 1 - plan.settings().boilDutyFrac();
    html.append(
        "<li>duty to spare in the boil <b>%s</b></li>"
            .formatted(escaped(shown.value("dutyFrac", spareFrac))));
    for (String key : RESERVES) {
      forecast
          .figure(key)
          .filter(figure -> Double.isFinite(figure.band().giveOrTake()))
          .ifPresent(this::reserve);
    }
    html.append("</ul></section>\n");
  }

  private void reserve(Figure figure) {
    html.append(
        "<li>%s <b>%s</b> (%s)</li>"
            .formatted(
                escaped(figure.says()),
                escaped(shown.value(figure.key(), figure.band().middle())),
                escaped(shown.range(figure.key(), figure.band()).replaceAll(" [^0-9]+$", ""))));
  }

  /// What is no matter of luck has no odds, and paper is short.
  private static String odds(Guard guard) {
    return guard.chanceFrac() < 1 ? Shown.odds(guard.chanceFrac()) + ". " : "";
  }

  private void guards() {
    html.append("<section><h2>Take care</h2>");
    for (Guard guard : plan.forecast().guards()) {
      if (guard.key().equals(AFTER_THE_DAY)) {
        continue;
      }
      html.append(
          ("<div class=\"guard %s\"><b>%s</b><p>%s <strong>%s</strong>"
                  + " <span>%sAt %s.</span> %s</p></div>")
              .formatted(
                  guard.level().name().toLowerCase(Locale.ROOT),
                  guard.level(),
                  escaped(shown.sentence(guard.what())),
                  escaped(guard.doThis()),
                  escaped(odds(guard)),
                  escaped(GuardWords.moment(plan.forecast(), guard)),
                  escaped(guard.caution())));
    }
    html.append("<ul class=\"always\">");
    for (String caution : SheetLook.ALWAYS) {
      html.append("<li>").append(escaped(caution)).append("</li>");
    }
    html.append("</ul></section>\n");
  }

  private void foot() {
    html.append("<section><p class=\"lines\">Notes<i></i><i></i></p></section>")
        .append("<footer><p>")
        .append(
            escaped(
                "From "
                    + plan.forecast().days()
                    + " simulated days; 9 in 10 lie within what is given; believe the"
                    + " kettle. Gylebook advises; it never switches"
                    + " anything. Follow your local code; wiring, gas and pressure are work for"
                    + " licensed people."))
        .append("</p></footer>");
  }
}
