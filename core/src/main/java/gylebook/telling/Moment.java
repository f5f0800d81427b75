package gylebook.telling;

import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.recipe.Stand;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// At which point of the gyle something goes in, in words and out of words.
///
/// Words may name a stand that the recipe does not have yet ("in a stand at 80 C for 25 min"); then
/// the recipe gets it.
@AnyUnit("times and temperatures as typed")
final class Moment {
  private static final int MOST_CHARACTERS = 120;

  private static final Pattern NUMBERED =
      pattern("(?:at |in )?(?:the |a )?(?:hot )?stand(?: ?(?:number )?(\\d{1,3}))?");
  private static final Pattern STAND =
      pattern("(?:at |in )?(?:the |a )?(?:hot )?stand (?:at |of )(.+?)(?: for (.+))?");
  private static final Pattern DEGREES =
      pattern("(?:at )?([0-9]+(?:[.,][0-9]+)? ?\u00b0? ?[CF]) for (.+)");
  private static final Pattern DRY =
      pattern(
          "(?:as a )?(?:dry(?:[- ]hop(?:ped|s)?)?|in the fermenter)(?: after (.+?))?(?: for (.+))?");
  private static final Pattern BOIL =
      pattern(
          "(?:at |with |for |boiled )?([0-9\u00bd\u00bc\u00be].*?)(?: of the boil left| of boil left|"
              + " left| to go| of the boil| in the boil| before the end| before flame-?out)?");
  private static final String MAYBE =
      "Say 15 min left, first wort, flame-out, stand 1, a stand at 80 C for 25 min, in the mash, or"
          + " dry after 3 d for 4 d.";

  /// How long hops stay in the fermenter when nobody says: our judgement, shown in the sentence.
  private static final String USUAL_DRY = "3 d";

  private final Recipe recipe;
  private final ReadingUnits units;

  Moment(Recipe recipe, ReadingUnits units) {
    this.recipe = recipe;
    this.units = units;
  }

  private static Pattern pattern(String regex) {
    return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
  }

  /// What was said: the moment, and the recipe that has the stand it may name.
  record Said(Recipe recipe, Hop.When when) {}

  String words(Hop.When when) {
    return words(when, units::shown);
  }

  /// The same with every amount as somebody typed it.
  String typed(Hop.When when) {
    return words(when, Entered::asTyped);
  }

  private String words(Hop.When when, Function<Entered, String> amount) {
    return switch (when) {
      case Hop.When.InMash _ -> "in the mash";
      case Hop.When.FirstWort _ -> "when the bag is out";
      case Hop.When.InBoil(Entered leftSec) ->
          "with " + amount.apply(leftSec) + " of the boil left";
      case Hop.When.FlameOut _ -> "when the heat goes off";
      case Hop.When.AtStand(int number) ->
          recipe.stands().size() == 1 ? "in the stand" : "in stand " + (number + 1);
      case Hop.When.Dry(Entered afterSec, Entered holdSec) ->
          "in the fermenter after " + amount.apply(afterSec) + " for " + amount.apply(holdSec);
    };
  }

  /// Reads what a person says of a moment.
  ///
  /// @throws Unfit when it is none
  Said read(String text) {
    String said = text.strip();
    if (said.length() > MOST_CHARACTERS) {
      throw new Unfit("This is too long for a point of the day.", MAYBE);
    }
    return switch (said.toLowerCase(Locale.ROOT)) {
      case "in the mash", "mash", "mash in", "with the malt" -> as(new Hop.When.InMash());
      case "when the bag is out", "first wort", "first-wort", "before the boil" ->
          as(new Hop.When.FirstWort());
      case "when the heat goes off", "flame-out", "flame out", "flameout", "at flame-out" ->
          as(new Hop.When.FlameOut());
      case "at flame out", "at flameout", "at the end of the boil" -> as(new Hop.When.FlameOut());
      default -> longer(said);
    };
  }

  private Said as(Hop.When when) {
    return new Said(recipe, when);
  }

  private Said longer(String said) {
    Matcher numbered = NUMBERED.matcher(said);
    if (numbered.matches()) {
      return as(numbered(numbered.group(1)));
    }
    Matcher stand = STAND.matcher(said);
    if (stand.matches()) {
      return standing(stand.group(1), stand.group(2) == null ? "" : stand.group(2));
    }
    Matcher degrees = DEGREES.matcher(said);
    if (degrees.matches()) {
      return standing(degrees.group(1), degrees.group(2));
    }
    Matcher dry = DRY.matcher(said);
    if (dry.matches()) {
      String after = dry.group(1) == null ? "0 min" : dry.group(1);
      String hold = dry.group(2) == null ? USUAL_DRY : dry.group(2);
      return as(new Hop.When.Dry(time(after), time(hold)));
    }
    Matcher boil = BOIL.matcher(said);
    if (boil.matches()) {
      return as(new Hop.When.InBoil(inBoil(boil.group(1))));
    }
    throw new Unfit("It is not clear when this goes in.", MAYBE);
  }

  private Hop.When numbered(String digits) {
    int count = recipe.stands().size();
    if (digits == null && count > 1) {
      throw new Unfit("The recipe has " + count + " stands.", "Say in stand 1, or in stand 2.");
    }
    int number = digits == null ? 1 : Integer.parseInt(digits);
    if (number < 1 || number > count) {
      throw new Unfit(
          "There is no stand " + number + "; the recipe has " + count + ".",
          "Add the stand first, or say in a stand at 80 C for 25 min.");
    }
    return new Hop.When.AtStand(number - 1);
  }

  private Said standing(String target, String hold) {
    Entered targetC = Amounts.read(target, units.unit(Quantity.TEMPERATURE), "targetC");
    if (hold.isEmpty()) {
      OptionalInt there = Stands.at(recipe, targetC);
      if (there.isEmpty()) {
        throw new Unfit(
            "It is not said how long the wort stands.", "Say in a stand at 80 C for 25 min.");
      }
      return as(new Hop.When.AtStand(there.getAsInt()));
    }
    Stand wanted = new Stand(targetC, Amounts.read(hold, units.unit(Quantity.TIME), "holdSec"));
    OptionalInt there = Stands.like(recipe, wanted);
    if (there.isPresent()) {
      return as(new Hop.When.AtStand(there.getAsInt()));
    }
    int place = Stands.place(recipe, targetC);
    return new Said(Stands.with(recipe, wanted), new Hop.When.AtStand(place));
  }

  private Entered inBoil(String text) {
    Entered leftSec = time(text);
    Entered boilSec = recipe.boil().holdSec();
    if (leftSec.inside() > boilSec.inside() * (1 + 1e-9)) {
      throw new Unfit(
          "The boil lasts " + units.shown(boilSec) + ".",
          "Say at most that, or first wort, or dry for 3 d.");
    }
    return leftSec;
  }

  private Entered time(String text) {
    return Amounts.read(text, units.unit(Quantity.TIME), "leftSec");
  }
}
