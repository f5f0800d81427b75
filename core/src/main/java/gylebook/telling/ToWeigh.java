package gylebook.telling;

import gylebook.plan.Plan;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Yeast;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// Everything to weigh and measure out before the day begins, each with the moment it goes in.
@AnyUnit("shows amounts of every quantity")
public final class ToWeigh {
  private final ReadingUnits units;
  private final Plan plan;
  private final List<Thing> things = new ArrayList<>();

  private ToWeigh(Plan plan, ReadingUnits units) {
    this.plan = plan;
    this.units = units;
  }

  /// What a thing is.
  public enum Group {
    LIQUOR("Liquor and salts"),
    GRIST("Grist"),
    CUPS("Hops and the rest, a cup each"),
    YEAST("Yeast");

    private final String words;

    Group(String words) {
      this.words = words;
    }

    /// The same in words.
    public String words() {
      return words;
    }
  }

  /// One thing.
  ///
  /// @param group what it is
  /// @param amount as the reader weighs or measures it
  /// @param name what the packet says
  /// @param moment when it goes in
  public record Thing(Group group, String amount, String name, String moment) {}

  /// The things of a plan, group by group, within a group in the order of use.
  public static List<Thing> of(Plan plan, ReadingUnits units) {
    ToWeigh weighed = new ToWeigh(plan, units);
    Recipe recipe = plan.recipe();
    weighed.liquor(recipe.liquor());
    recipe.grist().forEach(weighed::goods);
    weighed.cups(recipe);
    weighed.yeast(recipe.yeast());
    return weighed.things;
  }

  private void add(Group group, String amount, String name, String moment) {
    things.add(new Thing(group, amount, name, moment));
  }

  private String amount(Entered entered) {
    return new Shown(units).amount(entered);
  }

  /// On the small scales, whichever scales the recipe names; a kilogram and more is left as it is.
  private String small(Entered entered) {
    boolean small = entered.unit().quantity() == Quantity.MASS && entered.inside() < 1;
    return small ? Amounts.shownSmall(entered, units) : amount(entered);
  }

  private void liquor(Liquor liquor) {
    String cold = units.shown(Quantity.VOLUME, plan.settings().liquorL());
    add(Group.LIQUOR, cold, liquor.name(), "cold, into the kettle");
    if (plan.settings().topUpL() > 0) {
      String kept = units.shown(Quantity.VOLUME, plan.settings().topUpL());
      add(Group.LIQUOR, kept, liquor.name(), "kept by, cold, for after the bag");
    }
    for (Liquor.Addition addition : liquor.additions()) {
      String moment =
          addition.into() == Liquor.Into.MASH ? "into the liquor" : "into the kettle, for the boil";
      add(Group.LIQUOR, small(addition.amountNumber()), addition.name(), moment);
    }
  }

  private void goods(Goods line) {
    add(Group.GRIST, amount(line.massKg()), named(line.name(), line.lot()), line.use().words());
  }

  private static String named(String name, String lot) {
    return lot.isEmpty() ? name : name + ", lot " + lot;
  }

  /// A cup, and how late in the day it is used.
  private record Cup(double lateNumber, Thing thing) {}

  private void cups(Recipe recipe) {
    List<Cup> cups = new ArrayList<>();
    for (Hop hop : recipe.hops()) {
      String name = named(hop.name(), hop.lot());
      Thing thing = new Thing(Group.CUPS, amount(hop.massG()), name, moment(hop.when(), recipe));
      cups.add(new Cup(late(hop.when()), thing));
    }
    for (Other other : recipe.others()) {
      Thing thing =
          new Thing(
              Group.CUPS, small(other.amountNumber()), other.name(), moment(other.when(), recipe));
      cups.add(new Cup(late(other.when()), thing));
    }
    cups.sort(Comparator.comparingDouble(Cup::lateNumber));
    cups.forEach(cup -> things.add(cup.thing()));
  }

  /// Any number that sorts the moments as the day does.
  private static double late(Hop.When when) {
    return switch (when) {
      case Hop.When.InMash _ -> -3e9;
      case Hop.When.FirstWort _ -> -2e9;
      case Hop.When.InBoil boil -> -boil.leftSec().inside();
      case Hop.When.FlameOut _ -> 1;
      case Hop.When.AtStand at -> 2.0 + at.standNumber();
      case Hop.When.Dry dry -> 1e9 + dry.afterSec().inside();
    };
  }

  private String moment(Hop.When when, Recipe recipe) {
    return switch (when) {
      case Hop.When.InMash _ -> "with the malt";
      case Hop.When.FirstWort _ -> "when the bag is out";
      case Hop.When.InBoil boil -> "with " + amount(boil.leftSec()) + " of the boil left";
      case Hop.When.FlameOut _ -> "when the heat goes off";
      case Hop.When.AtStand at ->
          "after the boil, at " + amount(recipe.stands().get(at.standNumber()).targetC());
      case Hop.When.Dry dry -> "in the fermenter after " + amount(dry.afterSec());
    };
  }

  private void yeast(Yeast yeast) {
    add(
        Group.YEAST,
        small(yeast.amountNumber()),
        yeast.name(),
        "into wort at " + amount(yeast.pitchC()));
  }
}
