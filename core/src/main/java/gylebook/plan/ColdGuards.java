package gylebook.plan;

import gylebook.recipe.Ferment;
import gylebook.recipe.Hop;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.recipe.Yeast;
import gylebook.science.DryHop;
import gylebook.science.FermentationCurve;
import gylebook.science.Oxygen;
import gylebook.science.Pitching;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;

/// What a recipe's fermenter may go wrong with: too little yeast, no warm rest, dry hops.
@AnyUnit("figures of every quantity; each note names its unit")
final class ColdGuards {
  private static final double SEC_PER_HR = 3600;
  // The best of six dried yeasts, all of it alive but for one in twenty.
  private static final double BEST_COUNT_PER_G = 18e9;
  private static final double BEST_ALIVE_FRAC = 0.95;
  private static final double USUAL_COUNT_PER_G = 10e9;
  private static final double USUAL_ALIVE_FRAC = 0.75;
  // Two days at 18 C or more once nine tenths have fermented (common practice, no source).
  private static final double REST_C = 18;
  private static final double REST_HR = 48;
  private static final double NEARLY_FRAC = 0.1;
  private static final double STEP_HR = 1;
  // As much as hop creep took in forty days at 10 g/L and 20 C.
  private static final double CREEP_PLATO = 2;
  private static final double BEER_KG_PER_L = 1.01;

  private ColdGuards() {}

  /// @param cold what the fermenter asks for and gives off
  static List<Guard> of(Recipe recipe, Ensemble ensemble, List<Figure> cold) {
    List<Guard> found = new ArrayList<>();
    gas(found, cold);
    air(found, recipe.yeast(), cold);
    yeast(found, recipe.yeast(), ensemble);
    rest(found, recipe);
    dryHops(found, recipe);
    return found;
  }

  private static void yeast(List<Guard> found, Yeast yeast, Ensemble ensemble) {
    double yeastG = ColdFigures.driedG(yeast);
    if (!(yeastG > 0)) {
      return;
    }
    double wortL = Math.max(0, Bands.of(ensemble.outcome(Outcome.FERMENTER)).middle());
    double plato = Math.clamp(Bands.of(ensemble.outcome(Outcome.STRENGTH)).middle(), 0, 40);
    double rate = ColdFigures.rateCountPerMl(yeast);
    double leastG = Pitching.driedForWortG(wortL, plato, rate, BEST_COUNT_PER_G, BEST_ALIVE_FRAC);
    if (yeastG >= leastG) {
      return;
    }
    double usualG = Pitching.driedForWortG(wortL, plato, rate, USUAL_COUNT_PER_G, USUAL_ALIVE_FRAC);
    found.add(
        new Guard(
            "littleYeast",
            Guard.Level.NOTE,
            List.of(
                Note.of("", "yeastG", yeastG),
                Note.of(
                    " of dried yeast are few, even at their best; by habit this wort gets ",
                    "yeastG",
                    usualG),
                Note.words(".")),
            "Pitch more, or wet it in water of 35 to 41 C first; never in cold water.",
            "cast",
            1,
            "Few cells start late and may stop early; strains and packets differ.",
            ""));
  }

  private static void rest(List<Guard> found, Recipe recipe) {
    double restHr = warmRestHr(recipe.ferment().steps());
    if (!(restHr < REST_HR)) {
      return;
    }
    found.add(
        new Guard(
            "shortRest",
            Guard.Level.NOTE,
            List.of(
                Note.of("Once nine tenths have fermented, ", "restSec", SEC_PER_HR * restHr),
                Note.of(" of the ferment's steps stand at ", "restC", REST_C),
                Note.words(" or more; diacetyl wants two days.")),
            "Let it rest two days that warm before it is cooled, and smell a warm forced sample.",
            "cast",
            1,
            "Its precursor splits slowly, and only warmth hurries it; cold beer keeps the butter"
                + " for later.",
            "A closed sample at 60 to 70 C is hot glass under pressure: leave its lid loose."));
  }

  private static Note note(String words, String key, List<Figure> cold) {
    return new Note(words, key, band(key, cold));
  }

  private static Band band(String key, List<Figure> cold) {
    return cold.stream()
        .filter(figure -> figure.key().equals(key))
        .findFirst()
        .orElseThrow()
        .band();
  }

  private static void gas(List<Guard> found, List<Figure> cold) {
    if (!(band(ColdFigures.GAS, cold).middle() > 0)) {
      return;
    }
    found.add(
        new Guard(
            "gasInRoom",
            Guard.Level.NOTE,
            List.of(
                note("The ferment gives off ", ColdFigures.GAS, cold),
                Note.of(
                    " of carbon dioxide; a closed room under ",
                    ColdFigures.ROOM,
                    band(ColdFigures.ROOM, cold).high()),
                Note.words(" may pass OSHA's 5000 ppm.")),
            "Air its room.",
            "cast",
            1,
            "It is heavier than air and lies by the floor, where an alarm belongs; the limit is an average"
                + " of 8 h, and even a large room is no proof.",
            "Never go in after somebody who fell; follow your local code."));
  }

  /// Only where even the kindest source leaves less than the habit's least.
  private static void air(List<Guard> found, Yeast yeast, List<Figure> cold) {
    Oxygen.Demand demand = Oxygen.demand();
    double leastMgPerL =
        yeast.pitchC().inside() < ColdFigures.LAGER_BELOW_C
            ? demand.lagerLeastMgPerL()
            : demand.aleLeastMgPerL();
    if (ColdFigures.dried(yeast) || !(band(ColdFigures.OXYGEN, cold).high() < leastMgPerL)) {
      return;
    }
    found.add(
        new Guard(
            "littleAir",
            Guard.Level.NOTE,
            List.of(
                note("Air gives this wort at most ", ColdFigures.OXYGEN, cold),
                Note.of(" of oxygen; by habit it gets ", "oxygenMgPerL", leastMgPerL),
                Note.words(" or more.")),
            "Rouse it well before the yeast is busy; pure oxygen only by a measured dose, for too"
                + " much harms.",
            "cast",
            1,
            "Sugar salts oxygen out, and thin air gives less; strains differ (Kirsop 1974).",
            "Pure oxygen feeds fire: no flame, oil or grease near it; the cylinder upright and"
                + " chained. Follow your local code."));
  }

  /// How long the steps stand warm after nine tenths have fermented, by the middle of what is
  /// expected of yeast; NaN where there are no steps or it never gets so far.
  private static double warmRestHr(List<Ferment.Step> steps) {
    double tau = 0;
    double restHr = 0;
    boolean nearly = false;
    for (Ferment.Step step : steps) {
      double holdHr = step.holdSec().inside() / SEC_PER_HR;
      double firstC = step.startC().inside();
      double riseK = step.endC().inside() - firstC;
      int count = (int) Math.clamp(Math.ceil(holdHr / STEP_HR), 1, 10_000);
      double partHr = holdHr / count;
      for (int i = 0; i < count; i++) {
        double beerC = firstC + riseK * (i + 0.5) / count;
        if (nearly && beerC >= REST_C) {
          restHr += partHr;
        }
        tau +=
            partHr
                * FermentationCurve.ratePerHr(
                    Math.clamp(beerC, 0, 40),
                    FermentationCurve.RATE_PER_HR,
                    FermentationCurve.Q10_FACTOR);
        nearly =
            FermentationCurve.leftFrac(
                    tau, FermentationCurve.MIDPOINT_NUMBER, FermentationCurve.SKEW_NUMBER)
                < NEARLY_FRAC;
      }
    }
    return nearly ? restHr : Double.NaN;
  }

  private static void dryHops(List<Guard> found, Recipe recipe) {
    boolean dry =
        recipe.hops().stream()
            .anyMatch(hop -> hop.when() instanceof Hop.When.Dry && hop.massG().inside() > 0);
    if (!dry) {
      return;
    }
    double creepVol = DryHop.creep(CREEP_PLATO, BEER_KG_PER_L).gasVol();
    found.add(
        new Guard(
            "dryHopsStartAgain",
            recipe.pack().kind() == Pack.Kind.KEG ? Guard.Level.NOTE : Guard.Level.SOON,
            List.of(
                Note.of("Dry hops may start the beer again; as much gas as ", "creepVol", creepVol),
                Note.words(" was seen.")),
            "After them count it as unfinished: two equal gravities two days apart and a clean"
                + " diacetyl test, then package. One to three days of contact are enough.",
            "cast",
            1,
            "Hops carry enzymes that cut what yeast could not eat (Kirkpatrick and Shellhammer"
                + " 2018: 10 g/L at 20 C, forty days).",
            "Bottles that ferment on burst: never fill glass with live beer, read the package's own"
                + " marking, wear eye protection. Follow your local code."));
  }
}
