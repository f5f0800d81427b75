package gylebook.interchange;

import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/// Lines of the grist out of the open JSON standard.
@AnyUnit("yields stand as the file writes them")
final class JsonGrist {
  private static final Unit KG = Unit.known(Quantity.MASS, "kg");
  private static final double GRIND_DOUBT_FRAC = 0.01;
  private static final double POTENTIAL_DOUBT_FRAC = 0.03;
  private static final double DISAGREE_FRAC = 0.04;

  /// Assumptions of ours, common practice: syrup and juice, kg/L, within some 5 %.
  private static final double SYRUP_KG_PER_L = 1.4;

  private static final double JUICE_KG_PER_L = 1.05;

  private final List<JsonThing> catalogue;

  /// @param catalogue full records of fermentables beside the recipe
  JsonGrist(List<JsonThing> catalogue) {
    this.catalogue = catalogue;
  }

  Goods goods(JsonThing line) {
    String name = line.words("name");
    double colourEbc =
        line.amount("color", Quantity.COLOUR).map(Entered::inside).orElseGet(() -> noColour(line));
    Goods.Kind kind = kind(line, name, colourEbc);
    OptionalDouble moistureFrac = moisture(line, name);
    double moist = moistureFrac.orElse(kind.usual().moistureFrac());
    Analysis analysis = analysis(line, kind, moistureFrac, moist, colourEbc);
    Goods.Use use = use(line, kind);
    return new Goods(name, line.words("product_id"), kind, mass(line, kind), analysis, use);
  }

  private static double noColour(JsonThing line) {
    line.says("color", "Is not there; taken as none.");
    return 0;
  }

  private static Goods.Kind kind(JsonThing line, String name, double colourEbc) {
    String type = line.words("type");
    String group = line.words("grain_group");
    return switch (type) {
      case "dry extract" -> Goods.Kind.DRY_EXTRACT;
      case "extract" -> Goods.Kind.LIQUID_EXTRACT;
      case "sugar", "honey" -> Goods.Kind.SUGAR;
      case "fruit", "juice" -> Goods.Kind.FRUIT;
      case "grain" -> group(line, group, name, colourEbc);
      default -> {
        line.says("type", "'" + Refusal.shortened(type) + "' is taken as grain.");
        yield Goods.Kind.OTHER_GRAIN;
      }
    };
  }

  private static Goods.Kind group(JsonThing line, String group, String name, double colourEbc) {
    return switch (group) {
      case "base" -> Goods.Kind.BASE_MALT;
      case "caramel" -> Goods.Kind.CARAMEL_MALT;
      case "flaked" -> Goods.Kind.FLAKED;
      case "roasted" -> Goods.Kind.ROASTED;
      case "specialty", "smoked", "adjunct" -> {
        line.ledger().note(Ledger.path(line.path(), "grain_group"), group);
        line.says("grain_group", "'" + group + "' is taken as grain of no nearer kind.");
        yield Goods.Kind.OTHER_GRAIN;
      }
      default -> {
        Goods.Kind guess = GristRules.grain(name, colourEbc);
        line.says(
            "grain_group", "Is not there; guessed from name and colour: " + guess.words() + ".");
        yield guess;
      }
    };
  }

  /// The catalogue record of a line: by producer and product, else by name; none when several fit.
  private OptionalDouble moisture(JsonThing line, String name) {
    String product = line.words("product_id");
    String producer = line.words("producer");
    if (!producer.isEmpty()) {
      line.ledger().keep(Ledger.path(line.path(), "producer"), producer);
    }
    List<JsonThing> same =
        catalogue.stream().filter(record -> record.words("name").equals(name)).toList();
    List<JsonThing> exact =
        same.stream()
            .filter(record -> record.words("product_id").equals(product))
            .filter(record -> record.words("producer").equals(producer))
            .toList();
    List<JsonThing> found = exact.size() == 1 ? exact : same;
    if (found.size() > 1) {
      line.says(
          "name",
          "'"
              + name
              + "' names "
              + found.size()
              + " records of the file, and nothing tells them"
              + " apart; none is used.");
    }
    return found.size() == 1
        ? found
            .getFirst()
            .amount("moisture", Quantity.SHARE)
            .map(share -> OptionalDouble.of(share.inside()))
            .orElse(OptionalDouble.empty())
        : OptionalDouble.empty();
  }

  private static Analysis analysis(
      JsonThing line,
      Goods.Kind kind,
      OptionalDouble moistureFrac,
      double moist,
      double colourEbc) {
    Optional<JsonThing> yield = line.thing("yield");
    OptionalDouble fine = yield.map(y -> share(y, "fine_grind")).orElse(OptionalDouble.empty());
    OptionalDouble coarse = yield.map(y -> share(y, "coarse_grind")).orElse(OptionalDouble.empty());
    OptionalDouble less =
        yield.map(y -> share(y, "fine_coarse_difference")).orElse(OptionalDouble.empty());
    OptionalDouble potential =
        yield
            .flatMap(y -> y.amount("potential", Quantity.GRAVITY))
            .map(JsonGrist::potential)
            .orElse(OptionalDouble.empty());
    yield.ifPresent(y -> disagreements(y, fine, coarse, less, potential));
    if (fine.isPresent() || coarse.isPresent()) {
      double said = fine.orElseGet(() -> coarse.orElse(0) + less.orElse(0));
      if (fine.isEmpty() && less.isEmpty()) {
        line.says("yield", "Only a coarse grind is given; taken as the fine one too.");
      }
      double dry = kind.mashed() ? said : GristRules.dryFrac(said, moist);
      return GristRules.analysis(
          kind, OptionalDouble.of(dry), moistureFrac, colourEbc, GRIND_DOUBT_FRAC);
    }
    if (potential.isPresent()) {
      line.says("yield", "Only a potential is given; taken as that of the goods as they come.");
      double dry = GristRules.dryFrac(potential.getAsDouble(), moist);
      return GristRules.analysis(
          kind, OptionalDouble.of(dry), moistureFrac, colourEbc, POTENTIAL_DOUBT_FRAC);
    }
    line.says("yield", "Is not there; what is usual for " + kind.words() + " stands in.");
    return GristRules.analysis(kind, OptionalDouble.empty(), moistureFrac, colourEbc, 0);
  }

  private static OptionalDouble potential(Entered gravity) {
    double sg = Unit.known(Quantity.GRAVITY, "SG").fromInside(gravity.inside());
    return OptionalDouble.of(GristRules.extractFrac(sg));
  }

  private static OptionalDouble share(JsonThing yield, String key) {
    return yield
        .amount(key, Quantity.SHARE)
        .map(share -> OptionalDouble.of(share.inside()))
        .orElse(OptionalDouble.empty());
  }

  private static void disagreements(
      JsonThing yield,
      OptionalDouble fine,
      OptionalDouble coarse,
      OptionalDouble less,
      OptionalDouble potential) {
    if (fine.isPresent()
        && coarse.isPresent()
        && less.isPresent()
        && Math.abs(fine.getAsDouble() - coarse.getAsDouble() - less.getAsDouble()) > 1e-3) {
      yield.says(
          "",
          "Fine grind, coarse grind and their difference do not agree; the fine grind is used.");
    }
    double grind = fine.orElse(coarse.orElse(Double.NaN));
    if (potential.isPresent() && Math.abs(grind - potential.getAsDouble()) > DISAGREE_FRAC) {
      yield.says("potential", "Does not agree with the grind; the grind is used.");
    }
    if (potential.isPresent() && !Double.isNaN(grind)) {
      yield.ledger().note(Ledger.path(yield.path(), "potential"), "used for a check only");
    }
  }

  private static Goods.Use use(JsonThing line, Goods.Kind kind) {
    Optional<JsonThing> timing = line.thing("timing");
    String use = timing.map(t -> t.words("use")).orElse("");
    return switch (use) {
      case "add_to_mash" -> Goods.Use.MASH;
      case "add_to_boil" -> Goods.Use.BOIL;
      case "add_to_fermentation" -> Goods.Use.FERMENTER;
      case "add_to_package" -> {
        line.says("timing", "Goes into the package; taken as in the fermenter.");
        yield Goods.Use.FERMENTER;
      }
      default -> {
        if (kind.mashed()) {
          yield Goods.Use.MASH;
        }
        line.says("timing", "Does not say where it goes; taken as in the boil.");
        yield Goods.Use.BOIL;
      }
    };
  }

  private static Entered mass(JsonThing line, Goods.Kind kind) {
    Optional<Entered> amount = line.amount("amount", Quantity.MASS, Quantity.VOLUME);
    if (amount.isEmpty()) {
      line.says("amount", "Is not there; taken as 0 kg, to be filled in.");
      return Entered.of(0, KG);
    }
    if (amount.get().unit().quantity() == Quantity.MASS) {
      return amount.get();
    }
    double kgPerL =
        switch (kind) {
          case LIQUID_EXTRACT, SUGAR -> SYRUP_KG_PER_L;
          case FRUIT -> JUICE_KG_PER_L;
          default ->
              throw new Refusal(
                  "'"
                      + line.path()
                      + "' is measured in "
                      + amount.get().unit().spoken()
                      + "s; "
                      + kind.words()
                      + " has to be weighed.",
                  amount.get().asTyped(),
                  "Maybe give its mass in the program that wrote the file.");
        };
    line.says(
        "amount",
        amount.get().asTyped() + " weighed as " + kgPerL + " kg/L, an assumption within some 5 %.");
    return Entered.of(amount.get().inside() * kgPerL, KG);
  }
}
