package gylebook.web;

import gylebook.plan.Band;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// What happens at a moment: additions, and where hands are needed.
@AnyUnit("moments of the day and amounts of every quantity")
final class DayMarks {
  private final Plan plan;
  private final Shown shown;

  DayMarks(Plan plan, Shown shown) {
    this.plan = plan;
    this.shown = shown;
  }

  /// One addition.
  ///
  /// @param name of what goes in
  /// @param amount in the reader's units
  /// @param milestone at which it goes in
  record Addition(String name, String amount, Milestone milestone) {
    Band atSec() {
      return milestone.atSec();
    }
  }

  /// A stretch in which hands are needed.
  ///
  /// @param fromSec from when
  /// @param toSec until when
  /// @param milestone whose hands they are
  record Busy(double fromSec, double toSec, Milestone milestone) {}

  /// Everything that goes in on the hot day, in the order of the day.
  List<Addition> additions() {
    List<Addition> found = new ArrayList<>();
    for (Liquor.Addition salt : plan.recipe().liquor().additions()) {
      String key = salt.into() == Liquor.Into.MASH ? "liquorIn" : "boilReached";
      add(found, salt.name(), shown.amount(salt.amountNumber()), key);
    }
    for (Goods line : plan.recipe().grist()) {
      boolean mashed = line.kind().mashed() || line.use() == Goods.Use.MASH;
      if (mashed || line.use() == Goods.Use.BOIL) {
        add(found, line.name(), shown.amount(line.massKg()), mashed ? "doughedIn" : "sugarIn");
      }
    }
    List<Hop> hops = plan.recipe().hops();
    for (int i = 0; i < hops.size(); i++) {
      Hop hop = hops.get(i);
      add(found, hop.name(), shown.amount(hop.massG()), key(hop.when(), "hop." + i));
    }
    for (Other other : plan.recipe().others()) {
      add(found, other.name(), shown.amount(other.amountNumber()), key(other.when(), "flameOut"));
    }
    found.sort(Comparator.comparingDouble((Addition one) -> one.atSec().middle()));
    return found;
  }

  private void add(List<Addition> found, String name, String amount, String key) {
    at(key).ifPresent(milestone -> found.add(new Addition(name, amount, milestone)));
  }

  private Optional<Milestone> at(String key) {
    return plan.forecast().milestone(key);
  }

  /// The milestone of a moment; the boil has one for each addition of hops.
  private String key(Hop.When when, String inBoil) {
    return switch (when) {
      case Hop.When.InMash _ -> "doughedIn";
      case Hop.When.FirstWort _ -> "bagOut";
      case Hop.When.InBoil _ -> inBoil;
      case Hop.When.FlameOut _ -> "flameOut";
      case Hop.When.AtStand at -> standKey(at.standNumber());
      case Hop.When.Dry _ -> "";
    };
  }

  /// A stand at the boil has no cooling before it: its hops go in when the heat goes off.
  private String standKey(int number) {
    String cooled = "standAt." + number;
    return at(cooled).isPresent() ? cooled : number == 0 ? "flameOut" : "stood." + (number - 1);
  }

  /// Where hands are needed. Pouring and lifting end at their milestone, all else begins there.
  List<Busy> busy() {
    List<Busy> found = new ArrayList<>();
    List<Milestone> day = plan.forecast().milestones();
    for (int i = 0; i < day.size(); i++) {
      Milestone milestone = day.get(i);
      if (milestone.hands() == 0) {
        continue;
      }
      double atSec = milestone.atSec().middle();
      boolean before = milestone.key().equals("doughedIn") || milestone.key().equals("bagOut");
      double fromSec = before && i > 0 ? day.get(i - 1).atSec().middle() : atSec;
      found.add(new Busy(fromSec, atSec, milestone));
    }
    return found;
  }

  /// Rings with names, in as many rows as keep the names apart.
  static final class Rings {
    private static final int ROW = 24;
    private static final double CHARACTER = 8.6;
    private static final double NEAR = 5;

    private final TimeAxis axis;
    private final List<Double> ends = new ArrayList<>();
    private final StringBuilder svg = new StringBuilder();

    Rings(TimeAxis axis) {
      this.axis = axis;
    }

    /// Draws them from a height down; what stands at one moment shares a ring.
    String drawn(List<Addition> additions, int top) {
      int i = 0;
      while (i < additions.size()) {
        Addition first = additions.get(i);
        double x = axis.x(first.atSec().middle());
        List<String> names = new ArrayList<>();
        while (i < additions.size() && axis.x(additions.get(i).atSec().middle()) - x < NEAR) {
          names.add(additions.get(i).name());
          i++;
        }
        String amount = names.size() == 1 ? first.amount() + " " : "";
        ring(first, amount + String.join(", ", names.stream().distinct().toList()), top);
      }
      return svg.toString();
    }

    int height() {
      return Math.max(1, ends.size()) * ROW;
    }

    private void ring(Addition first, String says, int top) {
      double x = axis.x(first.atSec().middle());
      double lowX = Math.min(x - 8, axis.x(first.atSec().low()));
      double highX = Math.max(x + 8, axis.x(first.atSec().high()));
      double width = says.length() * CHARACTER + 8;
      boolean left = highX + width > TimeAxis.RIGHT && lowX - width > TimeAxis.LEFT;
      int row = row(left ? lowX - width : lowX, left ? highX : highX + width);
      double y = top + row * ROW + ROW / 2.0;
      svg.append(
          String.format(
              Locale.ROOT,
              "<g class=\"addition\"><line class=\"whisker\" x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\""
                  + " y2=\"%.1f\"/><circle class=\"ring\" cx=\"%.1f\" cy=\"%.1f\" r=\"7\"/></g>"
                  + "<text class=\"label\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>",
              axis.x(first.atSec().low()),
              axis.x(first.atSec().high()),
              y,
              y,
              x,
              y,
              left ? lowX - 6 : highX + 6,
              y + 5,
              left ? "end" : "start",
              Html.escaped(says)));
    }

    private int row(double from, double to) {
      for (int i = 0; i < ends.size(); i++) {
        if (ends.get(i) < from) {
          ends.set(i, to);
          return i;
        }
      }
      ends.add(to);
      return ends.size() - 1;
    }
  }

  /// Blocks: half as high for one pair of hands, full for two.
  static String blocks(TimeAxis axis, List<Busy> busy, int top, int height) {
    StringBuilder svg = new StringBuilder();
    for (Busy one : busy) {
      boolean both = one.milestone().hands() > 1;
      double x = axis.x(one.fromSec());
      double width = Math.max(8, axis.x(one.toSec()) - x);
      int high = both ? height : height / 2;
      svg.append(
          String.format(
              Locale.ROOT,
              "<rect class=\"%s\" x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\"><title>%s"
                  + "</title></rect>",
              both ? "hands two" : "hands",
              x,
              top + height - high,
              width,
              high,
              Html.escaped(Shown.clock(one.fromSec()) + " " + one.milestone().doing())));
    }
    return svg.toString();
  }
}
