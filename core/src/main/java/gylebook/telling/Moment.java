package gylebook.telling;

import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.recipe.Stand;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// At which point of the gyle something goes in, in words and out of words.
@AnyUnit("times and temperatures as typed")
final class Moment {
  private static final Pattern STAND = Pattern.compile("(?:at |in )?(?:the )?stand ?(\\d+)?");
  private static final Pattern BOIL =
      Pattern.compile(
          "(?:at |with )?(.+?)(?: of the boil left| left| of the boil| before the end)?");
  private static final Pattern DRY =
      Pattern.compile("(?:dry|in the fermenter)(?: after (.+?))?(?: for (.+))?");
  private static final String MAYBE =
      "Say 15 min left, first wort, flame-out, stand 1, in the mash, or dry after 3 d for 4 d.";

  private final List<Stand> stands;
  private final ReadingUnits units;

  Moment(Object tree, ReadingUnits units) {
    this.stands = tree instanceof Recipe recipe ? recipe.stands() : List.of();
    this.units = units;
  }

  String words(Hop.When when) {
    return switch (when) {
      case Hop.When.InMash _ -> "in the mash";
      case Hop.When.FirstWort _ -> "when the bag is out";
      case Hop.When.InBoil(Entered leftSec) -> "with " + units.shown(leftSec) + " of the boil left";
      case Hop.When.FlameOut _ -> "when the heat goes off";
      case Hop.When.AtStand(int number) ->
          stands.size() == 1 ? "in the stand" : "in stand " + (number + 1);
      case Hop.When.Dry(Entered afterSec, Entered holdSec) ->
          "in the fermenter after " + units.shown(afterSec) + " for " + units.shown(holdSec);
    };
  }

  /// Reads what a person says of a moment.
  ///
  /// @throws Unfit when it is none
  Hop.When read(String text) {
    String said = text.strip().toLowerCase(Locale.ROOT);
    return switch (said) {
      case "in the mash", "mash", "mash in" -> new Hop.When.InMash();
      case "when the bag is out", "first wort", "first-wort", "before the boil" ->
          new Hop.When.FirstWort();
      case "when the heat goes off", "flame-out", "flame out", "flameout", "at flame-out" ->
          new Hop.When.FlameOut();
      default -> longer(text.strip(), said);
    };
  }

  private Hop.When longer(String text, String said) {
    Matcher stand = STAND.matcher(said);
    if (stand.matches()) {
      return stand(stand.group(1) == null ? 1 : Integer.parseInt(stand.group(1)));
    }
    Matcher dry = DRY.matcher(said);
    if (dry.matches()) {
      String after = dry.group(1) == null ? "0 min" : dry.group(1);
      String hold = dry.group(2) == null ? "3 d" : dry.group(2);
      return new Hop.When.Dry(time(after), time(hold));
    }
    Matcher boil = BOIL.matcher(text);
    if (boil.matches() && !boil.group(1).isBlank() && Character.isDigit(boil.group(1).charAt(0))) {
      return new Hop.When.InBoil(time(boil.group(1)));
    }
    throw new Unfit("It is not clear when this goes in.", MAYBE);
  }

  private Hop.When stand(int number) {
    if (number < 1 || number > stands.size()) {
      throw new Unfit(
          "There is no stand " + number + "; the recipe has " + stands.size() + ".",
          "Add the stand first.");
    }
    return new Hop.When.AtStand(number - 1);
  }

  private Entered time(String text) {
    Unit minutes = units.unit(Quantity.TIME);
    return Amounts.read(text, minutes, "leftSec");
  }
}
