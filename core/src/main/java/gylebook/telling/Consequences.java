package gylebook.telling;

import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.recipe.Recipe;
import gylebook.rig.Loop;
import gylebook.rig.Newcomer;
import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import gylebook.units.Component;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// What else changes when one value does.
final class Consequences {
  private static final Pattern GOODS = Pattern.compile("grist\\.(\\d+)\\.(analysis|kind)(\\..*)?");

  private static final Pattern STEERS = Pattern.compile("probes\\.(\\d+)\\.steers");

  /// Below this nothing flows: a jug an hour.
  private static final double TRICKLE_L_PER_SEC = 1e-4;

  private Consequences() {}

  /// Figures that somebody types are stated; figures that nobody stated follow the kind of the
  /// goods, all but the colour, which the kind does not know.
  static Recipe of(Recipe before, Recipe made, String slot) {
    Matcher goods = GOODS.matcher(slot);
    if (!goods.matches()) {
      return made;
    }
    int number = Integer.parseInt(goods.group(1));
    String path = "grist." + number + ".analysis";
    Goods line = made.grist().get(number);
    if (goods.group(2).equals("analysis")) {
      return Component.with(made, path + ".stated", true);
    }
    if (before.grist().get(number).analysis().stated()) {
      return made;
    }
    Analysis usual = line.kind().usual();
    return Component.with(
        made, path, Component.with(usual, "colourEbc", line.analysis().colourEbc()));
  }

  /// Only one thermometer steers: when another is to, the first lets go.
  static Rig before(Rig rig, String slot, String typed) {
    Matcher steers = STEERS.matcher(slot);
    if (!steers.matches() || !typed.strip().equals("yes")) {
      return rig;
    }
    int chosen = Integer.parseInt(steers.group(1));
    Rig freed = rig;
    for (int i = 0; i < rig.probes().size(); i++) {
      freed = i == chosen ? freed : Component.with(freed, "probes." + i + ".steers", false);
    }
    return freed;
  }

  /// A pump that was never there has no flow yet: it starts as the usual one, all of it assumed.
  static Rig of(Rig before, Rig made) {
    boolean pumped = made.loop().present() && !before.loop().present();
    if (!pumped || made.loop().mashLPerSec().value() > TRICKLE_L_PER_SEC) {
      return made;
    }
    Loop usual = Newcomer.usual().rig().loop();
    Parameter hoseM = Parameter.assumed(usual.hoseM().value(), 0.3, "measure the hose");
    Parameter boreM = Parameter.assumed(usual.boreM().value(), 0.002, "measure the hose");
    Loop assumed = Component.with(Component.with(usual, "hoseM", hoseM), "boreM", boreM);
    return Component.with(made, "loop", assumed);
  }
}
