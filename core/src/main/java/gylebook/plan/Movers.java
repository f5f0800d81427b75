package gylebook.plan;

import gylebook.rig.Origin;
import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Which uncertain numbers move a figure, read off the draws of the ensemble itself.
@AnyUnit("slopes of every figure")
final class Movers {
  private static final int MOST = 4;
  // With N days a share below about 4/N is noise.
  private static final double NOISE_DAYS = 4;

  private final Ensemble ensemble;

  Movers(Ensemble ensemble) {
    this.ensemble = ensemble;
  }

  /// The strongest movers of a column.
  List<Figure.Mover> of(double[] column) {
    double mean = Bands.mean(column);
    double least = Math.max(0.01, NOISE_DAYS / column.length);
    List<Figure.Mover> movers = new ArrayList<>();
    if (!Double.isFinite(mean)) {
      return movers;
    }
    for (int i = 0; i < ensemble.doubts().size(); i++) {
      double[] found = Bands.slopeAndShare(column, mean, ensemble.draws(i));
      if (found[1] > least) {
        String path = ensemble.doubts().get(i);
        movers.add(new Figure.Mover(path, MoverWords.says(path), found[1], found[0]));
      }
    }
    movers.sort(Comparator.comparingDouble((Figure.Mover mover) -> -mover.shareFrac()));
    return movers.subList(0, Math.min(MOST, movers.size()));
  }

  /// Assumptions of the rig whose measuring would narrow what the brewer asks about most.
  List<Figure.Mover> worthMeasuring(Rig rig) {
    Map<String, Double> shares = new LinkedHashMap<>();
    List<Outcome> asked =
        List.of(
            Outcome.FERMENTER,
            Outcome.STRENGTH,
            Outcome.BITTERNESS,
            Outcome.GRAIN_HELD,
            Outcome.TO_BOIL,
            Outcome.CAST,
            Outcome.HEAT_UP);
    for (Outcome outcome : asked) {
      for (Figure.Mover mover : of(ensemble.outcome(outcome))) {
        if (assumed(rig, mover.path())) {
          shares.merge(mover.path(), mover.shareFrac() / asked.size(), Double::sum);
        }
      }
    }
    return shares.entrySet().stream()
        .sorted(Comparator.comparingDouble((Map.Entry<String, Double> e) -> -e.getValue()))
        .limit(5)
        .map(e -> new Figure.Mover(e.getKey(), MoverWords.says(e.getKey()), e.getValue(), 0))
        .toList();
  }

  private static boolean assumed(Rig rig, String path) {
    return parameter(rig, path).map(p -> p.origin() == Origin.ASSUMED).orElse(false);
  }

  /// The parameter that a path such as `kettle.deadL` names.
  static Optional<Parameter> parameter(Rig rig, String path) {
    Object at = rig;
    for (String name : path.split("\\.", -1)) {
      if (name.equals("probe")) {
        at = rig.probes().stream().filter(p -> p.steers()).findFirst().orElse(null);
      } else {
        at = component(at, name);
      }
      if (at instanceof Optional<?> optional) {
        at = optional.orElse(null);
      }
      if (at == null) {
        return Optional.empty();
      }
    }
    return at instanceof Parameter parameter ? Optional.of(parameter) : Optional.empty();
  }

  private static @org.jspecify.annotations.Nullable Object component(Object of, String name) {
    RecordComponent[] components = of.getClass().getRecordComponents();
    if (components == null) {
      return null;
    }
    for (RecordComponent component : components) {
      if (component.getName().equals(name)) {
        try {
          return component.getAccessor().invoke(of);
        } catch (IllegalAccessException | InvocationTargetException failure) {
          throw new IllegalStateException("cannot read " + name, failure);
        }
      }
    }
    return null;
  }
}
