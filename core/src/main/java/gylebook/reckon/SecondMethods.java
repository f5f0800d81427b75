package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Where several respected methods answer one question and do not agree: which they are.
///
/// Their spread is doubt that no single equation shows. Each line: the question; the methods, each
/// as `calculation.result`, behind it in pairs what it calls an input and what the others call it.
@AnyUnit("results of every unit")
public final class SecondMethods {
  private static final String TABLE =
      """
      alcohol by volume | alcohol.by-volume | alcohol-regression.by-volume \
      | alcohol-shortcut-moving.by-volume | alcohol-shortcut.by-volume
      alcohol by mass | alcohol.by-mass | alcohol-regression.by-mass \
      | alcohol-shortcut-moving.by-mass | alcohol-shortcut.by-mass
      real extract | alcohol.real-extract | alcohol-regression.real-extract \
      | alcohol-shortcut.real-extract
      oxygen in wort | oxygen-in-wort.wort | oxygen-in-wort-disputed.least \
      | oxygen-in-wort-disputed.most
      cells of a starter | starter-cells.grown | starter-cells-by-mass.by-mass
      living share of stored yeast | yeast-viability-stored.stored \
      | yeast-viability-packaged.packaged
      time to a burn | seconds-to-burn.burn | seconds-to-third-degree-burn.third-degree
      bitterness | bitterness-of-addition.tinseth boiled held \
      | iso-alpha-of-addition.iso-alpha held boiled \
      | iso-alpha-of-large-addition.least held boiled
      pH of the mash | mash-ph.mash | mash-ph-gas-kept.gas-kept
      colour from malt colour units | beer-colour.malt-units | beer-colour-lines.mosher \
      | beer-colour-lines.daniels
      colour from malt | beer-colour-of-malt.of-malt | beer-colour-of-malt-lines.mosher \
      | beer-colour-of-malt-lines.daniels
      carbonation pressure | carbonation-pressure.gauge | carbonation-pressure-german.gauge \
      | carbonation-pressures-compared.lager
      attenuation limit | attenuation-limit.limit | attenuation-after-rest.after-rest
      strength | plato.extract | plato-short-form.extract | plato-one-constant.one-constant \
      | brix.extract
      gravity | gravity.gravity | gravity-from-brix.gravity
      boiling rise | boiling-rise.rise | ideal-boiling-rise.ideal-rise
      evaporation | evaporation-open.open | evaporation-pool-form.pool
      heat of evaporation | latent-heat.latent | latent-heat-fit.latent
      density of water | water-density.water | water-density-steam-tables.table \
      | water-density-1975.older
      pressure at the boil | saturation-pressure.saturation \
      | saturation-pressure-three-constants.handbook
      viscosity of water | water-viscosity.water | water-viscosity-fit.fit
      carbon dioxide in water | carbon-dioxide-in-water.water \
      | carbon-dioxide-in-water-compiled.compiled
      heat of malt | malt-heat-ratio.relative | malt-heat-ratio-mixed.mixed
      strike temperature | strike.strike | strike-from-moisture.moist-malt-strike
      pressure in the bed | bed-pressure-carman.carman | bed-pressure-ergun.ergun
      pressure in the line | draught-line-gradient.gradient | draught-line-rule.least \
      | draught-line-rule.most
      gravity of the beer | beer-refractometer.apparent-extract original wort reading beer \
      | beer-refractometer-line.final wort original beer reading
      """;

  /// One method: its calculation, its result, and what it calls inputs that others call otherwise.
  record Method(String calculation, String result, Map<String, String> otherwise) {
    Method {
      otherwise = Map.copyOf(otherwise);
    }
  }

  /// A question and the methods that answer it.
  record Shared(String question, List<Method> methods) {
    Shared {
      methods = List.copyOf(methods);
    }
  }

  private static final List<Shared> ALL = read();

  private SecondMethods() {}

  static List<Shared> all() {
    return ALL;
  }

  /// What the other methods say, given the amounts as they were typed for this one.
  public static List<Opinion> beside(
      Calculation calculation,
      Map<String, String> typed,
      Reckoning.Answer answer,
      ReadingUnits units) {
    List<Opinion> opinions = new ArrayList<>();
    for (Shared shared : ALL) {
      Optional<Method> own =
          shared.methods().stream()
              .filter(method -> method.calculation().equals(calculation.name()))
              .findFirst();
      Optional<Amount> said = own.flatMap(method -> result(answer, method.result()));
      if (own.isEmpty() || said.isEmpty()) {
        continue;
      }
      for (Method other : shared.methods()) {
        if (!other.equals(own.get())) {
          ask(other, own.get(), typed, units)
              .map(
                  each ->
                      new Opinion(shared.question(), said.get(), each.calculation(), each.amount()))
              .ifPresent(opinions::add);
        }
      }
    }
    return opinions;
  }

  private record Said(Calculation calculation, Amount amount) {}

  private static Optional<Said> ask(
      Method other, Method own, Map<String, String> typed, ReadingUnits units) {
    if (!(Reckoner.find(other.calculation()) instanceof Search.Hit(Calculation calculation))) {
      throw new IllegalStateException("no calculation " + other.calculation());
    }
    Map<String, String> passed = new HashMap<>();
    boolean colder = false;
    for (Map.Entry<String, String> each : typed.entrySet()) {
      String elsewhere = own.otherwise().getOrDefault(each.getKey(), each.getKey());
      if (asks(calculation, elsewhere)) {
        passed.put(elsewhere, each.getValue());
      } else if (asks(calculation, each.getKey())) {
        // Of three methods, two may call an input alike and only the third otherwise.
        passed.put(each.getKey(), each.getValue());
      } else {
        // One that takes everything at the boil says nothing of a stand at 80 C.
        colder |= isTemperature(own, each.getKey());
      }
    }
    if (colder) {
      return Optional.empty();
    }
    return calculation.reckon(passed, units) instanceof Reckoning.Answer answer
        ? result(answer, other.result()).map(amount -> new Said(calculation, amount))
        : Optional.empty();
  }

  private static boolean isTemperature(Method own, String key) {
    return Reckoner.find(own.calculation()) instanceof Search.Hit(Calculation calculation)
        && calculation.inputs().stream()
            .anyMatch(input -> input.key().equals(key) && input.unit().equals("°C"));
  }

  private static boolean asks(Calculation calculation, String key) {
    return calculation.inputs().stream().anyMatch(input -> input.key().equals(key));
  }

  private static Optional<Amount> result(Reckoning.Answer answer, String name) {
    return answer.results().stream().filter(each -> each.name().equals(name)).findFirst();
  }

  private static List<Shared> read() {
    List<Shared> all = new ArrayList<>();
    for (String line : TABLE.strip().split("\n", -1)) {
      List<String> parts = List.of(line.split("\\s*\\|\\s*", -1));
      all.add(
          new Shared(
              parts.getFirst().strip(),
              parts.subList(1, parts.size()).stream().map(SecondMethods::method).toList()));
    }
    return List.copyOf(all);
  }

  private static Method method(String words) {
    List<String> parts = List.of(words.strip().split("\\s+", -1));
    int dot = parts.getFirst().indexOf('.');
    Map<String, String> otherwise = new HashMap<>();
    for (int i = 1; i + 1 < parts.size(); i += 2) {
      otherwise.put(parts.get(i), parts.get(i + 1));
    }
    return new Method(
        parts.getFirst().substring(0, dot), parts.getFirst().substring(dot + 1), otherwise);
  }
}
