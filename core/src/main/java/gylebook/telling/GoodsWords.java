package gylebook.telling;

import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.telling.Blank.Unfit;
import gylebook.units.AnyUnit;
import gylebook.units.Component;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// What a name says of a line of the grist: "dark crystal malt 160 EBC, lot 7, in the boil".
@AnyUnit("a colour in any unit of colour")
final class GoodsWords {
  private static final Pattern USE =
      Pattern.compile("^(.+?),? in the (mash|boil|fermenter)$", Pattern.CASE_INSENSITIVE);
  private static final Pattern LOT =
      Pattern.compile("^(.+?),? lot (.+)$", Pattern.CASE_INSENSITIVE);
  private static final Pattern COLOUR =
      Pattern.compile(
          "^(.+?),? ([0-9]{1,4}(?:[.,][0-9]{1,2})? ?(?:EBC|SRM|\u00b0L|Lovibond))$",
          Pattern.CASE_INSENSITIVE);

  private record Sign(String word, Goods.Kind kind) {}

  private static final List<Sign> SIGNS =
      List.of(
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
          new Sign("raw", Goods.Kind.OTHER_GRAIN));

  private final ReadingUnits units;
  private String name;
  private String lot = "";
  private String use = "";
  private String colour = "";

  GoodsWords(String words, ReadingUnits units) {
    this.units = units;
    this.name = words;
    this.use = taken(USE);
    this.lot = taken(LOT);
    this.colour = taken(COLOUR);
  }

  private String taken(Pattern pattern) {
    Matcher matcher = pattern.matcher(name);
    if (!matcher.matches()) {
      return "";
    }
    name = matcher.group(1);
    return matcher.group(2);
  }

  Goods goods(Entered massKg) {
    Goods.Kind kind = kind(name);
    Goods.Use usual = kind.mashed() ? Goods.Use.MASH : Goods.Use.BOIL;
    Goods.Use into = use.isEmpty() ? usual : Goods.Use.valueOf(use.toUpperCase(Locale.ROOT));
    return new Goods(name, lot, kind, massKg, analysis(kind), into);
  }

  private Analysis analysis(Goods.Kind kind) {
    Analysis usual = kind.usual();
    if (colour.isEmpty()) {
      return usual;
    }
    return switch (Typed.parse(colour, Quantity.COLOUR, units)) {
      case Typed.Read(Entered entered) -> Component.with(usual, "colourEbc", entered.inside());
      case Typed.Unclear unclear -> throw new Unfit(unclear.what(), unclear.maybe());
    };
  }

  /// What a name says of the kind of goods; a malt of no other name is a base malt.
  private static Goods.Kind kind(String name) {
    String said = name.toLowerCase(Locale.ROOT);
    return SIGNS.stream()
        .filter(sign -> said.contains(sign.word()))
        .map(Sign::kind)
        .findFirst()
        .orElse(Goods.Kind.BASE_MALT);
  }
}
