package gylebook.interchange;

import gylebook.recipe.Goods;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.OptionalDouble;

/// Lines of the grist out of the open XML standard.
@AnyUnit("the standard fixes the unit of each tag")
final class XmlGrist {
  private static final Unit KG = Unit.known(Quantity.MASS, "kg");
  private static final Unit LOVIBOND = Unit.known(Quantity.COLOUR, "°L");
  private static final Unit SRM = Unit.known(Quantity.COLOUR, "SRM");
  private static final double DOUBT_FRAC = 0.01;

  private XmlGrist() {}

  static Goods goods(XmlThing line) {
    line.version();
    String name = line.words("NAME");
    String type = line.words("TYPE");
    // Only liquid extract is given as the colour of a wort; all else in degrees Lovibond.
    Unit scale = type.equals("Extract") ? SRM : LOVIBOND;
    double colourEbc = line.amount("COLOR", scale, scale).map(Entered::inside).orElse(0.0);
    Goods.Kind kind = kind(line, type, name, colourEbc);
    OptionalDouble moisture = percent(line, "MOISTURE");
    OptionalDouble yield = percent(line, "YIELD");
    if (yield.isEmpty()) {
      line.says("YIELD", "Is not there; what is usual for " + kind.words() + " stands in.");
    }
    double moist = moisture.orElse(kind.usual().moistureFrac());
    OptionalDouble dry =
        yield.isEmpty() || kind.mashed()
            ? yield
            : OptionalDouble.of(GristRules.dryFrac(yield.getAsDouble(), moist));
    Entered mass =
        line.amount("AMOUNT", KG, KG)
            .orElseGet(
                () -> {
                  line.says("AMOUNT", "Is not there; taken as 0 kg, to be filled in.");
                  return Entered.of(0, KG);
                });
    bitterness(line);
    return new Goods(
        name,
        "",
        kind,
        mass,
        GristRules.analysis(kind, dry, moisture, colourEbc, DOUBT_FRAC),
        use(line, kind));
  }

  private static Goods.Kind kind(XmlThing line, String type, String name, double colourEbc) {
    return switch (type) {
      case "Extract" -> Goods.Kind.LIQUID_EXTRACT;
      case "Dry Extract" -> Goods.Kind.DRY_EXTRACT;
      case "Sugar" -> Goods.Kind.SUGAR;
      case "Adjunct" -> {
        Goods.Kind guess = GristRules.grain(name, colourEbc);
        Goods.Kind kind = guess == Goods.Kind.FLAKED ? guess : Goods.Kind.OTHER_GRAIN;
        line.says("TYPE", "'Adjunct' is taken as " + kind.words() + ".");
        yield kind;
      }
      default -> {
        Goods.Kind guess = GristRules.grain(name, colourEbc);
        line.says(
            "TYPE",
            "'"
                + Refusal.shortened(type)
                + "' says no kind; guessed from name and colour: "
                + guess.words()
                + ".");
        yield guess;
      }
    };
  }

  private static OptionalDouble percent(XmlThing line, String key) {
    OptionalDouble value = line.number(key, false);
    if (value.isEmpty()) {
      return value;
    }
    if (!(value.getAsDouble() >= 0 && value.getAsDouble() <= 100)) {
      throw new Refusal(
          "'" + line.path() + " > " + key + "' has to lie between 0 and 100 %.",
          String.valueOf(value.getAsDouble()),
          "Maybe correct it in the program that wrote the file.");
    }
    return OptionalDouble.of(value.getAsDouble() / 100);
  }

  /// The bitterness of a hopped extract stands under one of two names; it is kept under the first.
  private static void bitterness(XmlThing line) {
    for (String key : new String[] {"IBU_GAL_PER_LB", "IBU_GAL_PER_POUND"}) {
      OptionalDouble value = line.number(key, false);
      if (value.isPresent() && value.getAsDouble() != 0) {
        line.ledger()
            .keep(Ledger.path(line.path(), "IBU_GAL_PER_LB"), String.valueOf(value.getAsDouble()));
      }
    }
  }

  private static Goods.Use use(XmlThing line, Goods.Kind kind) {
    if (line.flag("ADD_AFTER_BOIL").orElse(false)) {
      return Goods.Use.FERMENTER;
    }
    return kind.mashed() ? Goods.Use.MASH : Goods.Use.BOIL;
  }
}
