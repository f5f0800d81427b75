package gylebook.brewday;

import gylebook.estimate.Belief;
import gylebook.estimate.Instrument;
import gylebook.estimate.Reading;
import gylebook.estimate.Watch;
import gylebook.journal.Event;
import gylebook.simulate.Leg;
import gylebook.simulate.Sight;
import gylebook.units.AnyUnit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/// What the notes say beside what moves the belief: what was read lately, what the controller is
/// said to give and for how long, what was measured round the loop, and what sends no more.
@AnyUnit("readings of every quantity")
final class Lookout {
  private static final double RECENT_SEC = 900;
  // Within this a duty is about the same (our judgement).
  private static final double SAME_DUTY_FRAC = 0.05;
  // From here on the plan asks for all there is.
  private static final double FULL_FRAC = 0.8;
  // What is tied is noted once a minute.
  private static final double NOTED_EVERY_SEC = 60;

  private final Instant began;
  private final List<Instrument> instruments;
  private final List<DayNote> told;
  private final Belief here;

  Lookout(Instant began, List<Instrument> instruments, List<DayNote> told, Belief here) {
    this.began = began;
    this.instruments = instruments;
    this.told = told;
    this.here = here;
  }

  /// All of it, for the time the belief stands at.
  ///
  /// @param sending instruments that should send by themselves
  Watch watch(Set<String> sending) {
    Watch watch =
        Watch.of(recent())
            .withLoop(
                lately(Sighting.FLOW), lately(Sighting.LEVEL_ROUND_BAG), lately(Sighting.CHILLED))
            .withSilent(silent(sending))
            .withOtherLoad(lately(Sighting.OTHER_LOAD).orElse(0));
    return duty(watch);
  }

  private double sec(DayNote note) {
    return Telling.sec(began, note.at());
  }

  private List<Reading> recent() {
    List<Reading> recent = new ArrayList<>();
    for (DayNote note : told.reversed()) {
      if (sec(note) < here.clockSec() - RECENT_SEC) {
        break;
      }
      if (note.event() instanceof Event.ReadingTaken taken) {
        instrument(taken.instrument())
            .flatMap(one -> AsRead.reading(one, taken, sec(note)))
            .ifPresent(recent::add);
      }
    }
    return recent.reversed();
  }

  private Optional<Instrument> instrument(String name) {
    return instruments.stream().filter(one -> one.name().equals(name)).findFirst();
  }

  /// The last that was measured of it while it still says something.
  private OptionalDouble lately(Sighting sighting) {
    for (DayNote note : told.reversed()) {
      if (sec(note) < Math.max(here.clockSec() - sighting.goodForSec(), from(sighting))) {
        break;
      }
      if (note.event() instanceof Event.ReadingTaken taken
          && taken.instrument().equals(sighting.says())) {
        return sighting.inside(taken.asRead());
      }
    }
    return OptionalDouble.empty();
  }

  /// What was measured of the loop holds for the leg it was measured in.
  private double from(Sighting sighting) {
    return sighting == Sighting.OTHER_LOAD ? 0 : here.legFromSec();
  }

  private Watch duty(Watch watch) {
    Optional<Double> logged = here.switched().dutyFrac();
    if (logged.isPresent()) {
      return watch.withDuty(logged.get(), here.clockSec() - sinceSec(logged.get()));
    }
    // What the plan has switched off somebody may have left on; only a full duty is taken for told.
    return planned()
        .map(duty -> watch.withDuty(duty, here.clockSec() - here.legFromSec()))
        .orElse(watch);
  }

  /// Since when the heater is said to give about that.
  private double sinceSec(double dutyFrac) {
    double sinceSec = here.clockSec();
    for (DayNote note : told.reversed()) {
      Optional<Double> told = said(note.event());
      if (told.isPresent()) {
        boolean same = Math.abs(told.get() - dutyFrac) <= SAME_DUTY_FRAC;
        if (!same || sec(note) < here.legFromSec()) {
          break;
        }
        sinceSec = sec(note);
      }
    }
    return sinceSec;
  }

  /// The duty that a note tells: somebody switched it, or the controller said it. Switched back to
  /// what is planned, it is no duty that could be the same.
  private static Optional<Double> said(Event event) {
    return switch (event) {
      case Event.SwitchSet(String what, String state) when what.equals("heater") ->
          Optional.of(DayRules.duty(state).orElse(Double.NaN));
      case Event.ReadingTaken taken when taken.instrument().equals(Sighting.DUTY.says()) ->
          Sighting.DUTY.inside(taken.asRead()).stream().boxed().findFirst();
      default -> Optional.empty();
    };
  }

  private Optional<Double> planned() {
    Leg leg = here.leg();
    if (leg.drive() instanceof Leg.Drive.ByHand(double dutyFrac)) {
      return Optional.of(dutyFrac).filter(duty -> duty >= FULL_FRAC);
    }
    boolean heatsUp =
        leg.until() instanceof Leg.Until.Reads || leg.until() instanceof Leg.Until.Boils;
    double heldFrac = here.sees(Sight.DUTY_FRAC).low();
    return heatsUp && heldFrac >= FULL_FRAC ? Optional.of(heldFrac) : Optional.empty();
  }

  private List<Watch.Silence> silent(Set<String> sending) {
    List<Watch.Silence> silent = new ArrayList<>();
    for (Instrument one : instruments) {
      if (sending.contains(one.name())) {
        double lastSec =
            told.reversed().stream()
                .filter(
                    note ->
                        note.event() instanceof Event.ReadingTaken taken
                            && taken.instrument().equals(one.name()))
                .mapToDouble(this::sec)
                .findFirst()
                .orElse(0);
        silent.add(new Watch.Silence(one.name(), here.clockSec() - lastSec, NOTED_EVERY_SEC));
      }
    }
    return silent;
  }
}
