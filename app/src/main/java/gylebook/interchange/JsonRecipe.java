package gylebook.interchange;

import gylebook.recipe.Aim;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/// A recipe out of a document of the open JSON standard.
@AnyUnit("amounts carry their unit")
final class JsonRecipe {
  private static final Set<Double> VERSIONS = Set.of(1.0, 1.1, 2.01, 2.06, 3.0);
  private static final List<String> RECORDS =
      List.of(
          "fermentables",
          "hop_varieties",
          "cultures",
          "miscellaneous_ingredients",
          "profiles",
          "styles",
          "mashes",
          "fermentations",
          "equipments",
          "boil",
          "packaging");

  private final JsonThing document;
  private final String name;
  private final Ledger ledger;

  private JsonRecipe(JsonThing document, String name, Ledger ledger) {
    this.document = document;
    this.name = name;
    this.ledger = ledger;
  }

  static Recipe read(JsonNode root, String name, Ledger ledger) {
    return new JsonRecipe(new JsonThing(root, "beerjson", ledger), name, ledger).recipe();
  }

  private Recipe recipe() {
    version();
    List<JsonThing> recipes = document.things("recipes");
    if (recipes.isEmpty()) {
      throw none();
    }
    if (recipes.size() > 1) {
      List<String> others =
          recipes.subList(1, recipes.size()).stream().map(other -> other.words("name")).toList();
      ledger.says(
          "recipes",
          "The file holds "
              + recipes.size()
              + " recipes; the first is read. The others: "
              + Refusal.shortened(String.join(", ", others))
              + ".");
    }
    // The recipe's own paths begin at the recipe: they are what the reader sees first.
    JsonThing first = new JsonThing(recipes.getFirst().node(), "", ledger);
    recipes.getFirst().usedUp();
    recipes.subList(1, recipes.size()).forEach(JsonThing::keepWhole);
    return assembled(first);
  }

  private void version() {
    Optional<JsonNode> said = document.take("version");
    if (said.isEmpty()) {
      ledger.says("version", "Is not there; read as version 3.");
      return;
    }
    String text = said.get().isString() ? said.get().asString() : said.get().toString();
    OptionalDouble number = XmlThing.number(text);
    if (number.isEmpty() || !VERSIONS.contains(number.getAsDouble())) {
      throw new Refusal(
          "The file says version "
              + Refusal.shortened(text)
              + " of the open JSON standard; 1, 1.1, 2.01, 2.06 and 3 are read.",
          text,
          "Maybe export it again as version 3.");
    }
    if (said.get().isString()) {
      ledger.says("version", "Is written as words; read as a number.");
    }
  }

  private Refusal none() {
    List<String> held = new ArrayList<>();
    for (String key : RECORDS) {
      int count = document.things(key).size();
      if (count > 0) {
        held.add(count + " under '" + key + "'");
      }
    }
    String what = held.isEmpty() ? "nothing else either" : String.join(", ", held);
    return new Refusal(
        "The file holds no recipe; it holds " + what + ".",
        what,
        "Maybe export the recipe itself.");
  }

  private Recipe assembled(JsonThing recipe) {
    JsonThing ingredients =
        recipe
            .thing("ingredients")
            .orElseThrow(
                () ->
                    new Refusal(
                        "The recipe has no 'ingredients'.",
                        "",
                        "Maybe the file was cut off, or is not of the open JSON standard."));
    List<JsonThing> hops = ingredients.things("hop_additions");
    List<JsonThing> miscs = ingredients.things("miscellaneous_additions");
    List<Rest> rests = JsonFerment.rests(recipe);
    BoilCourse boil = new JsonBoil(longestSec(hops, miscs)).read(recipe);
    FermentCourse ferment = JsonFerment.ferment(recipe);
    JsonAdditions additions = new JsonAdditions(boil, ferment);
    List<Goods> grist = grist(ingredients);
    if (rests.isEmpty() && grist.stream().anyMatch(goods -> goods.kind().mashed())) {
      recipe.says("mash", "Says no rest, though there is grain to mash; to be filled in.");
    }
    List<Hop> hopList = hops.stream().map(additions::hop).toList();
    List<Liquor.Addition> salts =
        miscs.stream().filter(JsonAdditions::forLiquor).map(JsonAdditions::salt).toList();
    List<Other> others =
        miscs.stream()
            .filter(misc -> !JsonAdditions.forLiquor(misc))
            .map(additions::other)
            .toList();
    String style = style(recipe);
    Aim aim = aim(recipe);
    Elsewhere elsewhere = elsewhere(recipe, aim, boil);
    Liquor liquor = JsonLiquor.liquor(ingredients, salts);
    var yeast =
        JsonFerment.yeast(ingredients.things("culture_additions"), recipe, ferment.ferment());
    var pack = JsonFerment.pack(recipe);
    String notes = recipe.words("notes");
    String called = called(recipe);
    recipe.noted("type");
    Kept.own(recipe);
    recipe.keepRest();
    document.keepRest();
    return new Recipe(
        called,
        style,
        false,
        aim,
        grist,
        liquor,
        rests,
        boil.boil(),
        boil.stands(),
        hopList,
        others,
        yeast,
        ferment.ferment(),
        pack,
        notes,
        elsewhere,
        ledger.kept());
  }

  private String called(JsonThing recipe) {
    String said = recipe.words("name").strip();
    if (said.isEmpty()) {
      recipe.says("name", "Is empty; named after the file.");
    }
    return said.isEmpty() ? name : said;
  }

  private List<Goods> grist(JsonThing ingredients) {
    List<JsonThing> catalogue = document.things("fermentables");
    JsonGrist grist = new JsonGrist(catalogue);
    List<JsonThing> lines = ingredients.things("fermentable_additions");
    List<Goods> goods = lines.stream().map(grist::goods).toList();
    for (JsonThing record : catalogue) {
      // What the line of the recipe says itself goes first; the rest of its record is kept.
      if (lines.stream().anyMatch(line -> line.words("name").equals(record.words("name")))) {
        record.usedUp(
            "type", "producer", "product_id", "grain_group", "yield", "color", "moisture");
      } else {
        record.keepWhole();
      }
    }
    return goods;
  }

  private static double longestSec(List<JsonThing> hops, List<JsonThing> miscs) {
    double longest = 0;
    for (List<JsonThing> list : List.of(hops, miscs)) {
      for (JsonThing addition : list) {
        Optional<JsonThing> timing = addition.thing("timing");
        if (timing.isPresent() && timing.get().words("use").equals("add_to_boil")) {
          double time =
              timing
                  .get()
                  .amount("time", Quantity.TIME)
                  .or(() -> timing.get().amount("duration", Quantity.TIME))
                  .map(Entered::inside)
                  .orElse(0.0);
          longest = Math.max(longest, time);
        }
      }
    }
    return longest;
  }

  private static String style(JsonThing recipe) {
    Optional<JsonNode> style = recipe.take("style");
    if (style.isEmpty() || !style.get().isObject()) {
      return "";
    }
    recipe.ledger().note("style", style.get().toString());
    JsonNode called = style.get().get("name");
    return called != null && called.isString() ? called.asString() : "";
  }

  private static Aim aim(JsonThing recipe) {
    Optional<Entered> length = recipe.amount("batch_size", Quantity.VOLUME);
    if (length.isEmpty() || length.get().inside() == 0) {
      recipe.says("batch_size", "Says no volume; taken as 0 L, to be filled in before planning.");
    }
    Optional<Entered> strength = recipe.amount("original_gravity", Quantity.GRAVITY);
    strength.ifPresent(gravity -> Sense.gravity("original_gravity", gravity, recipe.ledger()));
    Optional<JsonThing> estimate = recipe.thing("ibu_estimate");
    Optional<Entered> bitterness = estimate.flatMap(e -> e.amount("value", Quantity.BITTERNESS));
    if (bitterness.isPresent()) {
      recipe.says(
          "ibu_estimate",
          bitterness.get().asTyped()
              + " is their estimate by a formula; it is taken as the"
              + " bitterness that is wanted.");
    }
    return new Aim(
        length.orElseGet(() -> Entered.of(0, Unit.known(Quantity.VOLUME, "L"))),
        Aim.Into.FERMENTER,
        strength,
        bitterness,
        "");
  }

  private Elsewhere elsewhere(JsonThing recipe, Aim aim, BoilCourse boil) {
    OptionalDouble brewhouse = brewhouse(recipe);
    OptionalDouble preBoil =
        inside(recipe.thing("boil").flatMap(b -> b.amount("pre_boil_size", Quantity.VOLUME)));
    Optional<Entered> last = recipe.amount("final_gravity", Quantity.GRAVITY);
    last.ifPresent(gravity -> Sense.gravity("final_gravity", gravity, recipe.ledger()));
    Sense.volumes("batch_size", aim.lengthL().inside(), preBoil, recipe.ledger());
    String method = recipe.thing("ibu_estimate").map(e -> e.words("method")).orElse("");
    return new Elsewhere(
        brewhouse,
        OptionalDouble.of(aim.lengthL().inside()),
        preBoil,
        OptionalDouble.of(boil.boil().holdSec().inside()),
        boilOff(),
        inside(aim.strengthPlato()),
        inside(last),
        inside(aim.bitternessMgPerL()),
        method,
        inside(recipe.amount("color_estimate", Quantity.COLOUR)));
  }

  /// Theirs is a claim, not an ingredient: one that cannot be is said and not used.
  private static OptionalDouble brewhouse(JsonThing recipe) {
    Optional<JsonThing> theirs = recipe.thing("efficiency").flatMap(e -> e.thing("brewhouse"));
    OptionalDouble percent =
        theirs.map(share -> share.number("value")).orElse(OptionalDouble.empty());
    theirs.ifPresent(share -> share.words("unit"));
    if (percent.isPresent() && !(percent.getAsDouble() >= 0 && percent.getAsDouble() <= 100)) {
      recipe.says("efficiency", "Lies outside 0 to 100 %; not used.");
      return OptionalDouble.empty();
    }
    return percent.isPresent() ? OptionalDouble.of(percent.getAsDouble() / 100) : percent;
  }

  /// What their kettle drives off in an hour, if the file has exactly one kettle.
  private OptionalDouble boilOff() {
    List<JsonThing> kettles =
        document.things("equipments").stream()
            .flatMap(set -> set.things("equipment_items").stream())
            .filter(item -> item.words("form").equals("Brew Kettle"))
            .toList();
    return kettles.size() == 1
        ? inside(kettles.getFirst().amount("boil_rate_per_hour", Quantity.VOLUME))
        : OptionalDouble.empty();
  }

  private static OptionalDouble inside(Optional<Entered> amount) {
    return amount.map(a -> OptionalDouble.of(a.inside())).orElse(OptionalDouble.empty());
  }
}
