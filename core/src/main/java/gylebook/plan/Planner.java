package gylebook.plan;

import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.simulate.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/// Recipe and rig in; how to brew it and what will come of it, or what stands in the way.
public final class Planner {
  /// Enough days for a band that no longer moves on the page.
  public static final int USUAL_DAYS = 1000;

  /// The seed of every plan, so that two plans differ by what was changed and not by luck.
  public static final long USUAL_SEED = 20;

  private static final double LEAST_LIQUOR_L_PER_KG = 2.5;
  private static final int HALVINGS = 7;
  private static final double SMALLEST_FRAC = 0.2;

  private final Recipe recipe;
  private final Rig rig;
  private final int days;
  private final long seed;
  private final Optional<Before> before;
  private final BooleanSupplier stop;
  private final IntConsumer progress;

  private Planner(
      Recipe recipe,
      Rig rig,
      int days,
      long seed,
      Optional<Before> before,
      BooleanSupplier stop,
      IntConsumer progress) {
    this.recipe = recipe;
    this.rig = rig;
    this.days = days;
    this.seed = seed;
    this.before = before;
    this.stop = stop;
    this.progress = progress;
  }

  /// How a gyle was planned before it was edited.
  ///
  /// @param recipe as it was written then
  /// @param rig as it was then
  /// @param plan that came of it
  public record Before(Recipe recipe, Rig rig, Plan plan) {}

  /// Plans a gyle.
  ///
  /// @param recipe what is wanted
  /// @param rig on what
  /// @param days how many days are simulated for the bands
  /// @param seed of their luck
  /// @param stop asked now and then; when it says so, CancellationException is thrown
  /// @param progress told how many days are done
  public static Planned plan(
      Recipe recipe, Rig rig, int days, long seed, BooleanSupplier stop, IntConsumer progress) {
    return planned(recipe, rig, days, seed, Optional.empty(), stop, progress);
  }

  /// A quick look at a gyle that was just edited. By how much the middle of its days lies off the
  /// day without luck is taken from the plan before, which saves a quarter of a thousand days.
  ///
  /// @param before how it was planned before
  /// @param stop asked now and then; when it says so, CancellationException is thrown
  public static Planned look(
      Recipe recipe, Rig rig, int days, long seed, Before before, BooleanSupplier stop) {
    return planned(recipe, rig, days, seed, Optional.of(before), stop, _ -> {});
  }

  private static Planned planned(
      Recipe recipe,
      Rig rig,
      int days,
      long seed,
      Optional<Before> before,
      BooleanSupplier stop,
      IntConsumer progress) {
    Optional<Planned.Impossible> refused = Plannable.refused(recipe);
    if (refused.isPresent()) {
      return refused.get();
    }
    return new Planner(Rescale.aimed(recipe), rig, days, seed, before, stop, progress).planned();
  }

  /// The day that a plan is of, from the recipe as it was written and the settings that were found.
  public static BrewDay day(Recipe recipe, Rig rig, Settings settings) {
    return new BrewDay(Rescale.aimed(recipe), rig, settings);
  }

  private Planned planned() {
    double lengthL = recipe.aim().lengthL().inside();
    Optional<Solver.Found> near = before.flatMap(one -> near(lengthL, one));
    if (near.isPresent()) {
      return new Planned.Feasible(planFor(near.get()));
    }
    Solver.Found found = solved(lengthL, Lean.NONE);
    Optional<Limits.Bound> bound = Limits.of(recipe, rig, found);
    if (bound.isEmpty()) {
      return new Planned.Feasible(planFor(aimed(lengthL, found)));
    }
    Optional<Plan> nearest =
        bound.get().less()
            ? nearest(lengthL)
            : bound.get().key().equals(Limits.BOILS_TOO_COOL) ? cooler() : Optional.empty();
    String maybe =
        bound.get().less() && nearest.isEmpty()
            ? bound.get().maybe() + " A fifth of it, or a quarter of the kettle, is still too much."
            : bound.get().maybe();
    return new Planned.Impossible(bound.get().key(), bound.get().says(), maybe, nearest);
  }

  /// The settings near those of the plan before, where they reach what is wanted.
  private Optional<Solver.Found> near(double lengthL, Before one) {
    return Optional.of(solved(lengthL, Lean.of(one)))
        .filter(Solver.Found::met)
        .filter(found -> Limits.of(recipe, rig, found).isEmpty());
  }

  /// The plan with rests as hot as can be held here.
  private Optional<Plan> cooler() {
    Planner cooler =
        new Planner(Limits.cooled(recipe, rig), rig, days, seed, before, stop, progress);
    return switch (cooler.planned()) {
      case Planned.Feasible feasible -> Optional.of(feasible.plan());
      case Planned.Impossible impossible -> impossible.nearest();
    };
  }

  /// Aims the middle of the days in place of the day without luck, where that still fits.
  private Solver.Found aimed(double lengthL, Solver.Found found) {
    Lean lean = before.map(Lean::of).orElseGet(() -> Lean.of(found.day(), seed, stop));
    Solver.Found aimed = solved(lengthL, lean);
    return Limits.of(recipe, rig, aimed).isEmpty() ? aimed : found;
  }

  /// Solves; when the mash stands too high, liquor is held back for after the bag.
  private Solver.Found solved(double lengthL, Lean lean) {
    Optional<Settings> start = before.map(one -> one.plan().settings());
    Solver.Found found = new Solver(recipe, rig, lengthL, 0, lean, start).found();
    double topUpL = 0;
    for (int i = 0; i < 6 && Limits.overL(rig, found) > 0.01; i++) {
      double grainKg = grainKg(found.day());
      double leastL = LEAST_LIQUOR_L_PER_KG * grainKg;
      double spareL = found.day().settings().liquorL() - leastL;
      double moreL = Math.min(Limits.overL(rig, found) * 1.02 + 0.02, spareL);
      if (moreL <= 0.01) {
        break;
      }
      topUpL += moreL;
      found = new Solver(recipe, rig, lengthL, topUpL, lean, start).found();
    }
    return found;
  }

  private static double grainKg(BrewDay day) {
    double gristKg =
        day.recipe().grist().stream()
            .filter(line -> line.kind().mashed())
            .mapToDouble(line -> line.massKg().inside())
            .sum();
    return gristKg * day.settings().gristFactor();
  }

  /// The plan of the largest length that can be brewed.
  private Optional<Plan> nearest(double lengthL) {
    // However much is asked, what fits is looked for from a quarter of the kettle up.
    double quarterFrac = rig.kettle().brimL() / 4 / lengthL;
    double lowFrac = Math.min(SMALLEST_FRAC, quarterFrac);
    double highFrac = 1;
    Solver.Found best = solved(lowFrac * lengthL, Lean.NONE);
    if (Limits.of(recipe, rig, best).isPresent()) {
      return Optional.empty();
    }
    for (int i = 0; i < HALVINGS; i++) {
      double midFrac = (lowFrac + highFrac) / 2;
      Solver.Found tried = solved(midFrac * lengthL, Lean.NONE);
      if (Limits.of(recipe, rig, tried).isEmpty()) {
        best = tried;
        lowFrac = midFrac;
      } else {
        highFrac = midFrac;
      }
    }
    return Optional.of(planFor(aimed(lowFrac * lengthL, best)));
  }

  private Plan planFor(Solver.Found found) {
    if (stop.getAsBoolean()) {
      throw new CancellationException("overtaken");
    }
    BrewDay day = found.day();
    Ensemble ensemble =
        Ensemble.of(day, seed, days, stop, progress)
            .orElseThrow(() -> new CancellationException("overtaken"));
    Forecast forecast = Forecasting.of(day, ensemble, seed);
    Settings settings = day.settings();
    double fermenterL =
        forecast
            .figure("fermenterL")
            .map(figure -> figure.band().middle())
            .orElseGet(() -> found.out().at(Outcome.FERMENTER));
    double oxygenMgPerL = forecast.figure(ColdFigures.OXYGEN).orElseThrow().band().middle();
    return new Plan(
        scaled(settings),
        rig,
        settings,
        Steps.of(day, fermenterL, oxygenMgPerL),
        Slopes.of(day),
        forecast);
  }

  /// The recipe with the masses to weigh.
  private Recipe scaled(Settings settings) {
    List<Goods> grist = new ArrayList<>();
    for (Goods line : recipe.grist()) {
      grist.add(line.withMass(Scaling.times(line.massKg(), settings.gristFactor())));
    }
    List<Hop> hops = new ArrayList<>();
    for (Hop hop : recipe.hops()) {
      boolean dry = hop.when() instanceof Hop.When.Dry;
      hops.add(dry ? hop : hop.withMass(Scaling.times(hop.massG(), settings.hopFactor())));
    }
    return recipe.with(grist, hops);
  }
}
