package gylebook.web;

import gylebook.plan.Guard;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Trace;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// The day on one time axis: what to take care of, temperature, level, duty, additions, gravity,
/// hands.
///
/// One pure function from a plan to a drawing and, behind it, a sentence and a table for each
/// strip. Nothing is said by colour alone, and every line is named where it stands.
@AnyUnit("draws every quantity in pixels")
final class DayChart {
  private static final int TITLE = 26;
  private static final int GAP = 14;
  private static final List<String> DOTTED =
      List.of("mashDone", "bagOut", "boilReached", "flameOut", "cast");

  private final Plan plan;
  private final Shown shown;
  private final TimeAxis axis;
  private final StringBuilder svg = new StringBuilder();
  private int y;

  private DayChart(Plan plan, Shown shown) {
    this.plan = plan;
    this.shown = shown;
    this.axis = new TimeAxis(plan.forecast());
  }

  /// The drawing alone.
  static String svg(Plan plan, Shown shown) {
    return new DayChart(plan, shown).drawn();
  }

  /// The drawing and what stands behind each strip, for eyes and for a reader that speaks.
  static String html(Plan plan, Shown shown) {
    return "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"Day chart\">"
        + svg(plan, shown)
        + "</div>"
        + new DayBehind(plan, shown).html();
  }

  private String drawn() {
    guards();
    temperature();
    level();
    duty();
    additions();
    gravity();
    hands();
    int bottom = y;
    String drawing = axis.hours(TITLE, bottom) + svg;
    return ("<svg class=\"day\" viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\">"
            + "<defs><pattern id=\"hatch\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\""
            + " patternTransform=\"rotate(45)\"><line class=\"hatch\" x1=\"0\" x2=\"0\" y1=\"0\""
            + " y2=\"8\"/></pattern></defs>%s</svg>")
        .formatted(TimeAxis.WIDTH, bottom + TITLE, Html.escaped(DayBehind.sentence(plan)), drawing);
  }

  private void title(String says, String explains) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<text class=\"strip\" x=\"%d\" y=\"%d\">%s<tspan class=\"tick\"> %s</tspan></text>",
            TimeAxis.LEFT,
            y + TITLE - 8,
            says,
            Html.escaped(explains)));
    y += TITLE;
  }

  private BandStrip strip(String key, int height, double least, double most) {
    BandStrip strip = new BandStrip(axis, shown, key, y, height, least, most);
    strip.scale();
    y += height + GAP;
    return strip;
  }

  private void guards() {
    if (plan.forecast().guards().isEmpty()) {
      return;
    }
    title("Take care", "where it matters; the plates below say what to do");
    int number = 0;
    for (Guard guard : plan.forecast().guards()) {
      Optional<Milestone> at = plan.forecast().milestone(guard.byWhen());
      if (at.isPresent()) {
        double x = axis.x(at.get().atSec().middle()) + 4;
        int row = number % 2;
        svg.append(Plates.shape(guard.level(), x, y + row * Plates.SIDE, "plate-mark"));
        number++;
      }
    }
    y += 2 * Plates.SIDE + GAP;
  }

  private void temperature() {
    Optional<Trace> wort = axis.trace("wortC");
    if (wort.isEmpty()) {
      return;
    }
    title("Temperature", "line: the middle day; tint: 9 days in 10; thin: single days");
    double most = Math.max(40, 1.06 * BandStrip.highest(wort.get().high(), 100));
    BandStrip strip = strip("wortC", 170, 0, most);
    strip.trace(wort.get(), "temperature");
    Optional<Trace> grain = axis.trace("grainC");
    // Wort and grain run close together; two bands over each other could not be told apart.
    grain.ifPresent(trace -> strip.middle(trace, "temperature grain"));
    named(strip, "doughedIn", 12, "grain: dashed", grain);
    named(strip, "boilReached", -24, "wort", wort);
    svg.append(strip.drawn());
  }

  /// A line's name where it stands at a milestone.
  private void named(
      BandStrip strip, String milestone, int upPx, String says, Optional<Trace> trace) {
    Optional<Milestone> at = plan.forecast().milestone(milestone);
    if (at.isPresent() && trace.isPresent()) {
      double sec = at.get().atSec().middle();
      double value = trace.get().middle()[axis.point(sec + 600, trace.get())];
      if (Double.isFinite(value)) {
        strip.label(sec + 1200, value, upPx, says);
      }
    }
  }

  private void level() {
    Optional<Trace> found = axis.trace("levelM");
    if (found.isEmpty()) {
      return;
    }
    title("Level", "in the kettle, round the bag, above its floor");
    double topM = plan.rig().element().topM().value();
    double highM = Math.max(BandStrip.highest(found.get().high(), topM), 2 * topM);
    double mostM = Math.max(highM, plan.rig().kettle().heightM().value()) * 1.02;
    BandStrip strip = strip("levelM", 120, 0, mostM);
    strip.area(found.get(), "level");
    strip.trace(found.get(), "level");
    strip.limit(plan.rig().kettle().heightM().value(), "rim");
    strip.limit(topM, "top of the element: never below while it heats");
    svg.append(strip.drawn());
  }

  private void duty() {
    Optional<Trace> found = axis.trace("dutyFrac");
    if (found.isEmpty()) {
      return;
    }
    title("Duty", "of the element");
    BandStrip strip = strip("dutyFrac", 56, 0, 1);
    strip.bars(found.get());
    svg.append(strip.drawn());
  }

  private void additions() {
    List<DayMarks.Addition> additions = new DayMarks(plan, shown).additions();
    if (additions.isEmpty()) {
      return;
    }
    title("Additions", "ring: the middle day; line: 9 days in 10");
    DayMarks.Rings rings = new DayMarks.Rings(axis);
    svg.append(rings.drawn(additions, y));
    y += rings.height() + GAP;
  }

  private void gravity() {
    Optional<Trace> found = axis.trace("wortPlato");
    if (found.isEmpty()) {
      return;
    }
    title("Strength", "of the wort in the kettle");
    double most = Math.max(5, 1.15 * BandStrip.highest(found.get().high(), 12));
    BandStrip strip = strip("wortPlato", 110, 0, most);
    strip.trace(found.get(), "gravity");
    for (Milestone milestone : plan.forecast().milestones()) {
      if (DOTTED.contains(milestone.key())) {
        var band = milestone.wortPlato();
        double sec = milestone.atSec().middle();
        strip.dot(sec, band.low(), band.middle(), band.high());
        if (milestone.key().equals("bagOut") || milestone.key().equals("flameOut")) {
          strip.label(sec, band.low(), -24, shown.value("wortPlato", band.middle()));
        }
      }
    }
    svg.append(strip.drawn());
  }

  private void hands() {
    title("Hands", "low block: one pair; high block: two pairs");
    svg.append(DayMarks.blocks(axis, new DayMarks(plan, shown).busy(), y, 28));
    y += 28 + GAP;
  }
}
