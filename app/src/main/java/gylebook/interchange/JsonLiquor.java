package gylebook.interchange;

import gylebook.recipe.Liquor;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Brewing water out of the open JSON standard.
@AnyUnit("ions as mg/L; ppm is taken as the same number")
final class JsonLiquor {
  private JsonLiquor() {}

  static Liquor liquor(JsonThing ingredients, List<Liquor.Addition> additions) {
    List<Waters.Part> parts = new ArrayList<>();
    for (JsonThing water : ingredients.things("water_additions")) {
      Optional<Entered> amount = water.amount("amount", Quantity.VOLUME);
      parts.add(
          new Waters.Part(
              water.words("name"), amount.map(Entered::inside).orElse(0.0), ions(water)));
      if (water.has("flouride") && water.has("fluoride")) {
        water.says(
            "flouride", "Is the old spelling of fluoride, which is there too and goes first.");
      }
    }
    return Waters.mixed(
        parts, additions, sentence -> ingredients.says("water_additions", sentence));
  }

  private static Liquor.Ions ions(JsonThing water) {
    return new Liquor.Ions(
        ion(water, "calcium"),
        ion(water, "magnesium"),
        ion(water, "sodium"),
        ion(water, "chloride"),
        ion(water, "sulfate"),
        ion(water, "bicarbonate"));
  }

  private static double ion(JsonThing water, String key) {
    Optional<Entered> amount = water.amount(key, Quantity.CONCENTRATION);
    if (amount.isEmpty()) {
      water.says(key, "Is not there; taken as none.");
      return 0;
    }
    if (amount.get().unit().symbol().equals("ppm")) {
      water.says("", "ppm is taken as mg/L: in water the same, at the strength of wort nearly.");
    }
    return amount.get().inside();
  }
}
