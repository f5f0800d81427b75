package gylebook.science;

import gylebook.units.AnyUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/// Doses for a wanted liquor, in whole steps of the scale: the one place that solves for them.
///
/// Ions and the straight-buffered pH are linear in the doses, so the nearest liquor is a bounded
/// least-squares problem: `min sum ((A x + b - wanted)/scale)^2, x >= 0` (see [DoseLine]). Its
/// answer is put on the steps of the scale (see [WholeSteps]), and from there all doses that could
/// come nearer still are gone through (see [StepSearch]); what can be left out for nearly the same
/// liquor is left out.
@AnyUnit("columns of ions and a pH, and doses in steps of any scale")
public final class LiquorDoses {
  // Two mg/L on one ion: a tap wanders by more, and then a salt less to weigh is the better way.
  private static final double SPARED_REGRET = 0.04;
  // The pH bends a little with the acid: it is taken as straight where the doses are, so again.
  private static final int MOST_LINES = 4;

  private final LiquorRegret wish;
  private final Function<double[], LiquorLevels> held;
  private final int houseCount;

  private LiquorDoses(LiquorLevels wanted, int houseCount, Function<double[], LiquorLevels> held) {
    this.held = held;
    this.houseCount = houseCount;
    this.wish = new LiquorRegret(wanted, held.apply(new double[houseCount]));
  }

  /// The steps of each thing in the house that come nearest to what is wanted.
  ///
  /// @param wanted NaN where it does not matter
  /// @param houseCount how many things there are to add
  /// @param held what the liquor holds with so many steps of each; nearly a straight line
  public static double[] stepCounts(
      LiquorLevels wanted, int houseCount, Function<double[], LiquorLevels> held) {
    LiquorDoses doses = new LiquorDoses(wanted, houseCount, held);
    List<Integer> all = IntStream.range(0, houseCount).boxed().toList();
    double[] best = doses.nearest(all, Double.POSITIVE_INFINITY);
    Optional<double[]> fewer = Optional.of(best);
    while (fewer.isPresent()) {
      best = fewer.get();
      fewer = doses.fewer(best);
    }
    return best;
  }

  /// One thing less to weigh, where that is hardly further off.
  private Optional<double[]> fewer(double[] best) {
    double mostRegret = regret(best) + SPARED_REGRET;
    List<Integer> used = IntStream.range(0, best.length).filter(i -> best[i] > 0).boxed().toList();
    return used.stream()
        .map(spared -> nearest(used.stream().filter(i -> !i.equals(spared)).toList(), mostRegret))
        .filter(doses -> regret(doses) < mostRegret)
        .min(Comparator.comparingDouble(this::regret));
  }

  /// The best doses of these things; any, where even the best cannot be below the most regret.
  private double[] nearest(List<Integer> house, double mostRegret) {
    double[] none = new double[houseCount];
    if (house.isEmpty()) {
      return none;
    }
    double[] relaxed = DoseLine.at(none, house, wish, held).relaxed();
    double[] best = WholeSteps.near(spread(relaxed, house), house, this::regret);
    for (int line = 0; line < MOST_LINES; line++) {
      double[] from = best;
      best = searched(best, house, mostRegret);
      if (Arrays.equals(from, best)) {
        break;
      }
    }
    return best;
  }

  private double[] searched(double[] from, List<Integer> house, double mostRegret) {
    double[] best = from;
    for (DoseLine line : DoseLine.at(from, house, wish, held).both()) {
      StepSearch.Bowl bowl = line.bowl(regret(best));
      if (bowl.floor() < mostRegret) {
        double[] good = best;
        double[] packed = house.stream().mapToDouble(i -> good[i]).toArray();
        best = spread(StepSearch.nearest(bowl, packed, x -> regret(spread(x, house))), house);
      }
    }
    return best;
  }

  private double[] spread(double[] packed, List<Integer> house) {
    double[] stepCounts = new double[houseCount];
    for (int j = 0; j < packed.length; j++) {
      stepCounts[house.get(j)] = packed[j];
    }
    return stepCounts;
  }

  private double regret(double[] stepCounts) {
    return wish.of(held.apply(stepCounts).column(), stepCounts);
  }
}
