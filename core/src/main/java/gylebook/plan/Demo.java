package gylebook.plan;

import gylebook.recipe.Aim;
import gylebook.recipe.Analysis;
import gylebook.recipe.Boil;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Ferment;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.recipe.Yeast;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Two made-up beers, for the first look and for practice.
@AnyUnit("small makers of amounts; the symbol beside each names the unit")
public final class Demo {
  private Demo() {}

  private static Entered of(double value, Quantity quantity, String symbol) {
    return Entered.of(value, Unit.known(quantity, symbol));
  }

  private static Entered kg(double value) {
    return of(value, Quantity.MASS, "kg");
  }

  private static Entered g(double value) {
    return of(value, Quantity.SMALL_MASS, "g");
  }

  private static Entered litres(double value) {
    return of(value, Quantity.VOLUME, "L");
  }

  private static Entered celsius(double value) {
    return of(value, Quantity.TEMPERATURE, "°C");
  }

  private static Entered minutes(double value) {
    return of(value, Quantity.TIME, "min");
  }

  private static Entered days(double value) {
    return of(value, Quantity.TIME, "d");
  }

  private static Entered percent(double value) {
    return of(value, Quantity.SHARE, "%");
  }

  private static Goods malt(
      String name, Goods.Kind kind, double massNumber, double colourEbc, Analysis usual) {
    Analysis analysis =
        new Analysis(
            usual.moistureFrac(),
            usual.extractFrac(),
            usual.extractDoubtFrac(),
            colourEbc,
            0,
            false);
    return new Goods(name, "", kind, kg(massNumber), analysis, Goods.Use.MASH);
  }

  private static Hop hop(String name, double massNumber, double alphaNumber, Hop.When when) {
    return new Hop(name, "", Hop.Form.PELLET, g(massNumber), percent(alphaNumber), when);
  }

  /// A copper bitter of ordinary strength, for the household's kettle.
  public static Recipe copperBitter() {
    Goods.Kind base = Goods.Kind.BASE_MALT;
    Goods.Kind caramel = Goods.Kind.CARAMEL_MALT;
    return new Recipe(
        "October bitter",
        "dry, copper-coloured bitter",
        true,
        new Aim(
            litres(20),
            Aim.Into.FERMENTER,
            Optional.of(of(1.044, Quantity.GRAVITY, "SG")),
            Optional.of(of(32, Quantity.BITTERNESS, "IBU")),
            ""),
        List.of(
            malt("pale malt", base, 4.1, 5.5, base.usual()),
            malt("dark crystal malt", caramel, 0.3, 160, caramel.usual())),
        new Liquor(
            "filtered water",
            new Liquor.Ions(4, 1, 6, 6, 3, 12),
            List.of(
                new Liquor.Addition("gypsum", Liquor.Agent.GYPSUM, g(6), Liquor.Into.MASH),
                new Liquor.Addition(
                    "calcium chloride",
                    Liquor.Agent.CALCIUM_CHLORIDE_DIHYDRATE,
                    g(3),
                    Liquor.Into.MASH))),
        List.of(
            new Rest("", celsius(66), minutes(60)), new Rest("mash-out", celsius(76), minutes(10))),
        new Boil(minutes(60), Optional.empty(), Optional.empty()),
        List.of(new Stand(celsius(80), minutes(25))),
        List.of(
            hop("Goldings", 30, 5.2, new Hop.When.InBoil(minutes(60))),
            hop("Goldings", 20, 5.2, new Hop.When.InBoil(minutes(15))),
            hop("Goldings", 30, 5.2, new Hop.When.AtStand(0))),
        List.of(),
        new Yeast(
            "dry ale yeast", "dry", of(1, Quantity.NUMBER, ""), Optional.empty(), celsius(18)),
        new Ferment(List.of(new Ferment.Step("", celsius(18), celsius(21), days(10), true))),
        new Pack(Pack.Kind.KEG, of(2.2, Quantity.CARBONATION, "vol")),
        "",
        Elsewhere.silent(),
        Map.of());
  }

  /// A pale wheat beer, half the size, for the flat's kettle.
  public static Recipe wheatBeer() {
    Goods.Kind base = Goods.Kind.BASE_MALT;
    return new Recipe(
        "Window-sill wheat",
        "cloudy, pale wheat beer",
        true,
        new Aim(
            litres(10),
            Aim.Into.FERMENTER,
            Optional.of(of(1.046, Quantity.GRAVITY, "SG")),
            Optional.of(of(13, Quantity.BITTERNESS, "IBU")),
            ""),
        List.of(
            malt("wheat malt", base, 1.3, 4, base.usual()),
            malt("pilsner malt", base, 1.1, 3.5, base.usual())),
        new Liquor("tap water", new Liquor.Ions(38, 8, 12, 20, 30, 110), List.of()),
        List.of(
            new Rest("", celsius(65), minutes(60)), new Rest("mash-out", celsius(75), minutes(10))),
        new Boil(minutes(60), Optional.empty(), Optional.empty()),
        List.of(),
        List.of(hop("Hallertau", 12, 4.0, new Hop.When.InBoil(minutes(60)))),
        List.of(),
        new Yeast(
            "wheat-beer yeast", "dry", of(1, Quantity.NUMBER, ""), Optional.empty(), celsius(19)),
        new Ferment(List.of(new Ferment.Step("", celsius(19), celsius(21), days(9), true))),
        new Pack(Pack.Kind.BOTTLE, of(3.0, Quantity.CARBONATION, "vol")),
        "",
        Elsewhere.silent(),
        Map.of());
  }
}
