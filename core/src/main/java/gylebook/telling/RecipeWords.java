package gylebook.telling;

import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.List;

/// A recipe as plain sentences, in the brewer's units.
@AnyUnit("shows amounts of every quantity")
public final class RecipeWords {
  private final ReadingUnits units;

  private RecipeWords(ReadingUnits units) {
    this.units = units;
  }

  /// One thing of the recipe, and what is said of it.
  ///
  /// @param heading grist, hops ...
  /// @param text one or more sentences
  public record Part(String heading, String text) {}

  /// The recipe in parts.
  public static List<Part> of(Recipe recipe, ReadingUnits units) {
    return new RecipeWords(units).parts(recipe);
  }

  private List<Part> parts(Recipe recipe) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("Beer", beer(recipe)));
    parts.add(new Part("Grist", grist(recipe) + " " + rests(recipe)));
    parts.add(new Part("Hops", hops(recipe)));
    parts.add(new Part("Liquor", liquor(recipe.liquor())));
    parts.add(new Part("Yeast", yeast(recipe)));
    return parts;
  }

  private String amount(Entered entered) {
    return units.shown(entered.unit().quantity(), entered.inside());
  }

  private String beer(Recipe recipe) {
    StringBuilder text =
        new StringBuilder("Make " + amount(recipe.aim().lengthL()) + " of a " + recipe.wanted())
            .append(", measured " + recipe.aim().into().words());
    recipe.aim().strengthPlato().ifPresent(s -> text.append(", at ").append(amount(s)));
    recipe
        .aim()
        .bitternessMgPerL()
        .ifPresent(b -> text.append(", bitterness about ").append(Math.round(b.inside())));
    return text.append(".").toString();
  }

  private String grist(Recipe recipe) {
    List<String> lines = new ArrayList<>();
    for (Goods line : recipe.grist()) {
      String where = line.use() == Goods.Use.MASH ? "" : " " + line.use().words();
      lines.add(amount(line.massKg()) + " of " + line.name() + where);
    }
    if (lines.isEmpty()) {
      return "No malt yet.";
    }
    String scaled = recipe.aim().strengthPlato().isPresent() ? ", scaled to the strength." : ".";
    return "Use " + joined(lines) + scaled;
  }

  private String rests(Recipe recipe) {
    List<String> lines = new ArrayList<>();
    for (Rest rest : recipe.rests()) {
      lines.add(amount(rest.targetC()) + " for " + amount(rest.holdSec()));
    }
    return lines.isEmpty() ? "" : "Mash at " + String.join(", then ", lines) + ".";
  }

  private String hops(Recipe recipe) {
    List<String> lines = new ArrayList<>();
    for (Hop hop : recipe.hops()) {
      lines.add(amount(hop.massG()) + " " + hop.name() + " " + when(hop.when(), recipe.stands()));
    }
    String boil = "Boil for " + amount(recipe.boil().holdSec()) + ".";
    return lines.isEmpty() ? boil : sentence(joined(lines)) + " " + boil;
  }

  private String when(Hop.When when, List<Stand> stands) {
    return switch (when) {
      case Hop.When.InMash _ -> "in the mash";
      case Hop.When.FirstWort _ -> "when the bag is out";
      case Hop.When.InBoil boil -> "with " + amount(boil.leftSec()) + " of the boil left";
      case Hop.When.FlameOut _ -> "when the heat goes off";
      case Hop.When.AtStand at -> {
        Stand stand = stands.get(at.standNumber());
        yield "when it has cooled to "
            + amount(stand.targetC())
            + ", for "
            + amount(stand.holdSec());
      }
      case Hop.When.Dry dry -> "in the fermenter after " + amount(dry.afterSec());
    };
  }

  private String liquor(Liquor liquor) {
    List<String> lines = new ArrayList<>();
    for (Liquor.Addition addition : liquor.additions()) {
      lines.add(amount(addition.amountNumber()) + " " + addition.name());
    }
    String with = lines.isEmpty() ? "" : ", with " + joined(lines);
    return sentence(liquor.name() + with);
  }

  private String yeast(Recipe recipe) {
    return sentence(recipe.yeast().name() + ", pitched at " + amount(recipe.yeast().pitchC()));
  }

  private static String sentence(String words) {
    return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }

  private static String joined(List<String> lines) {
    if (lines.size() < 2) {
      return String.join("", lines);
    }
    return String.join(", ", lines.subList(0, lines.size() - 1)) + " and " + lines.getLast();
  }
}
