package gylebook.terminal;

import gylebook.plan.Band;
import gylebook.plan.Figure;
import gylebook.plan.Forecast;
import gylebook.plan.Guard;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Trace;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.science.LiquorLevels;
import gylebook.telling.Finish;
import gylebook.telling.LiquorAnswer;
import gylebook.telling.Shown;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import gylebook.units.UnitName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/// Writes a plan for scripts: unrounded values in the unit that each name ends in.
@AnyUnit("writes every quantity under a name that ends in its unit")
final class PlanJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  /// What is a sentence is one for people, in the units that the numbers are in.
  private static final Shown SHOWN = new Shown(ReadingUnits.METRIC);

  private PlanJson() {}

  /// @param liquor the salts and acid that were asked for and are planned with
  /// @param asked the recipe with the end of the day that was asked for
  static String of(Planned planned, Optional<LiquorAnswer> liquor, Recipe asked) {
    Map<String, Object> written = new LinkedHashMap<>();
    liquor.ifPresent(answer -> written.put("liquor", liquor(answer)));
    Finish.begin(planned, asked).ifPresent(begin -> written.put("begin", begin));
    Finish.brewBy(asked).ifPresent(brewBy -> written.put("brewBy", brewBy));
    switch (planned) {
      case Planned.Feasible feasible -> {
        written.put("feasible", true);
        written.put("plan", plan(feasible.plan()));
      }
      case Planned.Impossible impossible -> {
        written.put("feasible", false);
        written.put("limit", impossible.limit());
        written.put("says", SHOWN.sentence(impossible.says()));
        written.put("maybe", impossible.maybe());
        impossible.nearest().ifPresent(nearest -> written.put("nearest", plan(nearest)));
      }
    }
    return MAPPER.writeValueAsString(written) + "\n";
  }

  private static Map<String, Object> plan(Plan plan) {
    Forecast forecast = plan.forecast();
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("recipe", plan.recipe().name());
    written.put("rig", plan.rig().name());
    written.put("engine", forecast.engine());
    written.put("seed", forecast.seed());
    written.put("days", forecast.days());
    written.put("settings", plan.settings());
    written.put("goods", goods(plan));
    written.put("hops", hops(plan));
    written.put("milestones", forecast.milestones().stream().map(PlanJson::milestone).toList());
    written.put("figures", forecast.figures().stream().map(PlanJson::figure).toList());
    written.put("guards", forecast.guards().stream().map(PlanJson::guard).toList());
    written.put("slopes", plan.slopes());
    written.put(
        "worthMeasuring", forecast.worthMeasuring().stream().map(PlanJson::measurable).toList());
    written.put("stepSec", forecast.stepSec());
    written.put("traces", forecast.traces().stream().map(PlanJson::trace).toList());
    return written;
  }

  private static Map<String, Object> liquor(LiquorAnswer answer) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("wanted", levels(answer.wanted()));
    written.put("additions", answer.found().additions().stream().map(PlanJson::addition).toList());
    written.put("mash", levels(answer.found().mash(), answer.found().mashPh()));
    written.put("whole", levels(answer.found().whole(), Double.NaN));
    written.put("missed", answer.missed());
    written.put("caution", answer.caution());
    return written;
  }

  /// Grams of a salt, millilitres of an acid: the steps in which they are measured.
  private static Map<String, Object> addition(Liquor.Addition addition) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("name", addition.name());
    written.put("into", addition.into().name().toLowerCase(Locale.ROOT));
    Entered amount = addition.amountNumber();
    boolean volume = amount.unit().quantity() == Quantity.VOLUME;
    Unit unit = volume ? Unit.known(Quantity.VOLUME, "mL") : Unit.known(Quantity.SMALL_MASS, "g");
    double number = amount.unit().equals(unit) ? amount.value() : unit.fromInside(amount.inside());
    written.put(volume ? "volumeMl" : "massG", number);
    return written;
  }

  private static Map<String, @Nullable Double> levels(Liquor.Ions ions, double mashPh) {
    return levels(
        new LiquorLevels(
            ions.calciumMgPerL(),
            ions.magnesiumMgPerL(),
            ions.sodiumMgPerL(),
            ions.chlorideMgPerL(),
            ions.sulphateMgPerL(),
            ions.bicarbonateMgPerL(),
            mashPh));
  }

  private static Map<String, @Nullable Double> levels(LiquorLevels levels) {
    Map<String, @Nullable Double> written = new LinkedHashMap<>();
    written.put("calciumMgPerL", number(levels.calciumMgPerL()));
    written.put("magnesiumMgPerL", number(levels.magnesiumMgPerL()));
    written.put("sodiumMgPerL", number(levels.sodiumMgPerL()));
    written.put("chlorideMgPerL", number(levels.chlorideMgPerL()));
    written.put("sulfateMgPerL", number(levels.sulfateMgPerL()));
    written.put("bicarbonateMgPerL", number(levels.bicarbonateMgPerL()));
    written.put("mashPh", number(levels.mashPh()));
    return written;
  }

  private static List<Map<String, Object>> goods(Plan plan) {
    return plan.recipe().grist().stream()
        .map(line -> Map.<String, Object>of("name", line.name(), "massKg", line.massKg().inside()))
        .toList();
  }

  private static List<Map<String, Object>> hops(Plan plan) {
    return plan.recipe().hops().stream()
        .map(hop -> Map.<String, Object>of("name", hop.name(), "massG", hop.massG().inside()))
        .toList();
  }

  private static Map<String, Object> milestone(Milestone milestone) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("key", milestone.key());
    written.put("says", milestone.says());
    written.put("atSec", band(milestone.atSec()));
    written.put("wortC", band(milestone.wortC()));
    written.put("grainC", band(milestone.grainC()));
    written.put("hotL", band(milestone.hotL()));
    written.put("coldL", band(milestone.coldL()));
    written.put("wortPlato", band(milestone.wortPlato()));
    written.put("hands", milestone.hands());
    written.put("doing", milestone.doing());
    return written;
  }

  private static Map<String, Object> figure(Figure figure) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("key", figure.key());
    written.put("unit", UnitName.of(figure.key()).map(UnitName::symbol).orElse(""));
    written.put("says", figure.says());
    written.put("band", band(figure.band()));
    written.put("why", figure.why());
    return written;
  }

  private static Map<String, Object> guard(Guard guard) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("key", guard.key());
    written.put("level", guard.level());
    written.put("what", SHOWN.sentence(guard.what()));
    written.put("doThis", guard.doThis());
    written.put("byWhen", guard.byWhen());
    written.put("chanceFrac", guard.chanceFrac());
    written.put("cause", guard.cause());
    written.put("caution", guard.caution());
    return written;
  }

  /// Its share is of several figures together, so it has no slope.
  private static Map<String, Object> measurable(Figure.Mover mover) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("path", mover.path());
    written.put("says", mover.says());
    written.put("shareFrac", mover.shareFrac());
    return written;
  }

  private static Map<String, Object> trace(Trace trace) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put("key", trace.key());
    written.put("low", numbers(trace.low()));
    written.put("middle", numbers(trace.middle()));
    written.put("high", numbers(trace.high()));
    return written;
  }

  private static Map<String, @Nullable Double> band(Band band) {
    Map<String, @Nullable Double> written = new LinkedHashMap<>();
    written.put("low", number(band.low()));
    written.put("middle", number(band.middle()));
    written.put("high", number(band.high()));
    return written;
  }

  private static List<@Nullable Double> numbers(double[] values) {
    List<@Nullable Double> written = new ArrayList<>();
    for (double value : values) {
      written.add(number(value));
    }
    return written;
  }

  /// JSON has no NaN: what is not there is null.
  private static @Nullable Double number(double value) {
    return Double.isFinite(value) ? value : null;
  }
}
