package gylebook.plan;

import gylebook.recipe.Boil;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Other;
import gylebook.recipe.Recipe;
import gylebook.recipe.Rest;
import gylebook.rig.Rig;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Settings;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/// The day's list: what to do, with its one figure, in the order of the day.
@AnyUnit("each step names its figure with its unit")
final class Steps {
  private static final double NONE = Double.NaN;
  private static final double SEC_PER_MIN = 60;
  private static final double G_PER_KG = 1000;
  private static final Pattern BOIL_LEFT = Pattern.compile("^With [0-9]+ min of the boil left, ");

  private final Recipe recipe;
  private final Rig rig;
  private final Settings set;
  private final List<Plan.PlannedStep> steps = new ArrayList<>();

  private Steps(BrewDay day) {
    this.recipe = day.recipe();
    this.rig = day.rig();
    this.set = day.settings();
  }

  /// @param fermenterL what the forecast expects in the fermenter, in the middle
  /// @param oxygenMgPerL what air can give that wort at most, in the middle
  static List<Plan.PlannedStep> of(BrewDay day, double fermenterL, double oxygenMgPerL) {
    Steps steps = new Steps(day);
    steps.strike();
    steps.mash();
    steps.bagOut();
    steps.boil();
    steps.afterBoil();
    steps.step("cast", "Run off into the fermenter; expect there", "fermenterL", fermenterL);
    steps.rouse(oxygenMgPerL);
    steps.pitch();
    return steps.steps;
  }

  private void step(String milestone, String does, String key, double amount) {
    steps.add(new Plan.PlannedStep(milestone, does, key, amount));
  }

  private boolean pump() {
    return rig.loop().present();
  }

  private String off() {
    return pump() ? "Heater to zero, then pump off" : "Heater to zero";
  }

  private void strike() {
    step("liquorIn", "Cold liquor into the kettle", "liquorL", set.liquorL());
    if (set.topUpL() > 0) {
      step("liquorIn", "Keep by for after the bag, cold", "topUpL", set.topUpL());
    }
    salts(Liquor.Into.MASH, "liquorIn", "Into the liquor: ");
    String moving = pump() ? "Lid on, pump on" : "Lid on, stir now and then";
    step("strikeReady", moving + "; heat until the thermometer reads", "strikeC", set.strikeC());
  }

  private void salts(Liquor.Into into, String milestone, String where) {
    for (Liquor.Addition addition : recipe.liquor().additions()) {
      if (addition.into() == into) {
        Entered amount = addition.amountNumber();
        steps.add(amounted(milestone, where + addition.name(), "salt", amount));
      }
    }
  }

  /// A figure whose unit depends on what the recipe gives: a mass, a volume, a count. Who adds less
  /// than a kilogram weighs it on the small scales.
  private static Plan.PlannedStep amounted(
      String milestone, String does, String stem, Entered amount) {
    double inside = amount.inside();
    return switch (amount.unit().quantity()) {
      case MASS ->
          inside < 1
              ? new Plan.PlannedStep(milestone, does, stem + "G", G_PER_KG * inside)
              : new Plan.PlannedStep(milestone, does, stem + "Kg", inside);
      case SMALL_MASS -> new Plan.PlannedStep(milestone, does, stem + "G", inside);
      case VOLUME -> new Plan.PlannedStep(milestone, does, stem + "L", inside);
      default -> new Plan.PlannedStep(milestone, does, stem + "Count", inside);
    };
  }

  private void mash() {
    double maltKg =
        recipe.grist().stream()
            .filter(line -> line.kind().mashed() || line.use() == Goods.Use.MASH)
            .mapToDouble(line -> line.massKg().inside() * set.gristFactor())
            .sum();
    step("doughedIn", off() + "; stir in the malt", "maltKg", maltKg);
    goods("doughedIn", when -> when instanceof Hop.When.InMash);
    String on = pump() ? "Pump on, then the controller, set to" : "Controller on, set to";
    for (int i = 0; i < recipe.rests().size(); i++) {
      Rest rest = recipe.rests().get(i);
      String does = i == 0 ? on : rise(rest);
      double setC = rest.targetC().inside() + set.mashOffsetK();
      step(i == 0 ? "settled" : "toRest." + i, does, "setC", setC);
      step("rest." + i, "Hold for", "holdSec", rest.holdSec().inside());
    }
  }

  /// A controller that cannot climb by itself is turned up in small steps.
  private static String rise(Rest rest) {
    return rest.rampSec()
        .filter(ramp -> ramp.inside() > 0)
        .map(ramp -> Math.round(ramp.inside() / SEC_PER_MIN))
        .map(min -> "Over " + min + " min, evenly, turn the controller up to")
        .orElse("Set the controller to");
  }

  private void bagOut() {
    step("bagOut", off() + "; lift the bag and let it drain", "", NONE);
    if (set.topUpL() > 0) {
      step("bagOut", "Add the liquor kept by", "topUpL", set.topUpL());
    }
    goods("bagOut", when -> when instanceof Hop.When.FirstWort);
  }

  private void boil() {
    salts(Liquor.Into.KETTLE, "boilReached", "Into the kettle: ");
    String lid =
        recipe.boil().lid() == Boil.Lid.ON
            ? "Full heat, lid on; stay by the kettle as it nears the boil, then the duty to"
            : "Full heat, lid on until it nears the boil; then lid off and the duty to";
    step("boilReached", lid, "dutyFrac", set.boilDutyFrac());
    inBoil();
    step("flameOut", "Heater off after", "boilSec", recipe.boil().holdSec().inside());
    goods("flameOut", when -> when instanceof Hop.When.FlameOut);
  }

  /// Whatever goes into the boil, the longest boiled first; sugar as the day has it.
  private void inBoil() {
    double boilSec = recipe.boil().holdSec().inside();
    List<Boiled> order = new ArrayList<>();
    for (int i = 0; i < recipe.hops().size(); i++) {
      Hop hop = recipe.hops().get(i);
      if (hop.when() instanceof Hop.When.InBoil boil) {
        double leftSec = Math.min(boilSec, boil.leftSec().inside());
        order.add(new Boiled(leftSec, hopStep("hop." + i, left(leftSec), hop)));
      }
    }
    for (Other other : recipe.others()) {
      if (other.when() instanceof Hop.When.InBoil boil) {
        double leftSec = Math.min(boilSec, boil.leftSec().inside());
        order.add(new Boiled(leftSec, otherStep("flameOut", left(leftSec), other)));
      }
    }
    double sugarSec = Math.min(boilSec, BrewDay.EXTRACT_LEFT_SEC);
    for (Goods line : recipe.grist()) {
      if (!line.kind().mashed() && line.use() == Goods.Use.BOIL) {
        String does = left(sugarSec) + "heater off, stir in " + line.name() + ", heater on:";
        double massKg = line.massKg().inside() * set.gristFactor();
        order.add(new Boiled(sugarSec, new Plan.PlannedStep("sugarIn", does, "goodsKg", massKg)));
      }
    }
    order.sort(Comparator.comparingDouble((Boiled boiled) -> -boiled.leftSec()));
    order.forEach(boiled -> steps.add(boiled.step()));
  }

  /// A step of the boil and how much of the boil is left then.
  private record Boiled(double leftSec, Plan.PlannedStep step) {}

  private static String left(double leftSec) {
    return "With " + Math.round(leftSec / SEC_PER_MIN) + " min of the boil left, ";
  }

  /// The same words for another time; words that name none stay.
  static String withBoilLeft(String does, double leftSec) {
    return BOIL_LEFT.matcher(does).replaceFirst(left(leftSec));
  }

  private Plan.PlannedStep hopStep(String milestone, String when, Hop hop) {
    double massG = hop.massG().inside() * set.hopFactor();
    return new Plan.PlannedStep(milestone, capital(when + hop.name() + " in:"), "hopG", massG);
  }

  private static Plan.PlannedStep otherStep(String milestone, String when, Other other) {
    return amounted(
        milestone, capital(when + other.name() + " in:"), "other", other.amountNumber());
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /// Hops and other things of one moment outside the boil.
  private void goods(String milestone, Predicate<Hop.When> wanted) {
    for (Hop hop : recipe.hops()) {
      if (wanted.test(hop.when())) {
        steps.add(hopStep(milestone, "", hop));
      }
    }
    for (Other other : recipe.others()) {
      if (wanted.test(other.when())) {
        steps.add(otherStep(milestone, "", other));
      }
    }
  }

  /// How long it takes nobody published, so no time is named.
  private void rouse(double oxygenMgPerL) {
    boolean dried = ColdFigures.dried(recipe.yeast());
    step(
        "cast",
        dried
            ? "Rouse if you like, dried yeast hardly asks; oxygen from air at most"
            : "Rouse the wort; oxygen from air at most",
        "oxygenMgPerL",
        oxygenMgPerL);
  }

  private void pitch() {
    step("cast", "Yeast in when the wort is at", "pitchC", recipe.yeast().pitchC().inside());
  }

  private void afterBoil() {
    for (int i = 0; i < recipe.stands().size(); i++) {
      int number = i;
      double standC = recipe.stands().get(i).targetC().inside();
      boolean uncooled = !new BrewDay(recipe, rig, set).cooled(recipe.stands().get(i));
      String does = uncooled ? "Do not cool; it stands at most at" : "Cool and stand at";
      step("standAt." + i, does, "standC", standC);
      goods(
          "standAt." + i,
          when -> when instanceof Hop.When.AtStand at && at.standNumber() == number);
      step("stood." + i, "Stand for", "holdSec", recipe.stands().get(i).holdSec().inside());
    }
  }
}
