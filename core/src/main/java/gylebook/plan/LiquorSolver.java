package gylebook.plan;

import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.science.LiquorDoses;
import gylebook.science.LiquorLevels;
import gylebook.simulate.Dose;
import gylebook.simulate.LiquorLook;
import gylebook.simulate.Settings;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/// Finds the salts and the acid for a wanted liquor and mash pH, from what is in the house.
///
/// [LiquorDoses] does the solving; here stand the recipe, its mash and its pH. The mash liquor and
/// the liquor held back for after the mash are two problems: one has a pH, the other only its
/// alkalinity to lose.
@AnyUnit("columns of ions, pH and doses")
public final class LiquorSolver {
  // Share of the alkalinity that is gone at pH 5.40 (carbonate equilibria at 25 C).
  private static final double CONSUMED_FRAC = 0.9;
  private static final double TOP_UP_PH = 5.4;
  private static final double LEAST_TOP_UP_L = 0.05;
  private static final double FINEST = 1e6;

  private final Recipe recipe;
  private final Settings settings;
  private final LiquorLevels wanted;
  private final List<Stock> house;
  private final double bicarbonateMgPerL;

  private LiquorSolver(Recipe recipe, Settings settings, LiquorLevels wanted, List<Stock> house) {
    this.recipe = recipe;
    this.settings = settings;
    this.wanted = wanted;
    this.house = house;
    this.bicarbonateMgPerL = recipe.liquor().ions().bicarbonateMgPerL();
  }

  /// One thing in the house that can be added.
  ///
  /// @param name what the packet says; an acid's strength is read off it
  /// @param agent what it is
  /// @param stepNumber the least that can be told apart: g on the scale, mL for an acid
  public record Stock(String name, Liquor.Agent agent, double stepNumber) {
    /// Refuses what has no chemistry and a scale without steps.
    public Stock {
      if (agent == Liquor.Agent.UNKNOWN || !(stepNumber > 0)) {
        throw new IllegalArgumentException(
            name + " is " + agent.words() + " in steps of " + stepNumber + "; it cannot be dosed.");
      }
    }

    boolean acid() {
      return agent == Liquor.Agent.LACTIC_ACID || agent == Liquor.Agent.PHOSPHORIC_ACID;
    }
  }

  /// What was found.
  ///
  /// @param additions to weigh, for the mash and for the liquor held back (into the kettle)
  /// @param mash ions of the mash liquor with them
  /// @param whole ions of all liquor with them
  /// @param mashPh pH of the mash with them, no band
  /// @param missed what cannot be reached with what is in the house, in words
  public record Treatment(
      List<Liquor.Addition> additions,
      Liquor.Ions mash,
      Liquor.Ions whole,
      double mashPh,
      List<List<Note>> missed) {
    /// Copies the lists.
    public Treatment {
      additions = List.copyOf(additions);
      missed = List.copyOf(missed);
    }
  }

  /// Finds the doses.
  ///
  /// @param recipe its liquor is the source; additions in it are left out
  /// @param settings litres of mash and held-back liquor, scale of the grist
  /// @param wanted what is wanted
  /// @param house what can be added, and how finely
  public static Treatment solved(
      Recipe recipe, Settings settings, LiquorLevels wanted, List<Stock> house) {
    Liquor source = new Liquor(recipe.liquor().name(), recipe.liquor().source(), List.of());
    Recipe plain = recipe.withLiquor(source);
    return new LiquorSolver(plain, settings, wanted, List.copyOf(house)).treatment();
  }

  private Treatment treatment() {
    List<Liquor.Addition> additions = new ArrayList<>(mashAdditions());
    if (settings.topUpL() > LEAST_TOP_UP_L) {
      additions.addAll(topUpAdditions(additions));
    }
    LiquorLook look = look(additions);
    return new Treatment(additions, look.mash(), look.whole(), look.mashPh(), missed(look));
  }

  private LiquorLook look(List<Liquor.Addition> additions) {
    return LiquorLook.of(recipe.withLiquor(recipe.liquor().withAdditions(additions)), settings);
  }

  private List<Liquor.Addition> mashAdditions() {
    return additions(
        LiquorDoses.stepCounts(wanted, house.size(), counts -> levels(look(additions(counts)))));
  }

  private static LiquorLevels levels(LiquorLook look) {
    Liquor.Ions mash = look.mash();
    return new LiquorLevels(
        mash.calciumMgPerL(),
        mash.magnesiumMgPerL(),
        mash.sodiumMgPerL(),
        mash.chlorideMgPerL(),
        mash.sulphateMgPerL(),
        mash.bicarbonateMgPerL(),
        look.mashPh());
  }

  private List<Liquor.Addition> additions(double[] stepCounts) {
    List<Liquor.Addition> additions = new ArrayList<>();
    for (int i = 0; i < stepCounts.length; i++) {
      if (stepCounts[i] > 0) {
        additions.add(addition(house.get(i), stepCounts[i], Liquor.Into.MASH));
      }
    }
    return additions;
  }

  /// Held-back liquor gets the mash's salts by its share of the litres, and acid for its
  /// alkalinity.
  private List<Liquor.Addition> topUpAdditions(List<Liquor.Addition> mash) {
    double shareRatio = settings.topUpL() / settings.liquorL();
    List<Liquor.Addition> additions = new ArrayList<>();
    for (Stock stock : house) {
      double stepCount =
          stock.acid() ? 0 : Math.rint(shareRatio * amount(mash, stock) / stock.stepNumber());
      if (stepCount > 0 && !raisesAlkalinity(stock)) {
        additions.add(addition(stock, stepCount, Liquor.Into.KETTLE));
      }
    }
    double alkaliMeq = bicarbonateMgPerL / 61.017 * CONSUMED_FRAC * settings.topUpL();
    house.stream()
        .filter(Stock::acid)
        .findFirst()
        .ifPresent(
            acid -> {
              double perStepMeq = Dose.acidMeq(addition(acid, 1, Liquor.Into.KETTLE), TOP_UP_PH);
              double stepCount = Math.floor(alkaliMeq / perStepMeq);
              if (stepCount > 0) {
                additions.add(addition(acid, stepCount, Liquor.Into.KETTLE));
              }
            });
    return additions;
  }

  static boolean raisesAlkalinity(Stock stock) {
    return switch (stock.agent()) {
      case BAKING_SODA, CHALK, SLAKED_LIME -> true;
      default -> false;
    };
  }

  private static double amount(List<Liquor.Addition> additions, Stock stock) {
    return additions.stream()
        .filter(addition -> addition.name().equals(stock.name()))
        .mapToDouble(addition -> addition.amountNumber().value())
        .sum();
  }

  private static Liquor.Addition addition(Stock stock, double stepCount, Liquor.Into into) {
    // Steps of a tenth do not add up exactly; nobody weighs the rest.
    double amount = Math.rint(stepCount * stock.stepNumber() * FINEST) / FINEST;
    Unit unit =
        stock.acid() ? Unit.known(Quantity.VOLUME, "mL") : Unit.known(Quantity.SMALL_MASS, "g");
    String digits = BigDecimal.valueOf(amount).stripTrailingZeros().toPlainString();
    Entered entered = new Entered(unit.toInside(amount), unit, digits + " " + unit.symbol());
    return new Liquor.Addition(stock.name(), stock.agent(), entered, into);
  }

  private List<List<Note>> missed(LiquorLook look) {
    Shortfall shortfall = new Shortfall(look(List.of()), house);
    return shortfall.of(look, wanted);
  }
}
