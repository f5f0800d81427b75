package gylebook.interchange;

import gylebook.recipe.Aim;
import gylebook.recipe.Analysis;
import gylebook.recipe.Boil;
import gylebook.recipe.Elsewhere;
import gylebook.recipe.Ferment;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.recipe.Stand;
import gylebook.recipe.Yeast;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/// Recipes drawn from a seed: every kind, every unit, nothing and little, words of all sorts.
final class InventedRecipes {
  private static final List<String> WORDS =
      List.of(
          "pale", "Weißbräu", "öl № 7", "a \"quoted\" word", "x", "two\r\nlines", "日本の麦酒", "&<>");

  private final RandomGenerator luck;

  private InventedRecipes(RandomGenerator luck) {
    this.luck = luck;
  }

  /// Tries a law on many seeded recipes; a failure names its seed.
  static void each(int count, Consumer<Recipe> law) {
    for (long seed = 1; seed <= count; seed++) {
      RandomGenerator luck = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
      try {
        law.accept(new InventedRecipes(luck).recipe());
      } catch (AssertionError | RuntimeException failure) {
        throw new AssertionError("seed " + seed + ": " + failure.getMessage(), failure);
      }
    }
  }

  private Recipe recipe() {
    List<Stand> stands = list(2, () -> new Stand(celsius(50, 94), time()));
    Entered boil = of(luck.nextInt(20, 121), Quantity.TIME, "min");
    return new Recipe(
        word(),
        "",
        luck.nextBoolean(),
        new Aim(
            any(Quantity.VOLUME, 5, 60),
            luck.nextBoolean() ? Aim.Into.FERMENTER : Aim.Into.KEG,
            maybe(() -> any(Quantity.GRAVITY, 6, 24)),
            maybe(() -> any(Quantity.BITTERNESS, 0, 90)),
            ""),
        grist(),
        new Liquor(word(), new Liquor.Ions(ion(), ion(), ion(), ion(), ion(), ion()), salts()),
        list(
            3,
            () ->
                new Rest(
                    luck.nextBoolean() ? "" : word(),
                    celsius(40, 78),
                    time(),
                    maybe(() -> of(luck.nextInt(1, 40), Quantity.TIME, "min")))),
        new Boil(boil, Optional.empty(), Optional.empty()),
        stands,
        list(5, () -> hop(boil, stands.size())),
        list(3, () -> new Other(word(), "spice", amount(), when(boil, stands.size()))),
        new Yeast(
            word(),
            pick(List.of("dry", "liquid", "slant", "culture", "dregs")),
            luck.nextBoolean() ? of(luck.nextInt(1, 5), Quantity.NUMBER, "") : amount(),
            maybe(() -> of(luck.nextInt(60, 96), Quantity.SHARE, "%")),
            celsius(8, 30)),
        new Ferment(
            list(
                3,
                () ->
                    new Ferment.Step(
                        word(), celsius(2, 30), celsius(2, 30), days(), luck.nextBoolean()))),
        new Pack(pick(List.of(Pack.Kind.values())), any(Quantity.CARBONATION, 0.8, 4.8)),
        luck.nextBoolean() ? "" : word(),
        Elsewhere.silent(),
        Map.of());
  }

  private List<Goods> grist() {
    List<Goods> grist = new ArrayList<>();
    int count = luck.nextInt(0, 5);
    for (int i = 0; i < count; i++) {
      Analysis analysis =
          new Analysis(
              luck.nextInt(0, 12) / 100.0,
              luck.nextInt(50, 101) / 100.0,
              0.01,
              luck.nextInt(0, 1500),
              0,
              true);
      grist.add(
          new Goods(
              word(),
              "lot " + i,
              pick(List.of(Goods.Kind.values())),
              any(Quantity.MASS, 0, 9),
              analysis,
              pick(List.of(Goods.Use.values()))));
    }
    return grist;
  }

  private List<Liquor.Addition> salts() {
    return list(
        3,
        () -> {
          Liquor.Agent agent = pick(List.of(Liquor.Agent.values()));
          return new Liquor.Addition(
              agent.words(),
              agent,
              luck.nextBoolean() ? any(Quantity.SMALL_MASS, 0, 20) : any(Quantity.VOLUME, 0, 0.05),
              pick(List.of(Liquor.Into.values())));
        });
  }

  private Hop hop(Entered boil, int stands) {
    return new Hop(
        word(),
        luck.nextBoolean() ? "" : "lot",
        pick(List.of(Hop.Form.values())),
        any(Quantity.SMALL_MASS, 0, 200),
        of(luck.nextInt(0, 200) / 10.0, Quantity.SHARE, "%"),
        when(boil, stands));
  }

  private Hop.When when(Entered boil, int stands) {
    return switch (luck.nextInt(0, 6)) {
      case 0 -> new Hop.When.InMash();
      case 1 -> new Hop.When.FirstWort();
      case 2 -> new Hop.When.FlameOut();
      case 3 -> new Hop.When.Dry(days(), days());
      case 4 -> stands == 0 ? new Hop.When.FlameOut() : new Hop.When.AtStand(luck.nextInt(stands));
      default ->
          new Hop.When.InBoil(of(luck.nextInt(1, (int) boil.inside() + 1), Quantity.TIME, "s"));
    };
  }

  private Entered amount() {
    return luck.nextBoolean() ? any(Quantity.MASS, 0, 0.2) : any(Quantity.VOLUME, 0, 0.5);
  }

  private Entered time() {
    return of(luck.nextInt(0, 7200), Quantity.TIME, "s");
  }

  private Entered days() {
    return of(luck.nextInt(0, 30), Quantity.TIME, "d");
  }

  private Entered celsius(double least, double most) {
    return any(Quantity.TEMPERATURE, least, most);
  }

  private double ion() {
    return luck.nextInt(0, 4000) / 10.0;
  }

  /// An amount in any unit of its quantity, whether the standard knows that unit or not.
  private Entered any(Quantity quantity, double least, double most) {
    Unit unit = pick(quantity.units());
    double inside = least + (most - least) * luck.nextInt(0, 1001) / 1000;
    return new Entered(inside, unit, unit.shown(inside));
  }

  private static Entered of(double value, Quantity quantity, String symbol) {
    return Entered.of(value, Unit.known(quantity, symbol));
  }

  private String word() {
    return pick(WORDS);
  }

  private <T> T pick(List<T> things) {
    return things.get(luck.nextInt(things.size()));
  }

  private <T> Optional<T> maybe(Supplier<T> thing) {
    return luck.nextBoolean() ? Optional.of(thing.get()) : Optional.empty();
  }

  private <T> List<T> list(int most, Supplier<T> thing) {
    List<T> list = new ArrayList<>();
    int count = luck.nextInt(0, most + 1);
    for (int i = 0; i < count; i++) {
      list.add(thing.get());
    }
    return list;
  }
}
