package gylebook.plan;

import gylebook.recipe.Goods;
import gylebook.recipe.Recipe;
import gylebook.science.Colour;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/// What the grist misses of a wanted colour, and how much of its darkest malt would bring it there.
///
/// By Morey's power law the colour units of the grist go with a power of the colour; the darkest
/// malt takes the place of the malt there is most of, so that the strength hardly moves.
@AnyUnit("columns of colour")
final class ColourNote {
  // What two brewers call the same colour (our judgement).
  private static final double ALIKE_EBC = 2;
  private static final double ALIKE_RATIO = 0.1;
  // The middle of what the boil itself brings; as the simulator has it.
  private static final double BOIL_EBC = 1.5;
  private static final double G_PER_KG = 1000;

  private ColourNote() {}

  static Optional<Guard> of(BrewDay day, Ensemble ensemble) {
    Optional<Double> wantEbc = day.recipe().aim().colourEbc().map(Entered::inside);
    Band got = Bands.of(ensemble.outcome(Outcome.COLOUR));
    return wantEbc
        .filter(want -> Math.abs(got.middle() - want) > alikeEbc(want))
        .map(
            want ->
                new Guard(
                    "colourOff",
                    Guard.Level.NOTE,
                    says(day, got, want),
                    "Weigh it so, or take another malt; look at the colour again after each change.",
                    "liquorIn",
                    chance(ensemble, want),
                    "The malts bring more or less colour than is wanted.",
                    ""));
  }

  private static double alikeEbc(double wantEbc) {
    return Math.max(ALIKE_EBC, ALIKE_RATIO * wantEbc);
  }

  private static double chance(Ensemble ensemble, double wantEbc) {
    double[] column = ensemble.outcome(Outcome.COLOUR);
    long off = Arrays.stream(column).filter(c -> Math.abs(c - wantEbc) > alikeEbc(wantEbc)).count();
    return (double) off / column.length;
  }

  private static List<Note> says(BrewDay day, Band got, double wantEbc) {
    Note comes = new Note("The beer comes to ", "colourEbc", got);
    Note where = Note.of(" where ", "colourEbc", wantEbc);
    Recipe recipe = day.recipe();
    Optional<Goods> dark = mashed(recipe, ColourNote::lovibond);
    Optional<Goods> most = mashed(recipe, line -> line.massKg().inside());
    if (dark.isEmpty() || most.isEmpty() || dark.equals(most)) {
      return List.of(
          comes, where, Note.words(" is wanted: this grist has no second malt to shift it with."));
    }
    double apartLovibond = lovibond(dark.get()) - lovibond(most.get());
    double moreKg = missingLovibondKg(day, got.middle(), wantEbc) / apartLovibond;
    double thereKg = dark.get().massKg().inside() * day.settings().gristFactor();
    String name = dark.get().name();
    if (moreKg < -thereKg) {
      return List.of(
          comes, where, Note.words(" is wanted: it stays darker even without the " + name + "."));
    }
    return List.of(
        comes,
        where,
        Note.of(" is wanted: ", "massG", Math.abs(moreKg) * G_PER_KG),
        Note.words(
            (moreKg > 0 ? " more " : " less ")
                + name
                + " and as much "
                + (moreKg > 0 ? "less " : "more ")
                + most.get().name()
                + " would bring it there."));
  }

  private static Optional<Goods> mashed(Recipe recipe, ToDoubleFunction<Goods> most) {
    return recipe.grist().stream()
        .filter(line -> line.kind().mashed())
        .max(Comparator.comparingDouble(most));
  }

  private static double lovibond(Goods line) {
    double maltEbc = line.analysis().colourEbc();
    return maltEbc > 0 ? Colour.maltLovibond(maltEbc) : 0;
  }

  /// How much colour the goods lack: their own, times a power of the ratio of the beers.
  private static double missingLovibondKg(BrewDay day, double gotEbc, double wantEbc) {
    double hereLovibondKg =
        day.recipe().grist().stream()
            .mapToDouble(line -> line.massKg().inside() * lovibond(line))
            .sum();
    double exponent = Math.log10(Colour.maltUnitsSrm(10) / Colour.maltUnitsSrm(1));
    double ratio = Math.max(0, wantEbc - BOIL_EBC) / Math.max(ALIKE_EBC, gotEbc - BOIL_EBC);
    return day.settings().gristFactor() * hereLovibondKg * (Math.pow(ratio, 1 / exponent) - 1);
  }
}
