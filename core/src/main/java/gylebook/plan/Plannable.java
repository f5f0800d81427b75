package gylebook.plan;

import gylebook.recipe.Goods;
import gylebook.recipe.Recipe;
import gylebook.simulate.BrewDay;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Optional;

/// Whether a recipe says enough, and nothing beyond the models, to be brewed in thought at all.
@AnyUnit("masses and counts of lines")
final class Plannable {
  // The heat of malt and of its wetting is known up to here; malt comes with 3 to 6 %.
  private static final double MOST_MOISTURE_FRAC = 0.2;

  private Plannable() {}

  /// What stands in the way before anything is worked out.
  static Optional<Planned.Impossible> refused(Recipe recipe) {
    if (recipe.grist().isEmpty()) {
      return no("noGrist", "There is no malt in the recipe.", "Add a line of malt.");
    }
    if (recipe.grist().stream().noneMatch(line -> line.kind().mashed())) {
      return no(
          "noGrist",
          "Nothing in the recipe is mashed; a brew of extract and sugar alone is not forecast.",
          "Add a line of malt.");
    }
    if (!(inMashKg(recipe, true) > 0)) {
      return no("noGrist", "The malt of the recipe has no mass.", "Say how much malt goes in.");
    }
    if (recipe.grist().stream()
        .filter(line -> line.kind().mashed())
        .allMatch(line -> line.analysis().extractFrac() == 0)) {
      return no(
          "noExtract",
          "By its analysis the malt of the recipe gives no extract.",
          "Say what its maltster found; base malt gives about 80 % of its dry mass.");
    }
    if (!(recipe.aim().lengthL().inside() > 0)) {
      return Optional.of(
          impossible(
              "noLength",
              List.of(
                  Note.of("The recipe asks for ", "lengthL", recipe.aim().lengthL().inside()),
                  Note.words(".")),
              "Say how many litres you want."));
    }
    double wetFrac = moistureFrac(recipe);
    if (wetFrac > MOST_MOISTURE_FRAC) {
      return Optional.of(
          impossible(
              "mashTooWet",
              List.of(
                  Note.of("What goes into the mash is ", "moistureFrac", wetFrac),
                  Note.of(
                      " water before any liquor; a mash is forecast up to ",
                      "moistureFrac",
                      MOST_MOISTURE_FRAC),
                  Note.words(".")),
              "Put fruit into the boil or the fermenter; malt holds 3 to 6 %."));
    }
    return tooMany(recipe);
  }

  private static Optional<Planned.Impossible> tooMany(Recipe recipe) {
    Optional<Planned.Impossible> hops =
        tooMany("hops", recipe.hops().size(), "additions of hops", BrewDay.MOST_HOPS);
    Optional<Planned.Impossible> rests =
        tooMany("rests", recipe.rests().size(), "rests", BrewDay.MOST_RESTS);
    Optional<Planned.Impossible> stands =
        tooMany("stands", recipe.stands().size(), "stands", BrewDay.MOST_STANDS);
    return hops.or(() -> rests).or(() -> stands);
  }

  private static Optional<Planned.Impossible> tooMany(
      String key, int count, String what, int mostCount) {
    return count <= mostCount
        ? Optional.empty()
        : no(
            "tooMany." + key,
            "The recipe has " + count + " " + what + "; up to " + mostCount + " can be followed.",
            "Join those that lie close together.");
  }

  private static double inMashKg(Recipe recipe, boolean onlyMashed) {
    return recipe.grist().stream()
        .filter(line -> line.kind().mashed() || (!onlyMashed && line.use() == Goods.Use.MASH))
        .mapToDouble(line -> line.massKg().inside())
        .sum();
  }

  private static double moistureFrac(Recipe recipe) {
    double waterKg =
        recipe.grist().stream()
            .filter(line -> line.kind().mashed() || line.use() == Goods.Use.MASH)
            .mapToDouble(line -> line.massKg().inside() * line.analysis().moistureFrac())
            .sum();
    return waterKg / inMashKg(recipe, false);
  }

  private static Optional<Planned.Impossible> no(String key, String says, String maybe) {
    return Optional.of(impossible(key, List.of(Note.words(says)), maybe));
  }

  private static Planned.Impossible impossible(String key, List<Note> says, String maybe) {
    return new Planned.Impossible(key, says, maybe, Optional.empty());
  }
}
