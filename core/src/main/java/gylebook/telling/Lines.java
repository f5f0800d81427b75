package gylebook.telling;

import gylebook.recipe.Ferment;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Component;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// New lines of a recipe, each said in one go: "20 g Goldings at 15 min".
@AnyUnit("amounts of every quantity, as typed")
final class Lines {
  private static final int MOST_CHARACTERS = 200;

  private static final Pattern ALPHA =
      pattern("[ ,]+\\(?([0-9]{1,3}(?:[.,][0-9]{1,3})?) ?%(?: alpha(?: acids?)?)?\\)?");
  private static final Pattern WHEN =
      pattern(
          "^(.*?) ((?:at|with|in|when|for|after|before|boiled|as a|first[- ]wort|flame-?out|dry|"
              + "stand)\\b.*)$");
  private static final Pattern DRY = pattern("^dry[- ]hop(?:ped)?(?: with)? ");
  private static final Pattern HELD =
      pattern("(?:(\\p{L}[\\p{L} -]*?)(?: at|,|:) )?(?:at )?(.+?) for (.+)");
  private static final Pattern RAMPED =
      pattern(
          "^(.+?),? (?:reached|heated|heated up|risen|rising) (?:in|over) (.+?)(?:,? (for .+))?$");
  private static final Pattern STEP =
      pattern(
          "(?:(\\p{L}[\\p{L} -]*?)(?: at|,|:) )?(?:from |at )?([^ ].*?)(?: to (.+?))?"
              + " (?:over|for) (.+?)(,? (?:free|rising).*)?");
  private static final Pattern FORM = pattern("^(.+?),? (?:whole )?(leaf|pellets?|plugs?)$");

  /// Alpha acid of a hop nobody gave it for: a middling variety, our judgement.
  private static final double USUAL_ALPHA_PERCENT = 6;

  /// What each list is called and how a line of it is said.
  static final Map<String, String> EXAMPLES =
      Map.of(
          "grist", "4 kg pale malt",
          "hops", "20 g Goldings 5.5 % at 15 min",
          "rests", "66 C for 60 min",
          "stands", "80 C for 25 min",
          "others", "5 g Irish moss at 10 min",
          "liquor.additions", "6 g gypsum in the mash",
          "ferment.steps", "18 C to 21 C over 10 d");

  private final Recipe recipe;
  private final ReadingUnits units;

  Lines(Recipe recipe, ReadingUnits units) {
    this.recipe = recipe;
    this.units = units;
  }

  private static Pattern pattern(String regex) {
    return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /// The recipe with one more line.
  ///
  /// @throws Unfit when the words are no such line
  Recipe added(String list, String typed) {
    String text = Amounts.clean(typed).replaceAll("\\s+", " ").replaceFirst("^(?i:add|use) ", "");
    if (text.length() > MOST_CHARACTERS) {
      throw unlike(list);
    }
    return switch (list) {
      case "grist" -> Component.longer(recipe, list, goods(text));
      case "hops" -> hop(text);
      case "rests" -> rest(text);
      case "stands" -> Stands.with(recipe, stand(text));
      case "others" -> other(text);
      case "liquor.additions" -> Component.longer(recipe, list, salt(text));
      case "ferment.steps" -> Component.longer(recipe, list, step(text));
      default -> throw new IllegalArgumentException("There is no list '" + list + "'.");
    };
  }

  private static Unfit unlike(String list) {
    return new Unfit(
        "This is not a line that can be added.", "Say it like: " + EXAMPLES.get(list) + ".");
  }

  private Goods goods(String text) {
    Weighed said = Weighed.mass(text, units.unit(Quantity.MASS), "grist");
    String name = said.name();
    GoodsWords words = new GoodsWords(name, units);
    return words.goods(said.amount());
  }

  private Recipe hop(String text) {
    boolean dry = DRY.matcher(text).find();
    Weighed said =
        Weighed.mass(DRY.matcher(text).replaceFirst(""), units.unit(Quantity.SMALL_MASS), "hops");
    String rest = said.name();
    String alpha = "";
    Matcher stated = ALPHA.matcher(rest);
    if (stated.find()) {
      alpha = stated.group(1) + " %";
      rest = rest.substring(0, stated.start()) + rest.substring(stated.end());
    }
    Matcher when = WHEN.matcher(rest);
    if (!when.matches() && !dry) {
      throw new Unfit("It is not said when this goes in.", "Say it like: " + EXAMPLES.get("hops"));
    }
    String name = when.matches() ? when.group(1).strip() : rest.strip();
    String moment = when.matches() ? when.group(2) : "";
    boolean bare = dry && !moment.toLowerCase(Locale.ROOT).startsWith("dry");
    Moment.Said at = new Moment(recipe, units).read((bare ? "dry " + moment : moment).strip());
    return Component.longer(at.recipe(), "hops", hop(name, alpha, said.amount(), at.when()));
  }

  /// A variety that the recipe has already is taken to be of the same packet.
  private Hop hop(String said, String alpha, Entered massG, Hop.When when) {
    Matcher form = FORM.matcher(said);
    String name = form.matches() ? form.group(1) : said;
    if (name.isBlank()) {
      throw unlike("hops");
    }
    Optional<Hop> same =
        recipe.hops().stream().filter(hop -> hop.name().equalsIgnoreCase(name)).findFirst();
    Unit share = units.unit(Quantity.SHARE);
    Entered alphaFrac =
        alpha.isEmpty()
            ? same.map(Hop::alphaFrac)
                .orElseGet(() -> Amounts.read(USUAL_ALPHA_PERCENT + " %", share, "alphaFrac"))
            : Amounts.read(alpha, share, "alphaFrac");
    Hop.Form kept = same.map(Hop::form).orElse(Hop.Form.PELLET);
    String lot = same.map(Hop::lot).orElse("");
    return new Hop(name, lot, form.matches() ? form(form.group(2)) : kept, massG, alphaFrac, when);
  }

  private static Hop.Form form(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "leaf" -> Hop.Form.LEAF;
      case "plug", "plugs" -> Hop.Form.PLUG;
      default -> Hop.Form.PELLET;
    };
  }

  private record Held(String name, Entered targetC, Entered holdSec) {}

  private Held held(String text, String list) {
    Matcher held = HELD.matcher(text);
    if (!held.matches()) {
      throw unlike(list);
    }
    return new Held(
        held.group(1) == null ? "" : held.group(1).strip(),
        temperature(held.group(2), "targetC"),
        Amounts.read(held.group(3), units.unit(Quantity.TIME), "holdSec"));
  }

  private Entered temperature(String text, String name) {
    return Amounts.read(text, units.unit(Quantity.TEMPERATURE), name);
  }

  /// A mash only gets hotter, so a new rest takes its place by its temperature.
  private Recipe rest(String text) {
    Matcher ramped = RAMPED.matcher(text);
    boolean slow = ramped.matches();
    String plain =
        slow ? ramped.group(1) + (ramped.group(3) == null ? "" : " " + ramped.group(3)) : text;
    Optional<Entered> rampSec =
        slow
            ? Optional.of(Amounts.read(ramped.group(2), units.unit(Quantity.TIME), "rampSec"))
            : Optional.empty();
    Held held = held(plain, "rests");
    List<Rest> rests = new ArrayList<>(recipe.rests());
    int place = rests.size();
    while (place > 0 && rests.get(place - 1).targetC().inside() > held.targetC().inside()) {
      place--;
    }
    if (place == 0 && slow) {
      throw new Unfit(
          "The first rest is struck with hot liquor, not heated to.",
          "Say it without how long it heats up: " + EXAMPLES.get("rests") + ".");
    }
    rests.add(place, new Rest(held.name(), held.targetC(), held.holdSec(), rampSec));
    return Component.with(recipe, "rests", List.copyOf(rests));
  }

  private Stand stand(String text) {
    Held held = held(text, "stands");
    return new Stand(held.targetC(), held.holdSec());
  }

  private Ferment.Step step(String text) {
    Matcher step = STEP.matcher(text);
    if (!step.matches()) {
      throw unlike("ferment.steps");
    }
    Entered startC = temperature(step.group(2), "startC");
    Entered endC = step.group(3) == null ? startC : temperature(step.group(3), "endC");
    Entered holdSec = Amounts.read(step.group(4), units.unit(Quantity.TIME), "holdSec");
    String name = step.group(1) == null ? "" : step.group(1).strip();
    return new Ferment.Step(name, startC, endC, holdSec, step.group(5) != null);
  }

  private Recipe other(String text) {
    Weighed said = Weighed.any(text, units, "others");
    Matcher when = WHEN.matcher(said.name());
    if (!when.matches() || when.group(1).isBlank()) {
      throw unlike("others");
    }
    Moment.Said at = new Moment(recipe, units).read(when.group(2));
    Other other = new Other(when.group(1).strip(), "", said.amount(), at.when());
    return Component.longer(at.recipe(), "others", other);
  }

  private Liquor.Addition salt(String text) {
    Weighed said = Weighed.any(text, units, "liquor.additions");
    String name = said.name();
    Liquor.Into into = Liquor.Into.MASH;
    for (Liquor.Into place : Liquor.Into.values()) {
      String ending = " (?:in|into|to) the " + place.name() + "$";
      Matcher there = pattern(ending).matcher(name);
      if (there.find()) {
        into = place;
        name = name.substring(0, there.start());
      }
    }
    return new Liquor.Addition(name.strip(), agent(name), said.amount(), into);
  }

  /// What a salt is chemically, where its name says so.
  static Liquor.Agent agent(String name) {
    String said = name.strip().toLowerCase(Locale.ROOT);
    for (Liquor.Agent agent : Liquor.Agent.values()) {
      boolean known = agent != Liquor.Agent.UNKNOWN;
      if (known && said.contains(agent.words().toLowerCase(Locale.ROOT))) {
        return agent;
      }
    }
    return switch (said) {
      case "calcium chloride" -> Liquor.Agent.CALCIUM_CHLORIDE_DIHYDRATE;
      case "anhydrous calcium chloride", "calcium chloride anhydrous" ->
          Liquor.Agent.CALCIUM_CHLORIDE_ANHYDROUS;
      case "magnesium chloride" -> Liquor.Agent.MAGNESIUM_CHLORIDE;
      case "lime" -> Liquor.Agent.SLAKED_LIME;
      default -> Liquor.Agent.UNKNOWN;
    };
  }
}
