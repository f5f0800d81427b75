package gylebook.plan;

import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.science.WholeSteps;
import gylebook.simulate.Dose;
import gylebook.simulate.LiquorLook;
import gylebook.simulate.Settings;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.vector.constrained.ADMMQPOptimizer;
import org.hipparchus.optim.nonlinear.vector.constrained.LinearInequalityConstraint;
import org.hipparchus.optim.nonlinear.vector.constrained.QuadraticFunction;

/// Finds the salts and the acid for a wanted liquor and mash pH, from what is in the house.
///
/// Ions and the straight-buffered pH are linear in the doses, so the nearest liquor is a bounded
/// least-squares problem: `min sum ((A x + b - wanted)/scale)^2, x >= 0`, a quadratic program. What
/// it gives is put on the steps of the scale, and the steps are then walked one dose at a time
/// until none improves; what can be left out for nearly the same liquor is left out. The mash
/// liquor and the liquor held back for after the mash are two problems: one has a pH, the other
/// only its alkalinity to lose.
@AnyUnit("columns of ions, pH and doses")
public final class LiquorSolver {
  // How far off counts as one unit of regret: a tenth of a usual ion, a twentieth of a pH.
  private static final double ION_SCALE_MG_PER_L = 10;
  private static final double PH_SCALE = 0.03;
  // Of an ion that nobody asked for, three hundred mg/L are worth ten of one that is wanted.
  private static final double UNASKED_SCALE_MG_PER_L = 300;
  private static final double BEYOND_SCALE_MG_PER_L = 1;
  // Where brewing liquors usually end (common practice, no source).
  private static final double MOST_CALCIUM_MG_PER_L = 200;
  private static final double MOST_MAGNESIUM_MG_PER_L = 30;
  private static final double MOST_SODIUM_MG_PER_L = 100;
  private static final double MOST_CHLORIDE_MG_PER_L = 250;
  private static final double MOST_SULPHATE_MG_PER_L = 400;
  // A dose in itself is a small nuisance: of two ways, the one with less to weigh.
  private static final double DOSE_REGRET = 1e-4;
  // Two mg/L on one ion: a tap wanders by more, and then a salt less to weigh is the better way.
  private static final double SPARED_REGRET = 0.04;
  private static final int MOST_ITERATIONS = 2000;
  // Share of the alkalinity that is gone at pH 5.40 (carbonate equilibria at 25 C).
  private static final double CONSUMED_FRAC = 0.9;
  private static final double TOP_UP_PH = 5.4;
  private static final double LEAST_TOP_UP_L = 0.05;
  private static final double FINEST = 1e6;

  private final Recipe recipe;
  private final Settings settings;
  private final Wanted wanted;
  private final List<Stock> house;
  private final double bicarbonateMgPerL;

  private LiquorSolver(Recipe recipe, Settings settings, Wanted wanted, List<Stock> house) {
    this.recipe = recipe;
    this.settings = settings;
    this.wanted = wanted;
    this.house = house;
    this.bicarbonateMgPerL = recipe.liquor().ions().bicarbonateMgPerL();
  }

  /// What is wanted; NaN where it does not matter.
  ///
  /// @param calciumMgPerL Ca
  /// @param magnesiumMgPerL Mg
  /// @param sodiumMgPerL Na
  /// @param chlorideMgPerL Cl
  /// @param sulphateMgPerL SO4
  /// @param mashPh pH of the mash, read cold
  public record Wanted(
      double calciumMgPerL,
      double magnesiumMgPerL,
      double sodiumMgPerL,
      double chlorideMgPerL,
      double sulphateMgPerL,
      double mashPh) {}

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
      Recipe recipe, Settings settings, Wanted wanted, List<Stock> house) {
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
    Doses doses = new Doses(this, WholeSteps.near(relaxed(), this::regret));
    Optional<Doses> fewer = Optional.of(doses);
    while (fewer.isPresent()) {
      doses = fewer.get();
      fewer = doses.fewer();
    }
    return doses.solver().additions(doses.stepCounts());
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

  /// Doses of what a house holds.
  @SuppressWarnings("ArrayRecordComponent") // passed on, never compared
  private record Doses(LiquorSolver solver, double[] stepCounts) {
    private double regret() {
      return solver.regret(stepCounts);
    }

    /// One thing less to weigh, where that is hardly further off.
    Optional<Doses> fewer() {
      double mostRegret = regret() + SPARED_REGRET;
      return IntStream.range(0, stepCounts.length)
          .filter(i -> stepCounts[i] > 0)
          .mapToObj(this::without)
          .filter(doses -> doses.regret() < mostRegret)
          .min(Comparator.comparingDouble(Doses::regret));
    }

    private Doses without(int number) {
      List<Stock> less = new ArrayList<>(solver.house);
      less.remove(number);
      LiquorSolver other = new LiquorSolver(solver.recipe, solver.settings, solver.wanted, less);
      return new Doses(other, WholeSteps.near(other.relaxed(), other::regret));
    }
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

  /// How far a liquor is from the wanted one, each row in its own regret.
  private double[] residuals(double[] stepCounts) {
    LiquorLook look = look(additions(stepCounts));
    Liquor.Ions got = look.mash();
    Liquor.Ions bare = recipe.liquor().ions();
    return new double[] {
      off(got.calciumMgPerL(), wanted.calciumMgPerL(), bare.calciumMgPerL(), MOST_CALCIUM_MG_PER_L),
      off(
          got.magnesiumMgPerL(),
          wanted.magnesiumMgPerL(),
          bare.magnesiumMgPerL(),
          MOST_MAGNESIUM_MG_PER_L),
      off(got.sodiumMgPerL(), wanted.sodiumMgPerL(), bare.sodiumMgPerL(), MOST_SODIUM_MG_PER_L),
      off(
          got.chlorideMgPerL(),
          wanted.chlorideMgPerL(),
          bare.chlorideMgPerL(),
          MOST_CHLORIDE_MG_PER_L),
      off(
          got.sulphateMgPerL(),
          wanted.sulphateMgPerL(),
          bare.sulphateMgPerL(),
          MOST_SULPHATE_MG_PER_L),
      Double.isNaN(wanted.mashPh()) || Double.isNaN(look.mashPh())
          ? 0
          : (look.mashPh() - wanted.mashPh()) / PH_SCALE
    };
  }

  /// An ion that nobody asked for may rise a little for the sake of the others, up to where brewing
  /// liquors usually end.
  private static double off(
      double gotMgPerL, double wantMgPerL, double bareMgPerL, double mostMgPerL) {
    if (!Double.isNaN(wantMgPerL)) {
      return (gotMgPerL - wantMgPerL) / ION_SCALE_MG_PER_L;
    }
    double beyondMgPerL = Math.max(0, gotMgPerL - Math.max(bareMgPerL, mostMgPerL));
    return (gotMgPerL - bareMgPerL) / UNASKED_SCALE_MG_PER_L + beyondMgPerL / BEYOND_SCALE_MG_PER_L;
  }

  private double regret(double[] stepCounts) {
    double sum = 0;
    for (double residual : residuals(stepCounts)) {
      sum += residual * residual;
    }
    for (double stepCount : stepCounts) {
      sum += stepCount > 0 ? DOSE_REGRET : 0;
    }
    return sum;
  }

  /// The doses, in steps, without the steps: a quadratic program with none below 0.
  private double[] relaxed() {
    int n = house.size();
    if (n == 0) {
      return new double[0];
    }
    double[] base = residuals(new double[n]);
    RealMatrix slopes = MatrixUtils.createRealMatrix(base.length, n);
    for (int i = 0; i < n; i++) {
      double[] one = new double[n];
      // A dose of ten steps: the slope is the same, and rounding smaller.
      one[i] = 10;
      double[] moved = residuals(one);
      for (int row = 0; row < base.length; row++) {
        slopes.setEntry(row, i, (moved[row] - base[row]) / 10);
      }
    }
    RealMatrix curve = slopes.transpose().multiply(slopes).scalarMultiply(2);
    for (int i = 0; i < n; i++) {
      curve.addToEntry(i, i, 1e-9);
    }
    RealVector slope =
        slopes.transpose().operate(MatrixUtils.createRealVector(base)).mapMultiply(2);
    double[] found =
        new ADMMQPOptimizer()
            .optimize(
                new MaxIter(MOST_ITERATIONS),
                new InitialGuess(new double[n]),
                new ObjectiveFunction(new QuadraticFunction(curve, slope, 0)),
                new LinearInequalityConstraint(
                    MatrixUtils.createRealIdentityMatrix(n),
                    MatrixUtils.createRealVector(new double[n])))
            .getX()
            .toArray();
    return Arrays.stream(found).map(x -> Math.max(0, x)).toArray();
  }

  private List<List<Note>> missed(LiquorLook look) {
    Shortfall shortfall = new Shortfall(look(List.of()), house);
    return shortfall.of(look, wanted);
  }
}
