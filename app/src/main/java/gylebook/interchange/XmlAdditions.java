package gylebook.interchange;

import gylebook.recipe.Boil;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Stand;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/// Hops, salts, finings and spice out of the open XML standard.
@AnyUnit("the standard fixes the unit of each tag")
final class XmlAdditions {
  private static final Unit KG = Unit.known(Quantity.MASS, "kg");
  private static final Unit LITRE = Unit.known(Quantity.VOLUME, "L");
  private static final Unit SMALL_KG = Unit.known(Quantity.SMALL_MASS, "kg");
  private static final Unit GRAM = Unit.known(Quantity.SMALL_MASS, "g");
  private static final Unit MINUTE = Unit.known(Quantity.TIME, "min");
  private static final Unit DAY = Unit.known(Quantity.TIME, "d");
  private static final Unit CELSIUS = Unit.known(Quantity.TEMPERATURE, "°C");
  private static final Unit PERCENT = Unit.known(Quantity.SHARE, "%");
  private static final double ABSURD_L = 1;
  private static final double BOILING_C = 100;
  private static final double ALPHA_MOST_FRAC = 0.30;

  private final BoilCourse boil;
  private final FermentCourse ferment;
  private Optional<Entered> steep = Optional.empty();

  XmlAdditions(Entered boilSec, FermentCourse ferment) {
    this.boil =
        new BoilCourse(new Boil(boilSec, Optional.empty(), Optional.empty()), List.of(), List.of());
    this.ferment = ferment;
  }

  /// The stand that aroma hops ask for, uncooled; none when no hop does.
  List<Stand> stands() {
    return steep
        .map(hold -> List.of(new Stand(Entered.of(BOILING_C, CELSIUS), hold)))
        .orElse(List.of());
  }

  Hop hop(XmlThing hop) {
    hop.version();
    Entered alpha =
        hop.amount("ALPHA", PERCENT, PERCENT)
            .orElseGet(
                () -> {
                  hop.says("ALPHA", "Is not there; taken as 0, to be filled in.");
                  return Entered.of(0, PERCENT);
                });
    if (alpha.inside() > ALPHA_MOST_FRAC) {
      hop.says("ALPHA", alpha.asTyped() + " is more than any hop has; taken as said.");
    }
    Entered mass =
        hop.amount("AMOUNT", SMALL_KG, GRAM)
            .orElseGet(
                () -> {
                  hop.says("AMOUNT", "Is not there; taken as 0 g, to be filled in.");
                  return Entered.of(0, GRAM);
                });
    return new Hop(hop.words("NAME"), "", form(hop), mass, alpha, when(hop));
  }

  private static Hop.Form form(XmlThing hop) {
    String form = hop.words("FORM");
    return switch (form) {
      case "Leaf" -> Hop.Form.LEAF;
      case "Plug" -> Hop.Form.PLUG;
      case "Pellet" -> Hop.Form.PELLET;
      default -> {
        String said = form.isEmpty() ? "Is not there;" : "'" + Refusal.shortened(form) + "' is";
        hop.says("FORM", said + " taken as pellets.");
        yield Hop.Form.PELLET;
      }
    };
  }

  private Hop.When when(XmlThing hop) {
    String use = hop.words("USE");
    Optional<Entered> time = hop.amount("TIME", MINUTE, MINUTE);
    return switch (use) {
      case "Mash" -> new Hop.When.InMash();
      case "First Wort" -> new Hop.When.FirstWort();
      case "Dry Hop" -> dry(time, hop);
      case "Aroma" -> steeped(time, hop);
      case "Boil" -> boil.when(time, OptionalInt.empty(), path(hop, "TIME"), hop.ledger());
      default -> {
        hop.says("USE", "'" + Refusal.shortened(use) + "' says no place; taken as in the boil.");
        yield boil.when(time, OptionalInt.empty(), path(hop, "TIME"), hop.ledger());
      }
    };
  }

  /// Minutes in the file; days where a brewer would say days.
  private Hop.When dry(Optional<Entered> time, XmlThing thing) {
    Optional<Entered> hold =
        time.map(
            minutes ->
                minutes.inside() < DAY.toInside(1)
                    ? minutes
                    : Entered.of(DAY.fromInside(minutes.inside()), DAY));
    return ferment.when(
        Optional.empty(), hold, OptionalInt.empty(), path(thing, "TIME"), thing.ledger());
  }

  private Hop.When steeped(Optional<Entered> time, XmlThing hop) {
    if (time.isEmpty() || time.get().inside() == 0) {
      return new Hop.When.FlameOut();
    }
    if (steep.isPresent() && steep.get().inside() != time.get().inside()) {
      hop.says("TIME", "Steeps another time than the hops before it; all go in at flame-out.");
    }
    hop.says(
        "USE",
        "The file gives a steep no temperature; taken as left to stand uncooled from the boil.");
    if (steep.isEmpty() || time.get().inside() > steep.get().inside()) {
      steep = time;
    }
    return new Hop.When.AtStand(0);
  }

  private static String path(XmlThing thing, String key) {
    return Ledger.path(thing.path(), key);
  }

  /// Whether a miscellaneous addition goes into the water.
  static boolean forLiquor(XmlThing misc) {
    String use = misc.words("USE");
    return misc.words("TYPE").equals("Water Agent") && (use.equals("Mash") || use.equals("Boil"));
  }

  static Liquor.Addition salt(XmlThing misc) {
    misc.version();
    misc.words("TIME");
    String name = misc.words("NAME");
    Liquor.Agent agent = WaterAgents.named(name);
    String guessed = WaterAgents.guessed(name, agent);
    if (!guessed.isEmpty()) {
      misc.says("NAME", guessed);
    }
    Entered amount =
        (weighed(misc, WaterAgents.solid(agent))
                ? misc.amount("AMOUNT", SMALL_KG, GRAM)
                : misc.amount("AMOUNT", LITRE, LITRE))
            .orElseGet(() -> Entered.of(0, GRAM));
    Liquor.Into into = misc.words("USE").equals("Boil") ? Liquor.Into.KETTLE : Liquor.Into.MASH;
    return new Liquor.Addition(name, agent, amount, into);
  }

  /// Whether an amount is kilograms: the flag is obeyed; where it is absent litres are meant,
  /// unless that would be absurd, and then the reader is asked.
  private static boolean weighed(XmlThing thing, boolean solid) {
    Optional<Boolean> flag = thing.flag("AMOUNT_IS_WEIGHT");
    if (flag.isPresent()) {
      return flag.get();
    }
    double value = thing.number("AMOUNT", false).orElse(0);
    if (solid || value > ABSURD_L) {
      thing.says(
          "AMOUNT",
          "Is it "
              + value
              + " kg or "
              + value
              + " L? The file does not say; taken as "
              + (solid ? "kg, since nobody measures this in litres." : "L, much as that is."));
      return solid;
    }
    thing.says("AMOUNT", "Does not say whether it is weighed; taken as litres.");
    return false;
  }

  Other other(XmlThing misc) {
    misc.version();
    Optional<Entered> amount =
        weighed(misc, false) ? misc.amount("AMOUNT", KG, KG) : misc.amount("AMOUNT", LITRE, LITRE);
    String use = misc.words("USE");
    Optional<Entered> time = misc.amount("TIME", MINUTE, MINUTE);
    Hop.When when =
        switch (use) {
          case "Mash" -> new Hop.When.InMash();
          case "Primary", "Secondary", "Bottling" -> dry(time, misc);
          case "Boil" -> boil.when(time, OptionalInt.empty(), path(misc, "TIME"), misc.ledger());
          default -> {
            misc.says("USE", "'" + Refusal.shortened(use) + "' says no place; taken as the boil.");
            yield boil.when(time, OptionalInt.empty(), path(misc, "TIME"), misc.ledger());
          }
        };
    if (use.matches("Secondary|Bottling")) {
      misc.says("USE", "'" + use + "' is taken as in the fermenter, at that time before its end.");
    }
    return new Other(
        misc.words("NAME"),
        misc.words("TYPE").toLowerCase(Locale.ROOT),
        amount.orElseGet(() -> Entered.of(0, KG)),
        when);
  }
}
