package gylebook.plan;

import gylebook.recipe.Boil;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.science.Lifting;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Ensemble;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;

/// What may go wrong, foreseen: how often in the simulated days, when, why, and what to do.
@AnyUnit("columns of every quantity")
final class Guards {
  private static final double CHANCE_SHOWN = 0.02;
  private static final double SOON_CHANCE = 0.10;
  // Continuous loads at no more than 80 % of the breaker (NEC 422.10 read the other way round).
  private static final double BREAKER_SHARE = 0.80;
  // Plumbing codes commonly ask for 60 C (140 F) at the most; from memory.
  private static final double DRAIN_MOST_C = 60;

  // 0.001 of gravity: what a closed package may still make of it is small.
  private static final double STILL_PLATO = 0.258;

  private final Ensemble ensemble;
  private final List<Guard> found = new ArrayList<>();

  private Guards(Ensemble ensemble) {
    this.ensemble = ensemble;
  }

  /// @param cold what the fermenter asks for and gives off
  static List<Guard> of(BrewDay day, Ensemble ensemble, List<Figure> cold) {
    Guards guards = new Guards(ensemble);
    guards.cover(day);
    guards.room(day);
    guards.circuit();
    guards.suction(day);
    guards.lift(day);
    guards.drain();
    guards.heat();
    guards.lid(day.recipe());
    guards.unfinished(day.recipe());
    guards.found.addAll(RampGuards.of(day.recipe(), ensemble));
    ColourNote.of(day, ensemble).ifPresent(guards.found::add);
    guards.found.addAll(LiquorGuards.of(day.recipe(), ensemble));
    guards.found.addAll(ColdGuards.of(day.recipe(), ensemble, cold));
    guards.found.sort(
        Comparator.comparing(Guard::level)
            .thenComparingDouble((Guard guard) -> -guard.chanceFrac()));
    return List.copyOf(guards.found);
  }

  private double chance(Outcome outcome, DoublePredicate bad) {
    return Bands.shareFrac(ensemble.outcome(outcome), bad);
  }

  private Note note(String words, Outcome outcome) {
    return new Note(words, outcome.key(), Bands.of(ensemble.outcome(outcome)));
  }

  private static Guard.Level level(double chance, Guard.Level worst) {
    return chance >= SOON_CHANCE ? worst : Guard.Level.NOTE;
  }

  private void cover(BrewDay day) {
    double wantedM = day.rig().element().coverM().value();
    double chance = chance(Outcome.COVER, m -> m < wantedM);
    if (chance < CHANCE_SHOWN) {
      return;
    }
    boolean bare = chance(Outcome.COVER, m -> m <= 0) >= CHANCE_SHOWN;
    found.add(
        new Guard(
            "elementBare",
            bare ? level(chance, Guard.Level.STOP) : level(chance, Guard.Level.SOON),
            List.of(
                note("The element may stand under only ", Outcome.COVER),
                Note.of(" of wort, wanted ", "coverM", wantedM),
                Note.words(".")),
            "Heater off, then pump off, when the level round the bag falls. Lift the bag a little.",
            "settled",
            chance,
            "The pump draws the wort round the bag down when the bed lets less through.",
            "A bare element scorches and can start a fire. Follow your local code."));
  }

  private void room(BrewDay day) {
    double wantedM = day.rig().kettle().headroomM().value();
    double doughIn = chance(Outcome.ROOM_AT_DOUGH_IN, m -> m < wantedM);
    if (doughIn >= CHANCE_SHOWN) {
      found.add(
          new Guard(
              "fullAtDoughIn",
              level(chance(Outcome.ROOM_AT_DOUGH_IN, m -> m < 0), Guard.Level.SOON),
              List.of(
                  note("With the malt in, ", Outcome.ROOM_AT_DOUGH_IN),
                  Note.of(" stay below the rim, wanted ", "headroomM", wantedM),
                  Note.words(".")),
              "Hold back a few litres of liquor and add them when the bag is out.",
              "strikeReady",
              doughIn,
              "Malt takes about 0.7 L a kilogram.",
              "Hot liquor over the rim scalds."));
    }
    double atBreak = chance(Outcome.ROOM_AT_BREAK, m -> m < 2 * wantedM);
    if (atBreak >= CHANCE_SHOWN) {
      found.add(
          new Guard(
              "boilOver",
              level(atBreak, Guard.Level.SOON),
              List.of(
                  note("At the hot break ", Outcome.ROOM_AT_BREAK),
                  Note.of(" stay for the foam, wanted ", "headroomM", 2 * wantedM),
                  Note.words(".")),
              "Stay by the kettle as it nears the boil; cut the duty to half before the foam rises.",
              "boilReached",
              atBreak,
              "Foam doubles the height of a full kettle at the break.",
              "Boiling wort scalds in an instant and wets what is electric."));
    }
  }

  private void circuit() {
    double chance = chance(Outcome.BREAKER, share -> share > BREAKER_SHARE);
    if (chance >= CHANCE_SHOWN) {
      boolean over = chance(Outcome.BREAKER, share -> share > 1) >= CHANCE_SHOWN;
      found.add(
          new Guard(
              "circuitLoad",
              over ? Guard.Level.STOP : Guard.Level.NOTE,
              List.of(
                  note("The element draws ", Outcome.CURRENT),
                  note(", ", Outcome.BREAKER),
                  Note.words(" of its breaker.")),
              "Nothing else on this circuit; feel the plug after a quarter of an hour.",
              "liquorIn",
              chance,
              "An element runs for hours; circuits are sized for 125 % of such a load.",
              "Mains near water: a tested ground-fault breaker, and wiring by a licensed electrician."
                  + " Follow your local code."));
    }
  }

  private void suction(BrewDay day) {
    if (!day.rig().loop().present()) {
      return;
    }
    double chance = chance(Outcome.SUCTION, m -> m < 0);
    if (chance >= CHANCE_SHOWN) {
      found.add(
          new Guard(
              "pumpStarves",
              level(chance, Guard.Level.SOON),
              suctionSays(),
              "Wait until the wort has cooled well below the boil, or throttle behind the pump, never before it.",
              "flameOut",
              chance,
              "Near the boil only the height of wort above the pump pushes it in.",
              "A hose that comes off near the boil scalds."));
    }
  }

  private List<Note> suctionSays() {
    double middle = Bands.of(ensemble.outcome(Outcome.SUCTION)).middle();
    String words = middle < 0 ? "At its hottest the pump lacks " : "At its hottest the pump has ";
    return List.of(
        Note.of(words, Outcome.SUCTION.key(), Math.abs(middle)),
        Note.words(middle < 0 ? " of suction head." : " of suction head to spare."));
  }

  private void lift(BrewDay day) {
    double reachM = day.rig().working().liftReachM().value();
    double limitKg = Math.max(1, Lifting.limitKg(reachM, 0.9, 0.6, 0, 1, 0.9));
    double chance = chance(Outcome.BAG_WET, kg -> kg > limitKg);
    if (chance >= CHANCE_SHOWN) {
      found.add(
          new Guard(
              "heavyBag",
              day.rig().working().hoist() ? Guard.Level.NOTE : Guard.Level.SOON,
              List.of(
                  note("The bag weighs ", Outcome.BAG_WET),
                  note(" dripping and ", Outcome.BAG_DRIPPED),
                  Note.of(
                      " drained; at arm's length the recommended limit is ", "limitKg", limitKg),
                  Note.words(".")),
              "Use a hoist, or two people; never alone with the arms out.",
              "mashDone",
              chance,
              "Malt holds twice its weight in wort while it drips.",
              "Revised NIOSH lifting equation. A falling bag scalds."));
    }
  }

  private void drain() {
    double chance = chance(Outcome.DRAIN, c -> c > DRAIN_MOST_C);
    if (chance >= CHANCE_SHOWN) {
      found.add(
          new Guard(
              "hotDrain",
              level(chance, Guard.Level.SOON),
              List.of(
                  note("The first cooling water leaves at ", Outcome.DRAIN),
                  Note.of("; a drain takes ", "drainC", DRAIN_MOST_C),
                  Note.words(".")),
              "Catch the first buckets for cleaning; open the tap further.",
              "knockOut",
              chance,
              "The chiller hands the wort's heat to little water.",
              "Many codes allow 60 C (140 F) at the most into a drain. Follow your local code. It scalds."));
    }
  }

  private void unfinished(Recipe recipe) {
    boolean shut = recipe.pack().kind() != Pack.Kind.KEG;
    double chance = chance(Outcome.PACKED_OVER, plato -> plato > STILL_PLATO);
    if (chance >= CHANCE_SHOWN) {
      found.add(
          new Guard(
              "stillFermenting",
              shut ? Guard.Level.SOON : Guard.Level.NOTE,
              List.of(
                  note("When the ferment's steps are over, ", Outcome.PACKED_OVER),
                  Note.words(" may still be left to ferment.")),
              "Package only after two equal gravities two days apart, whatever the calendar says.",
              "cast",
              chance,
              "The yeast's pace is a guess until the first readings.",
              "Bottles that ferment on burst: never fill glass with live beer, read the package's own"
                  + " marking, wear eye protection. Follow your local code."));
    }
  }

  private void lid(Recipe recipe) {
    if (recipe.boil().lid() == Boil.Lid.ON) {
      found.add(
          new Guard(
              "lidOnInBoil",
              Guard.Level.NOTE,
              List.of(
                  Note.words(
                      "It is to boil under the lid; of the sulphide that the malt can give, "),
                  note("", Outcome.SULFIDE),
                  Note.words(" is free in the wort that is cast.")),
              "Leave the lid ajar, cut the duty before the foam rises, and lift it away from you.",
              "boilReached",
              1,
              "A lid keeps heat and foam in; how much steam gets past it is a guess to be learnt.",
              "A covered kettle boils over without warning, and the steam under a lid scalds."));
    }
  }

  private void heat() {
    double chance = chance(Outcome.GAVE_UP, gaveUp -> gaveUp > 0);
    if (chance >= CHANCE_SHOWN) {
      found.add(
          new Guard(
              "heatNotReached",
              level(chance, Guard.Level.STOP),
              List.of(Note.words("A wanted temperature may never be reached.")),
              "Lid on, insulate, or brew less.",
              "boilReached",
              chance,
              "What the element gives is lost to the room before.",
              ""));
    }
  }
}
