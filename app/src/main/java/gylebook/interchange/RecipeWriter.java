package gylebook.interchange;

import gylebook.recipe.Aim;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Goods;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.ExtractScale;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/// Writes a recipe in the open JSON standard, version 3.
@AnyUnit("amounts carry their unit")
public final class RecipeWriter {
  private static final int VERSION = 3;
  private static final double WATER_KG_PER_L = 0.99820;
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  private final Recipe recipe;
  private final Ledger lost = new Ledger();
  private final ObjectNode out = MAPPER.createObjectNode();

  private RecipeWriter(Recipe recipe) {
    this.recipe = recipe;
  }

  /// The file's text, and what the standard has no place for.
  public static Written json(Recipe recipe) {
    RecipeWriter writer = new RecipeWriter(recipe);
    ObjectNode root = MAPPER.createObjectNode();
    ObjectNode document = root.putObject("beerjson");
    document.put("version", VERSION);
    writer.recipe();
    JsonIngredients.catalogue(recipe, document, writer.lost);
    document.putArray("recipes").add(writer.out);
    return new Written(MAPPER.writeValueAsString(root) + "\n", writer.lost.remarks());
  }

  private void recipe() {
    out.put("name", recipe.name());
    out.put("type", type());
    out.put("author", "");
    for (String key : new String[] {"author", "coauthor", "created", "style"}) {
      Kept.node(key, recipe.kept()).ifPresent(node -> out.set(key, node));
    }
    out.set("batch_size", JsonAmount.of(recipe.aim().lengthL(), lost, "batch_size"));
    out.putObject("efficiency").set("brewhouse", JsonAmount.percent(brewhouse()));
    aims();
    JsonIngredients.write(recipe, out.putObject("ingredients"), lost);
    JsonCourse.write(recipe, out, lost);
    pack();
    if (!recipe.notes().isEmpty()) {
      out.put("notes", recipe.notes());
    }
    withoutPlace();
  }

  private String type() {
    boolean mashed = recipe.grist().stream().anyMatch(goods -> goods.kind().mashed());
    boolean extract =
        recipe.grist().stream()
            .anyMatch(
                goods ->
                    goods.kind() == Goods.Kind.DRY_EXTRACT
                        || goods.kind() == Goods.Kind.LIQUID_EXTRACT);
    return mashed ? (extract ? "partial mash" : "all grain") : "extract";
  }

  /// What they said; else what length, strength and grist together mean.
  private double brewhouse() {
    OptionalDouble said = recipe.elsewhere().brewhouseFrac();
    if (said.isPresent()) {
      return said.getAsDouble();
    }
    double extractKg =
        recipe.grist().stream()
            .mapToDouble(
                goods ->
                    goods.massKg().inside()
                        * (1 - goods.analysis().moistureFrac())
                        * goods.analysis().extractFrac())
            .sum();
    if (recipe.aim().strengthPlato().isEmpty() || !(extractKg > 0)) {
      lost.says(
          "efficiency",
          "The recipe says none and it does not follow; 0 % is written, as it must be.");
      return 0;
    }
    double plato = recipe.aim().strengthPlato().get().inside();
    double wortKg =
        recipe.aim().lengthL().inside() * ExtractScale.sgFromPlato(plato) * WATER_KG_PER_L;
    double meant = wortKg * plato / 100 / extractKg;
    lost.says(
        "efficiency",
        meant > 1
            ? "The grist holds less extract than length and strength ask for; 100 % is written."
            : "Is what length, strength and grist of the recipe mean together.");
    return Math.clamp(meant, 0, 1);
  }

  private void aims() {
    Aim aim = recipe.aim();
    Elsewhere elsewhere = recipe.elsewhere();
    aim.strengthPlato()
        .ifPresent(g -> out.set("original_gravity", JsonAmount.of(g, lost, "original_gravity")));
    if (elsewhere.finalPlato().isPresent()) {
      Unit plato = Unit.known(Quantity.GRAVITY, "°P");
      Entered last = Entered.of(elsewhere.finalPlato().getAsDouble(), plato);
      out.set("final_gravity", JsonAmount.of(last, lost, "final_gravity"));
    }
    aim.bitternessMgPerL()
        .ifPresent(
            wanted -> {
              ObjectNode estimate = out.putObject("ibu_estimate");
              estimate.put("method", "Other");
              estimate.set("value", JsonAmount.of(wanted, lost, "ibu_estimate"));
            });
    if (elsewhere.colourEbc().isPresent()) {
      Unit ebc = Unit.known(Quantity.COLOUR, "EBC");
      out.set(
          "color_estimate",
          JsonAmount.of(
              Entered.of(elsewhere.colourEbc().getAsDouble(), ebc), lost, "color_estimate"));
    }
    if (aim.into() != Aim.Into.FERMENTER) {
      lost.says(
          "batch_size",
          "Is the volume into the fermenter in the standard; the recipe means that "
              + aim.into().words()
              + ".");
    }
    if (aim.colourEbc().isPresent()) {
      lost.says("colour", "The colour that is wanted has no place in the standard.");
    }
    if (!aim.doneBy().isEmpty()) {
      lost.says("done by", "When the brew day is to be done has no place in the standard.");
    }
    if (!aim.readyBy().isEmpty()) {
      lost.says("ready by", "When the beer is wanted has no place in the standard.");
    }
  }

  private void pack() {
    Pack pack = recipe.pack();
    double volumes = pack.carbonationRatio().inside();
    out.put("carbonation", JsonAmount.rounded(volumes));
    ObjectNode packaging = out.putObject("packaging");
    packaging.put("name", pack.kind().words());
    ObjectNode vessel = packaging.putArray("packaging_vessels").addObject();
    vessel.put("name", pack.kind().words());
    vessel.put(
        "type",
        switch (pack.kind()) {
          case KEG -> "keg";
          case BOTTLE -> "bottle";
          case CASK -> "cask";
        });
    vessel.put("carbonation", JsonAmount.rounded(volumes));
    if (!pack.carbonationRatio().unit().symbol().equals("vol")) {
      lost.says(
          "carbonation", "Is written in volumes, as a bare number, as the standard wants it.");
    }
  }

  private void withoutPlace() {
    if (!recipe.wanted().isEmpty() && !out.has("style")) {
      lost.says("wanted", "The beer in your own words has no place in the standard.");
    }
    if (recipe.invented()) {
      lost.says("invented", "That the recipe is made up has no place in the standard.");
    }
    if (!recipe.elsewhere().bitternessMethod().isEmpty()
        && !recipe.elsewhere().bitternessMethod().equals("Other")) {
      lost.says(
          "ibu_estimate",
          "Was by "
              + recipe.elsewhere().bitternessMethod()
              + "; written as 'Other', since it is"
              + " worked out otherwise here.");
    }
    if (recipe.elsewhere().evaporationLPerHr().isPresent()) {
      lost.says("equipment", "What their kettle drives off is not written.");
    }
    for (Map.Entry<String, String> kept : new TreeMap<>(recipe.kept()).entrySet()) {
      if (!Kept.written(kept.getKey(), recipe.kept())) {
        lost.says(kept.getKey(), "Was kept from another file; it is not written.");
      }
    }
  }
}
