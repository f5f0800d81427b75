package gylebook.telling;

import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import gylebook.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/// New lines of a recipe, each said in one go: "20 g Goldings at 15 min".
@AnyUnit("amounts of every quantity, as typed")
final class Lines {
  private static final Pattern AMOUNT =
      Pattern.compile(
          "([0-9\u00bd\u00bc\u00be][^\\s]*(?:\\s+(?:kg|g|mg|lb|lbs|oz|L|l|mL|ml|tsp|packets?|packs?))*)\\s+(?:of\\s+)?(.+)");
  private static final Pattern ALPHA =
      Pattern.compile("^(.*?)\\s+([0-9]+(?:[.,][0-9]+)?)\\s*%(.*)$");
  private static final Pattern WHEN =
      Pattern.compile(
          "^(.*?)\\s+((?:at|with|in|when|first wort|first-wort|flame-?out|dry|stand)\\b.*)$",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern HELD =
      Pattern.compile("(?:at )?(.+?) for (.+)", Pattern.CASE_INSENSITIVE);

  /// Alpha acid of a hop nobody gave it for: a middling variety, our judgement.
  private static final double USUAL_ALPHA_PERCENT = 6;

  private final Recipe recipe;
  private final ReadingUnits units;

  Lines(Recipe recipe, ReadingUnits units) {
    this.recipe = recipe;
    this.units = units;
  }

  /// What each list is called and how a line of it is said.
  static final Map<String, String> EXAMPLES =
      Map.of(
          "grist", "4 kg pale malt",
          "hops", "20 g Goldings 5.5 % at 15 min",
          "rests", "66 C for 60 min",
          "stands", "80 C for 25 min",
          "others", "5 g Irish moss at 10 min",
          "liquor.additions", "6 g gypsum in the mash");

  Recipe added(String list, String text) {
    Object line =
        switch (list) {
          case "grist" -> goods(text);
          case "hops" -> hop(text);
          case "rests" -> new Rest("", held(text, list)[0], held(text, list)[1]);
          case "stands" -> new Stand(held(text, list)[0], held(text, list)[1]);
          case "others" -> other(text);
          case "liquor.additions" -> salt(text);
          default -> throw new IllegalArgumentException("There is no list '" + list + "'.");
        };
    return Component.longer(recipe, list, line);
  }

  private static Unfit unlike(String list) {
    return new Unfit(
        "This is not a line that can be added.", "Say it like: " + EXAMPLES.get(list) + ".");
  }

  private String[] split(String text, String list) {
    Matcher matcher = AMOUNT.matcher(Amounts.clean(text));
    if (!matcher.matches()) {
      throw unlike(list);
    }
    return new String[] {matcher.group(1), matcher.group(2)};
  }

  private Goods goods(String text) {
    String[] said = split(text, "grist");
    Entered mass = Amounts.read(said[0], units.unit(Quantity.MASS), "massKg");
    Goods.Kind kind = kind(said[1].toLowerCase(Locale.ROOT));
    Goods.Use use = kind.mashed() ? Goods.Use.MASH : Goods.Use.BOIL;
    Analysis usual = kind.usual();
    return new Goods(said[1], "", kind, mass, usual, use);
  }

  /// What a name says of the kind of goods; a malt of no other name is a base malt.
  private static Goods.Kind kind(String name) {
    record Sign(String word, Goods.Kind kind) {}
    return Stream.of(
            new Sign("dry malt extract", Goods.Kind.DRY_EXTRACT),
            new Sign("dried malt extract", Goods.Kind.DRY_EXTRACT),
            new Sign("extract", Goods.Kind.LIQUID_EXTRACT),
            new Sign("sugar", Goods.Kind.SUGAR),
            new Sign("honey", Goods.Kind.SUGAR),
            new Sign("syrup", Goods.Kind.SUGAR),
            new Sign("flaked", Goods.Kind.FLAKED),
            new Sign("oats", Goods.Kind.FLAKED),
            new Sign("crystal", Goods.Kind.CARAMEL_MALT),
            new Sign("caramel", Goods.Kind.CARAMEL_MALT),
            new Sign("black", Goods.Kind.ROASTED),
            new Sign("chocolate", Goods.Kind.ROASTED),
            new Sign("roast", Goods.Kind.ROASTED),
            new Sign("raw", Goods.Kind.OTHER_GRAIN))
        .filter(sign -> name.contains(sign.word()))
        .map(Sign::kind)
        .findFirst()
        .orElse(Goods.Kind.BASE_MALT);
  }

  private Hop hop(String text) {
    String[] said = split(text, "hops");
    Entered mass = Amounts.read(said[0], units.unit(Quantity.SMALL_MASS), "massG");
    String rest = said[1];
    String alpha = USUAL_ALPHA_PERCENT + " %";
    Matcher stated = ALPHA.matcher(rest);
    if (stated.matches()) {
      alpha = stated.group(2) + " %";
      rest = (stated.group(1) + " " + stated.group(3)).strip();
    }
    Matcher when = WHEN.matcher(rest);
    if (!when.matches()) {
      throw unlike("hops");
    }
    Entered alphaFrac = Amounts.read(alpha, units.unit(Quantity.SHARE), "alphaFrac");
    return new Hop(
        when.group(1).strip(), "", Hop.Form.PELLET, mass, alphaFrac, moment(when.group(2)));
  }

  private Hop.When moment(String text) {
    return new Moment(recipe, units).read(text);
  }

  private Entered[] held(String text, String list) {
    Matcher held = HELD.matcher(Amounts.clean(text));
    if (!held.matches()) {
      throw unlike(list);
    }
    return new Entered[] {
      Amounts.read(held.group(1), units.unit(Quantity.TEMPERATURE), "targetC"),
      Amounts.read(held.group(2), units.unit(Quantity.TIME), "holdSec")
    };
  }

  private Other other(String text) {
    String[] said = split(text, "others");
    Matcher when = WHEN.matcher(said[1]);
    if (!when.matches()) {
      throw unlike("others");
    }
    return new Other(when.group(1).strip(), "", anyAmount(said[0]), moment(when.group(2)));
  }

  /// A mass, a volume or a count, whichever the words say.
  private Entered anyAmount(String text) {
    for (Quantity quantity : List.of(Quantity.SMALL_MASS, Quantity.VOLUME)) {
      if (Character.isLetter(text.charAt(text.length() - 1))
          && Typed.parse(text, quantity) instanceof Typed.Read(Entered entered)) {
        return entered;
      }
    }
    String count = text.replaceAll("\\s*(packets?|packs?)$", "");
    return Amounts.read(count, Unit.known(Quantity.NUMBER, Quantity.NUMBER.inside().symbol()), "");
  }

  private Liquor.Addition salt(String text) {
    String[] said = split(text, "liquor.additions");
    String name = said[1];
    Liquor.Into into = Liquor.Into.MASH;
    for (Liquor.Into place : Liquor.Into.values()) {
      String ending = " in the " + place.name().toLowerCase(Locale.ROOT);
      if (name.toLowerCase(Locale.ROOT).endsWith(ending)) {
        into = place;
        name = name.substring(0, name.length() - ending.length());
      }
    }
    return new Liquor.Addition(name.strip(), agent(name), anyAmount(said[0]), into);
  }

  private static Liquor.Agent agent(String name) {
    String said = name.strip().toLowerCase(Locale.ROOT);
    Optional<Liquor.Agent> whole =
        Stream.of(Liquor.Agent.values())
            .filter(agent -> agent.words().toLowerCase(Locale.ROOT).equals(said))
            .findFirst();
    if (whole.isPresent()) {
      return whole.get();
    }
    return switch (said) {
      case "calcium chloride" -> Liquor.Agent.CALCIUM_CHLORIDE_DIHYDRATE;
      case "magnesium chloride" -> Liquor.Agent.MAGNESIUM_CHLORIDE;
      case "lime" -> Liquor.Agent.SLAKED_LIME;
      default -> Liquor.Agent.UNKNOWN;
    };
  }
}
