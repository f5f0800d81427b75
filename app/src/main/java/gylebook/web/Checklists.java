package gylebook.web;

import gylebook.brewday.Followed;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.simulate.Outcome;
import gylebook.telling.Shown;
import java.util.List;
import java.util.stream.IntStream;

/// Four short lists, each before something that cannot be taken back. They block nothing.
final class Checklists {
  // The two points before a lift or a knock-out are when one gets ready for it.
  private static final int READY_BEFORE = 2;

  private final Shown shown;
  private final Plan plan;

  Checklists(Shown shown, Plan plan) {
    this.shown = shown;
    this.plan = plan;
  }

  /// Before anything is heated.
  static String heat() {
    return list(
        "Before heat",
        List.of(
            "The element is covered by liquor, the valve is closed.",
            "The socket is earthed and behind a residual-current device, tried today; cable and"
                + " floor are dry. Nobody reaches into the kettle while the element is on.",
            "Hoses are clamped. Nobody small and no animal is near.",
            "Gloves, long sleeves, closed shoes. Cold water within reach for a scald.",
            "This screen makes a sound when something is due:"));
  }

  /// What is to be looked at soon, by what is under way; then the list for who has to leave.
  String of(Followed day) {
    String soon = "";
    if (near(day.leg(), "bagOut")) {
      soon = list("Before the lift", lift());
    } else if (near(day.leg(), "knockOut")) {
      soon = list("Before knock-out", knockOut());
    }
    return soon + "<details><summary>Before you walk away</summary>" + away(day) + "</details>";
  }

  private boolean near(String leg, String milestone) {
    List<String> keys = plan.forecast().milestones().stream().map(Milestone::key).toList();
    int at = keys.indexOf(milestone);
    return at >= 0
        && IntStream.rangeClosed(Math.max(0, at - READY_BEFORE + 1), at)
            .anyMatch(i -> keys.get(i).equals(leg));
  }

  private List<String> lift() {
    return List.of(
        "Heater at zero, pump off, valve closed.",
        "The full bag weighs about "
            + figure(Outcome.BAG_WET)
            + ": hoist, hook and knot are looked at, or two people lift. Nobody stands under it.",
        "What it is set down on stands ready, bears it, and catches the drops.",
        "Gloves and long sleeves: the wort that runs out scalds.");
  }

  private List<String> knockOut() {
    return List.of(
        "Heater off; nothing rolls in the kettle any more.",
        "Cold water runs through the chiller and its hose is fixed. What leaves first is hot enough"
            + " to scald and may be too hot for a plastic drain.",
        "Fermenter, hose, valve and whatever the cold wort touches are sanitised (mind the"
            + " cleaner's own cautions, and never mix two).",
        "The fermenter stands where it stays: "
            + figure(Outcome.FERMENTER)
            + " of wort are not carried.",
        "Yeast, airlock and thermometer are at hand.");
  }

  private String away(Followed day) {
    String hands =
        day.coming().stream()
            .filter(coming -> coming.hands() > 0)
            .findFirst()
            .map(
                coming ->
                    "Hands are needed "
                        + Shown.clock(Math.max(0, coming.atSec().low() - day.clockSec())).strip()
                        + " h from now at the earliest: "
                        + (coming.doing().isEmpty() ? coming.says() : coming.doing())
                        + ".")
            .orElse("Nothing needs hands any more.");
    return list(
        "",
        List.of(
            hands,
            "A boil and a ramp to it are never left; the heater is at zero or held by a controller"
                + " that has its probe in moving wort.",
            "Nothing drips; the pump runs freely or is off; the lid is as it should be.",
            "No child and no animal gets in. Somebody knows how to switch it all off.",
            "This device is loud enough, or goes with you."));
  }

  private String figure(Outcome outcome) {
    return plan.forecast()
        .figure(outcome.key())
        .map(figure -> shown.value(outcome.key(), figure.band().middle()))
        .orElse("");
  }

  private static String list(String heading, List<String> items) {
    StringBuilder html = new StringBuilder("<div class=\"checks\">");
    if (!heading.isEmpty()) {
      html.append("<h2>").append(Html.escaped(heading)).append("</h2>");
    }
    html.append("<ul class=\"checklist\">");
    for (String item : items) {
      html.append("<li><label><input type=\"checkbox\"> ")
          .append(Html.escaped(item))
          .append("</label></li>");
    }
    return html.append("</ul></div>").toString();
  }
}
