package gylebook.telling;

import gylebook.recipe.Analysis;
import gylebook.recipe.Goods;
import gylebook.recipe.Recipe;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// What else changes when one value does.
final class Consequences {
  private static final Pattern GOODS = Pattern.compile("grist\\.(\\d+)\\.(analysis|kind)(\\..*)?");

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
}
