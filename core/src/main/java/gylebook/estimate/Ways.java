package gylebook.estimate;

import gylebook.recipe.Goods;
import gylebook.rig.Rig;
import gylebook.simulate.Ahead;
import gylebook.simulate.Change;
import gylebook.simulate.DayLog;
import gylebook.simulate.Leg;
import gylebook.simulate.Outcome;
import gylebook.simulate.Sight;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;

/// The ways that make sense where a brew stands, and how far each can go on this rig.
@AnyUnit("amounts of every unit")
final class Ways {
  private static final double L_PER_M3 = 1000;
  private static final double SEC_PER_HR = 3600;
  // Beyond these nobody goes on for the sake of a number (our judgement).
  private static final double LONGEST_BOIL_SEC = 2 * SEC_PER_HR;
  private static final double LONGEST_REST_SEC = SEC_PER_HR;
  private static final double LONGEST_STAND_SEC = SEC_PER_HR;
  // 30 P: beyond it ordinary yeast gives in and stirring takes long (common practice, no source).
  private static final double STRONGEST_FRAC = 0.30;
  private static final double GOODS_L_PER_KG = 0.65;
  // As the planner has it: a fermenter wants room for its head.
  private static final double FERMENTER_FULL_FRAC = 0.92;
  // Dry malt extract ferments about as far as the wort it was made from; sugar wholly (assumed).
  private static final double EXTRACT_FERMENTS_FRAC = 0.75;
  private static final double SUGAR_FERMENTS_FRAC = 0.95;
  private static final double MINUTE_SEC = 60;
  private static final double JUG_L = 0.1;
  private static final double SCALE_KG = 0.01;

  private final Belief belief;
  private final Ahead asItIs;
  private final DayAhead day;
  private final Rig rig;
  private final List<Way> ways = new ArrayList<>();

  private Ways(Belief belief, Ahead asItIs) {
    this.belief = belief;
    this.asItIs = asItIs;
    this.day = DayAhead.of(belief);
    this.rig = belief.twins().day().rig();
  }

  static List<Way> of(Belief belief, Ahead asItIs) {
    Ways all = new Ways(belief, asItIs);
    all.boil();
    all.dilute();
    all.sweeten();
    all.take();
    all.stand();
    all.ways.addAll(HopWays.of(all.day));
    return List.copyOf(all.ways);
  }

  static List<Change> nothing(double amount) {
    return List.of();
  }

  private static double same(double amount) {
    return amount;
  }

  private void impossible(Way like, Lever.Limit because) {
    ways.add(
        new Way(
            like.kind(),
            like.raises(),
            like.lowers(),
            like.amountKey(),
            like.shown(),
            like.stepNumber(),
            0,
            because,
            Ways::nothing));
  }

  static Way timed(
      Lever.Kind kind,
      String key,
      Set<Goal> raises,
      Set<Goal> lowers,
      double mostSec,
      Lever.Limit binds,
      DoubleFunction<List<Change>> changes) {
    return new Way(
        kind, raises, lowers, key, Ways::same, MINUTE_SEC, Math.max(0, mostSec), binds, changes);
  }

  private void boil() {
    Set<Goal> up = Set.of(Goal.STRENGTH, Goal.BITTERNESS);
    Set<Goal> down = Set.of(Goal.LITRES);
    List<Leg> boil = day.boil();
    if (boil.isEmpty()) {
      impossible(
          timed(Lever.Kind.BOIL_ON, "longerSec", up, down, 0, Lever.Limit.TIME_PAST, Ways::nothing),
          past());
      impossible(
          timed(
              Lever.Kind.STOP_EARLY,
              "earlierSec",
              down,
              up,
              0,
              Lever.Limit.TIME_PAST,
              Ways::nothing),
          past());
      return;
    }
    double fastestLPerSec = Lever.band(asItIs.outcome(Outcome.BOIL_OFF_RATE)).high() / SEC_PER_HR;
    double toBareSec = spareAtFlameOutL() / Math.max(1e-6, fastestLPerSec);
    boolean bare = toBareSec < LONGEST_BOIL_SEC;
    String first = boil.getFirst().key();
    ways.add(
        timed(
            Lever.Kind.BOIL_ON,
            "longerSec",
            up,
            down,
            Math.min(toBareSec, LONGEST_BOIL_SEC),
            bare ? Lever.Limit.ELEMENT_BARE : Lever.Limit.ENOUGH,
            bySec -> List.of(new Change.Lasts(first, day.countedSec(first, bySec)))));
    ways.add(
        timed(
            Lever.Kind.STOP_EARLY,
            "earlierSec",
            down,
            up,
            day.boilLeftSec(),
            Lever.Limit.NOTHING_LEFT,
            bySec -> shorter(boil, bySec)));
  }

  private static Lever.Limit past() {
    return Lever.Limit.TIME_PAST;
  }

  /// Time is taken from what comes first, so that later additions boil as long as they should.
  private static List<Change> shorter(List<Leg> legs, double bySec) {
    List<Change> changes = new ArrayList<>();
    double leftSec = bySec;
    for (Leg leg : legs) {
      double takenSec = Math.min(leftSec, DayAhead.lastsSec(leg));
      if (takenSec > 0) {
        changes.add(new Change.Lasts(leg.key(), -takenSec));
        leftSec -= takenSec;
      }
    }
    return List.copyOf(changes);
  }

  /// Wort at flame-out above what the element needs to stand under.
  private double spareAtFlameOutL() {
    double leastM = rig.element().topM().value() + rig.element().coverM().value();
    double leastL = leastM * rig.kettle().surfaceM2() * L_PER_M3;
    return hotL("flameOut").low() - leastL;
  }

  private gylebook.plan.Band hotL(String milestone) {
    return milestone.isEmpty()
        ? Lever.band(belief.column(Sight.HOT_L))
        : Lever.band(asItIs.milestone(milestone, DayLog.Column.HOT_L));
  }

  private double kettleRoomL(String milestone) {
    // Each twin has a kettle of its own; the room wanted must be left in 19 of 20.
    double[] nowL = belief.column(Sight.HOT_L);
    double[] roomM = belief.column(Sight.ROOM_M);
    double[] thenL = milestone.isEmpty() ? nowL : asItIs.milestone(milestone, DayLog.Column.HOT_L);
    double[] spareL = new double[nowL.length];
    for (int j = 0; j < nowL.length; j++) {
      double spareM = roomM[j] - rig.kettle().headroomM().value();
      spareL[j] = spareM * rig.kettle().surfaceM2() * L_PER_M3 + nowL[j] - thenL[j];
    }
    return Lever.band(spareL).low();
  }

  private double fermenterRoomL() {
    double holdsL = FERMENTER_FULL_FRAC * rig.working().fermenterL().value();
    return holdsL - Lever.band(asItIs.outcome(Outcome.FERMENTER)).high();
  }

  private void dilute() {
    // At flame-out the kettle has most room, and the wort is still hot enough to keep it clean.
    boolean kettle = !day.boil().isEmpty();
    String after = kettle ? "flameOut" : "";
    double kettleL = kettle ? kettleRoomL(after) : Double.POSITIVE_INFINITY;
    double roomL = Math.min(kettleL, fermenterRoomL());
    ways.add(
        new Way(
            Lever.Kind.DILUTE,
            Set.of(Goal.LITRES),
            Set.of(Goal.STRENGTH, Goal.BITTERNESS, Goal.COLOUR),
            "liquorL",
            Ways::same,
            JUG_L,
            Math.max(0, roomL),
            kettleL < fermenterRoomL() ? Lever.Limit.KETTLE_FULL : Lever.Limit.FERMENTER_FULL,
            liquorL ->
                List.of(kettle ? new Change.Pours(after, liquorL) : new Change.Dilutes(liquorL))));
  }

  private void sweeten() {
    sweeten(
        Lever.Kind.ADD_EXTRACT,
        Goods.Kind.DRY_EXTRACT.usual().moistureFrac(),
        EXTRACT_FERMENTS_FRAC);
    sweeten(Lever.Kind.ADD_SUGAR, Goods.Kind.SUGAR.usual().moistureFrac(), SUGAR_FERMENTS_FRAC);
  }

  private void sweeten(Lever.Kind kind, double moistureFrac, double fermentsFrac) {
    boolean boils = !day.boil().isEmpty();
    String after = day.inBoil() || !day.ahead("boilReached") ? "" : "boilReached";
    double roomKg = boils ? kettleRoomL(after) / GOODS_L_PER_KG : 0;
    double syrupKg = boils ? toSyrupKg() : 0;
    Lever.Limit binds =
        !boils
            ? Lever.Limit.TIME_PAST
            : roomKg < syrupKg ? Lever.Limit.KETTLE_FULL : Lever.Limit.TOO_STRONG;
    ways.add(
        new Way(
            kind,
            Set.of(Goal.STRENGTH),
            Set.of(),
            "goodsKg",
            Ways::same,
            SCALE_KG,
            Math.max(0, Math.min(roomKg, syrupKg)),
            binds,
            goodsKg -> List.of(new Change.Sweetens(after, goodsKg, moistureFrac, fermentsFrac))));
  }

  /// What brings the strongest and smallest wort at flame-out to a syrup.
  private double toSyrupKg() {
    double strongestPlato =
        Lever.band(asItIs.milestone("flameOut", DayLog.Column.WORT_PLATO)).high();
    double leastL = Lever.band(asItIs.milestone("flameOut", DayLog.Column.COLD_L)).low();
    double extractFrac = strongestPlato / 100;
    return leastL * (STRONGEST_FRAC - extractFrac) / (1 - STRONGEST_FRAC);
  }

  private void take() {
    Set<Goal> up = Set.of(Goal.STRENGTH);
    Set<Goal> down = Set.of(Goal.LITRES);
    boolean boils = !day.boil().isEmpty();
    String bagOut = day.ahead("bagOut") ? "bagOut" : "";
    ways.add(
        new Way(
            Lever.Kind.HOLD_BACK,
            up,
            down,
            "wortL",
            Ways::same,
            JUG_L,
            boils ? Math.max(0, spareAtFlameOutL()) : 0,
            boils ? Lever.Limit.ELEMENT_BARE : Lever.Limit.TIME_PAST,
            wortL -> List.of(new Change.TakesOut(bagOut, wortL))));
    String beforeCast = day.before("cast");
    boolean runsOff = day.ahead("cast");
    double leastL = Lever.band(asItIs.outcome(Outcome.FERMENTER)).low();
    ways.add(
        new Way(
            Lever.Kind.FEWER_LITRES,
            Set.of(),
            down,
            "wortL",
            Ways::same,
            JUG_L,
            runsOff ? Math.max(0, leastL) : 0,
            runsOff ? Lever.Limit.NOTHING_LEFT : Lever.Limit.TIME_PAST,
            wortL -> List.of(new Change.TakesOut(beforeCast, wortL))));
  }

  private void stand() {
    day.first("rest.")
        .ifPresent(
            rest ->
                ways.add(
                    timed(
                        Lever.Kind.LONGER_REST,
                        "longerSec",
                        Set.of(Goal.STRENGTH),
                        Set.of(),
                        LONGEST_REST_SEC,
                        Lever.Limit.ENOUGH,
                        bySec -> List.of(new Change.Lasts(rest, day.countedSec(rest, bySec))))));
    day.first("stood.")
        .or(() -> day.first("knockOut"))
        .ifPresentOrElse(
            stand ->
                ways.add(
                    timed(
                        Lever.Kind.LONGER_STAND,
                        "longerSec",
                        Set.of(Goal.BITTERNESS),
                        Set.of(),
                        LONGEST_STAND_SEC,
                        Lever.Limit.ENOUGH,
                        bySec -> List.of(new Change.Lasts(stand, day.countedSec(stand, bySec))))),
            () ->
                ways.add(
                    timed(
                        Lever.Kind.LONGER_STAND,
                        "longerSec",
                        Set.of(Goal.BITTERNESS),
                        Set.of(),
                        0,
                        Lever.Limit.TIME_PAST,
                        Ways::nothing)));
  }
}
