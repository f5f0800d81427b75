package gylebook.interchange;

import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.Optional;
import java.util.OptionalInt;

/// Hops, salts, finings and spice out of the open JSON standard.
@AnyUnit("amounts carry their unit")
final class JsonAdditions {
  private static final Unit GRAM = Unit.known(Quantity.SMALL_MASS, "g");
  private static final double ALPHA_MOST_FRAC = 0.30;

  /// An assumption of ours: hop extract weighs about as much as water.
  private static final double EXTRACT_G_PER_L = 1000;

  private final BoilCourse boil;
  private final FermentCourse ferment;

  JsonAdditions(BoilCourse boil, FermentCourse ferment) {
    this.boil = boil;
    this.ferment = ferment;
  }

  Hop hop(JsonThing hop) {
    Optional<Entered> alpha = hop.amount("alpha_acid", Quantity.SHARE);
    if (alpha.isEmpty()) {
      hop.says("alpha_acid", "Is not there; taken as 0, to be filled in.");
    }
    if (alpha.isPresent() && alpha.get().inside() > ALPHA_MOST_FRAC) {
      hop.says("alpha_acid", alpha.get().asTyped() + " is more than any hop has; taken as said.");
    }
    return new Hop(
        hop.words("name"),
        hop.words("product_id"),
        form(hop),
        mass(hop),
        alpha.orElseGet(() -> Entered.of(0, Unit.known(Quantity.SHARE, "%"))),
        when(hop, "add_to_boil"));
  }

  private static Hop.Form form(JsonThing hop) {
    String form = hop.words("form");
    return switch (form) {
      case "leaf" -> Hop.Form.LEAF;
      case "leaf (wet)" -> Hop.Form.WET_LEAF;
      case "pellet" -> Hop.Form.PELLET;
      case "plug" -> Hop.Form.PLUG;
      case "powder" -> Hop.Form.POWDER;
      case "extract" -> Hop.Form.EXTRACT;
      default -> {
        String said = form.isEmpty() ? "Is not there;" : "'" + Refusal.shortened(form) + "' is";
        hop.says("form", said + " taken as pellets.");
        yield Hop.Form.PELLET;
      }
    };
  }

  private static Entered mass(JsonThing hop) {
    Optional<Entered> amount = hop.amount("amount", Quantity.SMALL_MASS, Quantity.VOLUME);
    if (amount.isEmpty()) {
      hop.says("amount", "Is not there; taken as 0 g, to be filled in.");
      return Entered.of(0, GRAM);
    }
    if (amount.get().unit().quantity() == Quantity.SMALL_MASS) {
      return amount.get();
    }
    hop.says("amount", amount.get().asTyped() + " weighed as 1 kg/L, an assumption.");
    return Entered.of(amount.get().inside() * EXTRACT_G_PER_L, GRAM);
  }

  /// Whether a miscellaneous addition goes into the water.
  static boolean forLiquor(JsonThing misc) {
    String use = misc.thing("timing").map(timing -> timing.words("use")).orElse("");
    boolean counted =
        misc.thing("amount")
            .map(amount -> ForeignUnits.unit(Quantity.NUMBER, amount.words("unit")).isPresent())
            .orElse(true);
    return misc.words("type").equals("water agent")
        && !counted
        && (use.isEmpty() || use.equals("add_to_mash") || use.equals("add_to_boil"));
  }

  static Liquor.Addition salt(JsonThing misc) {
    String name = misc.words("name");
    Liquor.Agent agent = WaterAgents.named(name);
    String guessed = WaterAgents.guessed(name, agent);
    if (!guessed.isEmpty()) {
      misc.says("name", guessed);
    }
    String use = misc.thing("timing").map(timing -> timing.words("use")).orElse("");
    if (use.isEmpty()) {
      misc.says("timing", "Does not say where it goes; taken as in the mash.");
    }
    Entered amount =
        misc.amount("amount", Quantity.SMALL_MASS, Quantity.VOLUME)
            .orElseGet(() -> Entered.of(0, GRAM));
    Liquor.Into into = use.equals("add_to_boil") ? Liquor.Into.KETTLE : Liquor.Into.MASH;
    return new Liquor.Addition(name, agent, amount, into);
  }

  Other other(JsonThing misc) {
    Optional<Entered> amount =
        misc.amount("amount", Quantity.MASS, Quantity.VOLUME, Quantity.NUMBER);
    if (amount.isEmpty()) {
      misc.says("amount", "Is not there; taken as 0, to be filled in.");
    }
    return new Other(
        misc.words("name"),
        misc.words("type"),
        amount.orElseGet(() -> Entered.of(0, Unit.known(Quantity.NUMBER, ""))),
        when(misc, "add_to_boil"));
  }

  private Hop.When when(JsonThing addition, String guess) {
    Optional<JsonThing> found = addition.thing("timing");
    if (found.isEmpty()) {
      addition.says("timing", "Is not there; taken as at flame-out.");
      return new Hop.When.FlameOut();
    }
    JsonThing timing = found.get();
    String use = timing.words("use");
    Optional<Entered> time = timing.amount("time", Quantity.TIME);
    Optional<Entered> duration = timing.amount("duration", Quantity.TIME);
    OptionalInt step = timing.count("step");
    oddities(timing);
    if (!use.matches("add_to_(mash|boil|fermentation|package)")) {
      timing.says("use", "'" + Refusal.shortened(use) + "' says no place; taken as in the boil.");
      use = guess;
    }
    return switch (use) {
      case "add_to_mash" -> new Hop.When.InMash();
      case "add_to_fermentation" ->
          ferment.when(time, duration, step, timing.path(), timing.ledger());
      case "add_to_package" -> inPackage(timing, duration);
      default -> inBoil(timing, time, duration, step);
    };
  }

  private Hop.When inBoil(
      JsonThing timing, Optional<Entered> time, Optional<Entered> duration, OptionalInt step) {
    if (time.isPresent()
        && duration.isPresent()
        && time.get().inside() != duration.get().inside()) {
      timing.says(
          "duration",
          "Says "
              + duration.get().asTyped()
              + " and 'time' says "
              + time.get().asTyped()
              + "; 'time' is used, and lifting it out again has no place here.");
    }
    return boil.when(time.or(() -> duration), step, timing.path(), timing.ledger());
  }

  private Hop.When inPackage(JsonThing timing, Optional<Entered> duration) {
    timing.says("use", "Goes into the package; taken as in the fermenter at its end.");
    Unit day = Unit.known(Quantity.TIME, "d");
    Entered end = Entered.of(day.fromInside(ferment.endSec()), day);
    return new Hop.When.Dry(end, duration.orElseGet(() -> Entered.of(0, day)));
  }

  private static void oddities(JsonThing timing) {
    if (timing.flag("continuous")) {
      timing.says("continuous", "Spreading an addition has no place here; it goes in at once.");
    }
    timing
        .amount("specific_gravity", Quantity.GRAVITY)
        .ifPresent(
            gravity -> {
              timing.says(
                  "specific_gravity",
                  "An addition at " + gravity.asTyped() + " has no place here; it goes by time.");
              timing
                  .ledger()
                  .note(Ledger.path(timing.path(), "specific_gravity"), gravity.asTyped());
            });
  }
}
