package gylebook.brewday;

import gylebook.estimate.Belief;
import gylebook.estimate.Findings;
import gylebook.estimate.Held;
import gylebook.estimate.Hindsight;
import gylebook.estimate.Instrument;
import gylebook.estimate.Suspicion;
import gylebook.journal.Event;
import gylebook.plan.Figure;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.simulate.Ahead;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Outcome;
import gylebook.units.AnyUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Tells a finished day over again, to see what all its notes together say of it and of the rig.
@AnyUnit("readings of every quantity")
final class LookingBack {
  // More often says no more: the error of place stays, and a reading takes time to be followed.
  private static final double APART_SEC = 55;

  // What leads for a few minutes and is gone is chance more often than not (see the test).
  private static final double SHORT_SEC = 600;

  private static final List<Outcome> SHOWN =
      List.of(
          Outcome.GRAIN_MEAN,
          Outcome.KETTLE_YIELD,
          Outcome.PRE_BOIL_STRENGTH,
          Outcome.BOIL_OFF_RATE,
          Outcome.POST_BOIL_COLD,
          Outcome.FERMENTER,
          Outcome.STRENGTH,
          Outcome.BITTERNESS,
          Outcome.ATTENUATION,
          Outcome.ENERGY);

  private final BrewDay day;
  private final Plan plan;
  private final Instant began;
  private final List<Instrument> instruments;
  private final List<String> order;
  private final long seed;
  private final Map<LookedBack.Otherwise, Double> ledSec = new LinkedHashMap<>();

  LookingBack(BrewDay day, Plan plan, Instant began, List<Instrument> instruments, long seed) {
    this.day = day;
    this.plan = plan;
    this.began = began;
    this.instruments = instruments;
    this.order = plan.forecast().milestones().stream().map(Milestone::key).toList();
    this.seed = seed;
  }

  /// What the notes say.
  ///
  /// @param basis where it was learnt, in words
  LookedBack at(List<DayNote> happened, int twinsCount, String basis) {
    DayOrder points = new DayOrder(began, order, PlanInForce.fixed(plan).atSecByMilestone());
    List<DayNote> noted = apart(points.withUnseen(happened));
    Map<String, Double> seen = points.seenInBoil(noted);
    Hindsight hindsight =
        Hindsight.of(
            day,
            instruments,
            seed,
            twinsCount,
            belief -> tell(belief, noted, seen, true),
            belief -> tell(belief, noted, seen, false));
    return new LookedBack(
        hindsight.onDay().readings(),
        otherwise(),
        Findings.of(hindsight, day.rig(), basis),
        told(hindsight));
  }

  private void tell(
      Belief belief, List<DayNote> noted, Map<String, Double> seen, boolean watching) {
    Telling telling = new Telling(began, order, belief, PlanInForce.fixed(plan));
    for (DayNote note : noted) {
      double fromSec = belief.clockSec();
      Optional<LookedBack.Otherwise> led = watching ? led(telling) : Optional.empty();
      telling.tell(note, seen);
      led.ifPresent(one -> ledSec.merge(one, belief.clockSec() - fromSec, Double::sum));
    }
  }

  /// What leads now. It is asked after each note: the bank is set up anew at each point, and what
  /// was put right leads no longer at the end of its leg.
  private Optional<LookedBack.Otherwise> led(Telling telling) {
    Suspicion.Share first = telling.suspicion().shares().getFirst();
    String key = telling.belief().leg().key();
    String says = plan.forecast().milestone(key).map(Milestone::says).orElse(key);
    return first.leads()
        ? Optional.of(new LookedBack.Otherwise(key, says, first.supposition()))
        : Optional.empty();
  }

  private List<LookedBack.Otherwise> otherwise() {
    return ledSec.entrySet().stream()
        .filter(each -> each.getValue() >= SHORT_SEC)
        .map(Map.Entry::getKey)
        .toList();
  }

  /// The notes with at most one reading a minute of each instrument.
  private List<DayNote> apart(List<DayNote> happened) {
    Map<String, Double> lastSec = new HashMap<>();
    List<DayNote> kept = new ArrayList<>();
    for (DayNote note : happened) {
      double atSec = Telling.sec(began, note.at());
      boolean follows =
          note.event() instanceof Event.ReadingTaken taken
              && instruments.stream().anyMatch(one -> one.name().equals(taken.instrument()))
              && atSec - lastSec.getOrDefault(taken.instrument(), -APART_SEC) < APART_SEC;
      if (!follows) {
        kept.add(note);
        if (note.event() instanceof Event.ReadingTaken taken) {
          lastSec.put(taken.instrument(), atSec);
        }
      }
    }
    return kept;
  }

  private List<LookedBack.Told> told(Hindsight hindsight) {
    Ahead onDay = hindsight.onDay().ahead();
    Ahead again = hindsight.again().ahead();
    return SHOWN.stream()
        .map(
            outcome -> {
              Optional<Double> planned =
                  plan.forecast()
                      .figure(outcome.key())
                      .map(Figure::band)
                      .map(band -> band.middle());
              return new LookedBack.Told(
                  outcome.key(),
                  planned,
                  Held.of(onDay.outcome(outcome)),
                  Held.of(again.outcome(outcome)));
            })
        .toList();
  }
}
