package gylebook.interchange;

import gylebook.recipe.Liquor;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;

/// One water out of those a file names.
@AnyUnit("weights of a mixture")
final class Waters {
  private Waters() {}

  /// One of the waters.
  ///
  /// @param name what the file calls it
  /// @param amountL how much of it; 0 when not said
  /// @param ions what is dissolved in it
  record Part(String name, double amountL, Liquor.Ions ions) {}

  static Liquor mixed(List<Part> parts, List<Liquor.Addition> additions, Consumer<String> says) {
    if (parts.isEmpty()) {
      says.accept("The file says nothing about its water; taken as water without minerals.");
      return new Liquor("water", new Liquor.Ions(0, 0, 0, 0, 0, 0), additions);
    }
    Part first = parts.getFirst();
    if (parts.size() == 1) {
      return new Liquor(first.name(), first.ions(), additions);
    }
    String names = String.join(" and ", parts.stream().map(Part::name).toList());
    if (parts.stream().anyMatch(part -> !(part.amountL() > 0))) {
      says.accept("Names " + names + " without saying how much of each; the first is taken.");
      return new Liquor(first.name(), first.ions(), additions);
    }
    says.accept("Mixed from " + names + " by their amounts.");
    Liquor.Ions ions =
        new Liquor.Ions(
            mean(parts, Liquor.Ions::calciumMgPerL),
            mean(parts, Liquor.Ions::magnesiumMgPerL),
            mean(parts, Liquor.Ions::sodiumMgPerL),
            mean(parts, Liquor.Ions::chlorideMgPerL),
            mean(parts, Liquor.Ions::sulphateMgPerL),
            mean(parts, Liquor.Ions::bicarbonateMgPerL));
    return new Liquor(names, ions, additions);
  }

  private static double mean(List<Part> parts, ToDoubleFunction<Liquor.Ions> ion) {
    double all = parts.stream().mapToDouble(Part::amountL).sum();
    return parts.stream()
        .mapToDouble(part -> part.amountL() / all * ion.applyAsDouble(part.ions()))
        .sum();
  }
}
