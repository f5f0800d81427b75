package gylebook.testing;

import gylebook.recipe.Aim;
import gylebook.recipe.Boil;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Ferment;
import gylebook.recipe.Goods;
import gylebook.recipe.Liquor;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Yeast;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A recipe with nothing in it but a grist and a liquor, for tests of those.
public final class BareRecipe {
  private BareRecipe() {}

  /// Twenty litres of it, mashed at 66 C for an hour and boiled for one.
  public static Recipe of(List<Goods> grist, Liquor liquor) {
    Entered hour = Entered.of(60, Unit.known(Quantity.TIME, "min"));
    Entered litres = Entered.of(20, Unit.known(Quantity.VOLUME, "L"));
    return new Recipe(
        "bare",
        "",
        true,
        new Aim(litres, Aim.Into.FERMENTER, Optional.empty(), Optional.empty(), ""),
        grist,
        liquor,
        List.of(new Rest("", celsius(66), hour)),
        new Boil(hour, Optional.empty(), Optional.empty()),
        List.of(),
        List.of(),
        List.of(),
        new Yeast(
            "yeast", "dry", Entered.of(1, Quantity.NUMBER.inside()), Optional.empty(), celsius(19)),
        new Ferment(
            List.of(
                new Ferment.Step(
                    "",
                    celsius(19),
                    celsius(19),
                    Entered.of(10, Unit.known(Quantity.TIME, "d")),
                    false))),
        new Pack(Pack.Kind.KEG, Entered.of(2.3, Unit.known(Quantity.CARBONATION, "vol"))),
        "",
        Elsewhere.silent(),
        Map.of());
  }

  private static Entered celsius(double valueC) {
    return Entered.of(valueC, Unit.known(Quantity.TEMPERATURE, "°C"));
  }
}
