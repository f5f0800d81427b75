package gylebook.telling;

import gylebook.brewday.DayJudged;
import gylebook.brewday.Foreseen;
import gylebook.brewday.HouseRecord;
import gylebook.brewday.Judged;
import gylebook.estimate.Held;
import gylebook.plan.Band;
import gylebook.units.AnyUnit;
import java.util.Locale;
import java.util.Map;

/// What was forecast and what came, in a brewer's words.
@AnyUnit("tells every quantity")
public final class ForecastWords {
  private static final double SEC_PER_MIN = 60;
  private static final double PERCENT = 100;

  private static final Map<String, String> SAYS =
      Map.ofEntries(
          Map.entry("strikeReady atSec", "strike reached"),
          Map.entry("boilReached atSec", "boil reached"),
          Map.entry("chilled atSec", "chilled"),
          Map.entry("cast atSec", "in the fermenter, the day's end"),
          Map.entry("settled grainC", "grain when the mash has settled"),
          Map.entry("rest.0 grainC", "grain at the end of rest 1"),
          Map.entry("knockOut wortC", "wort when it is ready to run off"),
          Map.entry("bagOut hotL", "in the kettle, bag out"),
          Map.entry("boilReached hotL", "in the kettle at the boil"),
          Map.entry("flameOut hotL", "in the kettle, heater off"),
          Map.entry("flameOut wortPlato", "strength in the kettle, heater off"),
          Map.entry("day firstWortPlato", "strength at the end of the mash"),
          Map.entry("day preBoilPlato", "strength before the boil"),
          Map.entry("day castC", "wort as it runs into the fermenter"),
          Map.entry("day fermenterL", "litres in the fermenter"),
          Map.entry("day strengthPlato", "strength in the fermenter"),
          Map.entry("day bitternessMgPerL", "bitterness"),
          Map.entry("day colourEbc", "colour"),
          Map.entry("day alcoholByVolumeFrac", "alcohol"));

  private final Shown shown;

  /// Tells in these units.
  public ForecastWords(Shown shown) {
    this.shown = shown;
  }

  /// A number by its point and key.
  public static String says(String point, String key) {
    String known = SAYS.get(point + " " + key);
    if (known != null) {
      return known;
    }
    int dot = point.indexOf('.');
    String number = dot < 0 ? "" : point.substring(dot + 1);
    boolean counted = number.matches("[0-9]{1,3}");
    int nth = counted ? Integer.parseInt(number) + 1 : 0;
    return switch (counted ? point.substring(0, dot) + " " + key : "") {
      case "toRest atSec" -> "rest " + nth + " reached";
      case "standAt atSec" -> "cooled for stand " + nth;
      case "stood wortC" -> "wort at the end of stand " + nth;
      default -> point + " " + key;
    };
  }

  /// One value; a time as the day's clock shows it.
  public String value(String key, double value) {
    return key.equals(Foreseen.AT) ? Shown.clock(Math.max(0, value)) : shown.value(key, value);
  }

  /// A range.
  public String range(String key, Held held) {
    return key.equals(Foreseen.AT)
        ? value(key, held.low()) + " to " + value(key, held.high())
        : shown.range(key, new Band(held.low(), held.mean(), held.high()));
  }

  /// A score, or any other difference without a sign, near a value.
  public String score(String key, double near, double score) {
    if (key.equals(Foreseen.AT)) {
      return String.format(Locale.ROOT, "%.1f min", score / SEC_PER_MIN);
    }
    String change = shown.change(key, near, score);
    return change.startsWith("+") || change.startsWith("-") ? change.substring(1) : change;
  }

  /// The score of one judged number.
  public String score(Judged judged) {
    return score(judged.foreseen().key(), judged.came().value(), judged.score());
  }

  /// Whether a range held.
  public static String held(Judged judged) {
    return judged.held() ? "held" : "missed";
  }

  /// What as many held ranges say of those that were given.
  public static String verdict(HouseRecord.Line line) {
    if (line.verdict().honest()) {
      return "nothing speaks against it";
    }
    return line.verdict().fewerFrac() < line.verdict().moreFrac()
        ? "too few: too narrow, or beside what comes"
        : "more than should: wider than need be";
  }

  /// How much better than the plainer forecast.
  public static String skill(HouseRecord.Line line) {
    if (line.skillRatio().isEmpty()) {
      return "nothing to compare with yet";
    }
    long percent = Math.round(PERCENT * line.skillRatio().getAsDouble());
    return percent >= 0 ? percent + " % better" : -percent + " % worse";
  }

  /// How many ranges of one day held; empty when nothing could be judged.
  public static String count(DayJudged day) {
    long byPlan = day.numbers().stream().flatMap(one -> one.byPlan().stream()).count();
    long planHeld =
        day.numbers().stream().flatMap(one -> one.byPlan().stream()).filter(Judged::held).count();
    long last = day.numbers().stream().flatMap(one -> one.last().stream()).count();
    long lastHeld =
        day.numbers().stream().flatMap(one -> one.last().stream()).filter(Judged::held).count();
    if (byPlan + last == 0) {
      return "";
    }
    return "By the plan %d of %d ranges held, by what was forecast last before the thing came %d of %d."
        .formatted(planHeld, byPlan, lastHeld, last);
  }
}
