package gylebook.interchange;

import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Yeast;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// The ingredients of a recipe in the open JSON standard.
@AnyUnit("amounts carry their unit")
final class JsonIngredients {
  private static final List<String> MISC =
      List.of("spice", "fining", "water agent", "herb", "flavor", "wood", "other");
  private static final List<String> FORMS = List.of("liquid", "dry", "slant", "culture", "dregs");

  private JsonIngredients() {}

  /// The full record of each line of the grist: the line itself has no place for its moisture.
  static void catalogue(Recipe recipe, ObjectNode document, Ledger lost) {
    Map<String, Goods> records = new LinkedHashMap<>();
    for (Goods goods : recipe.grist()) {
      String place = goods.name() + "\n" + goods.lot();
      Goods other = records.putIfAbsent(place, goods);
      if (other != null && !sameRecord(other, goods)) {
        lost.says(
            "fermentables",
            "Two lines are called '"
                + goods.name()
                + "' and differ; their moisture is written"
                + " once. A mark for each lot would keep both.");
      }
    }
    ArrayNode list = document.putArray("fermentables");
    for (Goods goods : records.values()) {
      ObjectNode record = list.addObject();
      identity(goods, record);
      record.set("moisture", JsonAmount.percent(goods.analysis().moistureFrac()));
    }
  }

  private static boolean sameRecord(Goods one, Goods other) {
    return one.kind() == other.kind() && one.analysis().equals(other.analysis());
  }

  static void write(Recipe recipe, ObjectNode ingredients, Ledger lost) {
    ArrayNode grist = ingredients.putArray("fermentable_additions");
    recipe.grist().forEach(goods -> goods(goods, grist.addObject(), lost));
    JsonMoments moments = new JsonMoments(recipe, lost);
    ArrayNode hops = ingredients.putArray("hop_additions");
    for (Hop hop : recipe.hops()) {
      hop(hop, hops.addObject(), moments, lost);
    }
    ArrayNode miscs = ingredients.putArray("miscellaneous_additions");
    for (Liquor.Addition salt : recipe.liquor().additions()) {
      salt(salt, miscs.addObject(), moments, lost);
    }
    for (Other other : recipe.others()) {
      other(other, miscs.addObject(), moments, lost);
    }
    yeast(recipe, ingredients.putArray("culture_additions").addObject(), lost);
    water(recipe.liquor(), ingredients.putArray("water_additions").addObject(), lost);
  }

  private static void identity(Goods goods, ObjectNode to) {
    to.put("name", goods.name());
    if (!goods.lot().isEmpty()) {
      to.put("product_id", goods.lot());
    }
    to.put(
        "type",
        switch (goods.kind()) {
          case BASE_MALT, CARAMEL_MALT, ROASTED, FLAKED, OTHER_GRAIN -> "grain";
          case SUGAR -> "sugar";
          case DRY_EXTRACT -> "dry extract";
          case LIQUID_EXTRACT -> "extract";
          case FRUIT -> "fruit";
        });
    switch (goods.kind()) {
      case BASE_MALT -> to.put("grain_group", "base");
      case CARAMEL_MALT -> to.put("grain_group", "caramel");
      case ROASTED -> to.put("grain_group", "roasted");
      case FLAKED -> to.put("grain_group", "flaked");
      case OTHER_GRAIN -> to.put("grain_group", "specialty");
      default -> {
        // only grain has a group
      }
    }
    double extractFrac = goods.analysis().extractFrac();
    double said =
        goods.kind().mashed() ? extractFrac : extractFrac * (1 - goods.analysis().moistureFrac());
    to.putObject("yield").set("fine_grind", JsonAmount.percent(said));
    to.set("color", JsonAmount.node(goods.analysis().colourEbc(), "EBC"));
  }

  private static void goods(Goods goods, ObjectNode to, Ledger lost) {
    identity(goods, to);
    to.set("amount", JsonAmount.of(goods.massKg(), lost, goods.name()));
    to.putObject("timing")
        .put(
            "use",
            switch (goods.use()) {
              case MASH -> "add_to_mash";
              case BOIL -> "add_to_boil";
              case FERMENTER -> "add_to_fermentation";
            });
    if (goods.analysis().attenuationOffsetFrac() != 0) {
      lost.says(goods.name(), "How far its wort attenuates has no place in the standard.");
    }
    lost.says("grist", "How sure the extract of each lot is has no place in the standard.");
  }

  private static void hop(Hop hop, ObjectNode to, JsonMoments moments, Ledger lost) {
    to.put("name", hop.name());
    if (!hop.lot().isEmpty()) {
      to.put("product_id", hop.lot());
    }
    to.put(
        "form",
        switch (hop.form()) {
          case LEAF -> "leaf";
          case WET_LEAF -> "leaf (wet)";
          case PELLET -> "pellet";
          case PLUG -> "plug";
          case POWDER -> "powder";
          case EXTRACT -> "extract";
        });
    to.set("alpha_acid", JsonAmount.percent(hop.alphaFrac().inside()));
    to.set("amount", JsonAmount.of(hop.massG(), lost, hop.name()));
    to.set("timing", moments.timing(hop.when(), hop.name()));
    if (hop.agedSec().isPresent()) {
      lost.says(hop.name(), "How old they are and how they were kept is not written.");
    }
  }

  private static void salt(Liquor.Addition salt, ObjectNode to, JsonMoments moments, Ledger lost) {
    to.put("name", salt.name());
    to.put("type", "water agent");
    to.set("amount", JsonAmount.of(salt.amountNumber(), lost, salt.name()));
    to.set("timing", moments.salt(salt.into()));
    if (WaterAgents.named(salt.name()) != salt.agent()) {
      lost.says(
          salt.name(),
          "That it is "
              + salt.agent().words()
              + " has no place in the standard; only the name is"
              + " written.");
    }
  }

  private static void other(Other other, ObjectNode to, JsonMoments moments, Ledger lost) {
    to.put("name", other.name());
    boolean known = MISC.contains(other.kind());
    to.put("type", known ? other.kind() : "other");
    if (!known) {
      lost.says(
          other.name(), "The standard does not know '" + other.kind() + "'; written as other.");
    }
    to.set("amount", JsonAmount.of(other.amountNumber(), lost, other.name()));
    to.set("timing", moments.timing(other.when(), other.name()));
  }

  private static void yeast(Recipe recipe, ObjectNode to, Ledger lost) {
    Yeast yeast = recipe.yeast();
    to.put("name", yeast.name());
    Kept.node("culture type", recipe.kept())
        .ifPresentOrElse(
            type -> to.set("type", type),
            () -> {
              to.put("type", cultureType(yeast.name()));
              lost.says("yeast", "Its type is guessed from its name.");
            });
    boolean known = FORMS.contains(yeast.form());
    to.put("form", known ? yeast.form() : "culture");
    if (!known) {
      lost.says("yeast", "The standard does not know '" + yeast.form() + "'; written as culture.");
    }
    Entered amount = yeast.amountNumber();
    to.set(
        "amount",
        amount.unit().quantity() == Quantity.NUMBER
            ? JsonAmount.node(amount.inside(), "pkg")
            : JsonAmount.of(amount, lost, "yeast"));
    yeast
        .attenuationFrac()
        .ifPresent(share -> to.set("attenuation", JsonAmount.percent(share.inside())));
  }

  private static String cultureType(String name) {
    String words = name.toLowerCase(Locale.ROOT);
    for (String type : new String[] {"lager", "wheat", "kveik", "wine", "champagne", "ale"}) {
      if (words.contains(type)) {
        return type;
      }
    }
    return "other";
  }

  private static void water(Liquor liquor, ObjectNode to, Ledger lost) {
    Liquor.Ions ions = liquor.source();
    if (liquor.meterUsPerCm().isPresent()) {
      lost.says("water", "The meter's reading has no place in the standard; its ions are written.");
    }
    to.put("name", liquor.name());
    to.set("calcium", ion(ions.calciumMgPerL()));
    to.set("magnesium", ion(ions.magnesiumMgPerL()));
    to.set("sodium", ion(ions.sodiumMgPerL()));
    to.set("chloride", ion(ions.chlorideMgPerL()));
    to.set("sulfate", ion(ions.sulphateMgPerL()));
    to.set("bicarbonate", ion(ions.bicarbonateMgPerL()));
  }

  private static ObjectNode ion(double mgPerL) {
    return JsonAmount.node(
        mgPerL, ForeignUnits.word(Unit.known(Quantity.CONCENTRATION, "mg/L")).orElseThrow());
  }
}
