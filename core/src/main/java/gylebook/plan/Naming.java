package gylebook.plan;

import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.rig.Rig;

/// A milestone in a brewer's words, and what hands do there.
///
/// @param says its name
/// @param hands how many are needed: 0, 1, 2
/// @param doing what they do
record Naming(String says, int hands, String doing) {

  static Naming of(String key, Recipe recipe, Rig rig) {
    boolean pump = rig.loop().present();
    String off = pump ? "heater to zero, then the pump off" : "heater to zero";
    int dot = key.indexOf('.');
    int number = dot < 0 ? 0 : Integer.parseInt(key.substring(dot + 1));
    return switch (dot < 0 ? key : key.substring(0, dot)) {
      case "liquorIn" ->
          new Naming("liquor in", 2, "fill the kettle, check the element is covered");
      case "strikeReady" -> new Naming("strike reached", 1, off);
      case "doughedIn" -> new Naming("malt in", 2, "pour and stir");
      case "settled" ->
          new Naming("mash settled", 1, (pump ? "pump on, then the " : "") + "controller on");
      case "toRest" -> new Naming("rest " + (number + 1) + " reached", 0, "");
      case "rest" -> new Naming("rest " + (number + 1) + " over", 0, "");
      case "mashDone" -> new Naming("mash done", 1, "take a gravity; " + off);
      case "bagOut" -> new Naming("bag out and drained", 2, lifts(rig) + "; let it drip");
      case "boilReached" ->
          new Naming("boil reached", 2, "stay by the kettle; cut the duty at the break");
      case "hop" -> new Naming(hop(recipe, number), 1, "drop the hops in");
      case "sugarIn" -> new Naming("sugar in", 1, "heater off, stir it in, heater on");
      case "flameOut" -> new Naming("heater off", 1, "heater off");
      case "standAt" -> new Naming("cooled for stand " + (number + 1), 1, "drop the hops in");
      case "stood" -> new Naming("stand " + (number + 1) + " over", 0, "");
      case "knockOut" -> new Naming("ready to run off", 2, "couple the hoses, water on");
      case "chilled" -> new Naming("chilled", 1, "water off");
      case "cast" -> new Naming("in the fermenter", 2, "close the valve, take a gravity");
      default -> new Naming(key, 0, "");
    };
  }

  private static String lifts(Rig rig) {
    return rig.working().hoist() ? "lift the bag with the hoist" : "lift the bag, two people";
  }

  private static String hop(Recipe recipe, int number) {
    Hop hop = recipe.hops().get(number);
    return hop.name() + " in";
  }
}
