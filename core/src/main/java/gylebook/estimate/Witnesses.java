package gylebook.estimate;

import gylebook.rig.Probe;
import gylebook.simulate.Leg;
import gylebook.simulate.Outcome;
import gylebook.simulate.Sight;
import gylebook.simulate.Twins;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// Which instrument to trust, and which cheap test would tell more.
///
/// What a test would leave of a doubt is computed from the twins: the correlation of what the test
/// would show with what is doubted. No test is tried on the brew.
@AnyUnit("doubts of every quantity")
public final class Witnesses {
  // What an ordinary brewer can live with (our judgement).
  private static final double CLOSE_K = 0.3;
  private static final double CLOSE_L = 0.3;
  private static final double CLOSE_PLATO = 0.2;
  private static final double UNLEARNT_RATIO = 0.85;
  private static final double WORTH_RATIO = 0.9;

  // A kitchen's ice and water with a thermometer's own scatter; pressure known to 0.3 kPa.
  private static final double ICE_NOISE_K = 0.11;
  private static final double BOIL_NOISE_K = 0.13;
  private static final double JUG_RATIO = 0.05;
  private static final double PUMP_SEC = 60;

  private final Belief belief;
  private final List<Trial> trials;

  private Witnesses(Belief belief) {
    this.belief = belief;
    this.trials = trials();
  }

  /// What a test would show in each twin, and how it would scatter.
  private static final class Trial {
    final CheapTest test;
    final String instrument;
    final double[] shows;
    final double noise;

    Trial(CheapTest test, String instrument, double[] shows, double noise) {
      this.test = test;
      this.instrument = instrument;
      this.shows = shows;
      this.noise = noise;
    }
  }

  /// One verdict an instrument.
  public static List<Witness> of(Belief belief) {
    Witnesses witnesses = new Witnesses(belief);
    return belief.instruments().stream().map(witnesses::witness).toList();
  }

  /// Tests by what they would leave of the doubt about what comes next, the best first; those that
  /// would leave nearly all of it are not named.
  public static List<Witness.WorthDoing> worthDoing(Belief belief) {
    return new Witnesses(belief).ranked(matter(belief));
  }

  /// What matters next: grain in the mash, time to the boil after it, litres in the boil.
  private static double[] matter(Belief belief) {
    String key = belief.leg().key();
    boolean mash = belief.twins().sees(Sight.GRAIN_C).length > 0 && inMash(key);
    if (mash) {
      return belief.twins().sees(Sight.GRAIN_C);
    }
    return belief.ahead().outcome(outcome(key));
  }

  private static boolean inMash(String key) {
    return key.startsWith("rest.") || key.startsWith("toRest.") || key.equals("settled");
  }

  private static Outcome outcome(String key) {
    return switch (key) {
      case "strikeReady", "doughedIn" -> Outcome.DOUGH_IN;
      case "bagOut", "boilReached" -> Outcome.TO_BOIL;
      default -> Outcome.FERMENTER;
    };
  }

  private Witness witness(Instrument instrument) {
    Probe.Place place = instrument.place();
    double[] placeC = belief.twins().sees(Traits.sight(place));
    double[] high = belief.traits().high(belief.twins(), instrument.name(), placeC);
    Held held = Held.of(high);
    Witness.Reason reason = reason(instrument, held);
    Witness.Verdict verdict =
        switch (reason) {
          case CLOSE -> Witness.Verdict.TRUST;
          case KNOWN_OFF -> Witness.Verdict.CORRECT;
          case NOTHING_SEEN, STILL_WIDE -> Witness.Verdict.CANNOT_TELL;
          case DOES_NOT_FIT -> Witness.Verdict.DOUBT;
        };
    Optional<Witness.WorthDoing> settles =
        verdict == Witness.Verdict.TRUST ? Optional.empty() : ranked(high).stream().findFirst();
    return new Witness(instrument.name(), verdict, reason, held, settles);
  }

  private Witness.Reason reason(Instrument instrument, Held high) {
    double close =
        switch (instrument.measures()) {
          case TEMPERATURE -> CLOSE_K;
          case HOT_VOLUME -> CLOSE_L;
          case STRENGTH -> CLOSE_PLATO;
        };
    if (belief.asideInRowCount(instrument.name()) >= 2) {
      return Witness.Reason.DOES_NOT_FIT;
    }
    if (Math.abs(high.mean()) > Math.max(2 * high.doubt(), close)) {
      return Witness.Reason.KNOWN_OFF;
    }
    if (Math.abs(high.mean()) + high.doubt() <= 1.5 * close && high.doubt() <= close) {
      return Witness.Reason.CLOSE;
    }
    double priorDoubt = instrument.bias().doubtInUnit();
    return high.doubt() > UNLEARNT_RATIO * priorDoubt
        ? Witness.Reason.NOTHING_SEEN
        : Witness.Reason.STILL_WIDE;
  }

  private List<Witness.WorthDoing> ranked(double[] doubted) {
    double own2 = SquareRootFilter.variance(doubted, SquareRootFilter.mean(doubted));
    List<Witness.WorthDoing> ranked = new ArrayList<>();
    for (Trial trial : trials) {
      double left = leftRatio(doubted, own2, trial);
      if (left <= WORTH_RATIO) {
        ranked.add(new Witness.WorthDoing(trial.test, trial.instrument, left));
      }
    }
    ranked.sort(
        Comparator.comparingDouble(Witness.WorthDoing::leftRatio)
            .thenComparingDouble(worth -> worth.test().costSec()));
    return List.copyOf(ranked);
  }

  /// `sqrt(1 - cov^2/(v (s + r)))`, chance correlations left out.
  private static double leftRatio(double[] doubted, double own2, Trial trial) {
    double shown2 = SquareRootFilter.variance(trial.shows, SquareRootFilter.mean(trial.shows));
    if (!(own2 > 0) || !(shown2 > 0)) {
      return 1;
    }
    double cross = SquareRootFilter.covariance(doubted, trial.shows);
    double rho2 = cross * cross / (own2 * shown2);
    double followed = SquareRootFilter.dampedRatio(rho2, doubted.length) * rho2;
    double told = shown2 / (shown2 + trial.noise * trial.noise);
    return Math.sqrt(Math.max(0, 1 - followed * told));
  }

  private List<Trial> trials() {
    List<Trial> all = new ArrayList<>();
    for (Instrument instrument : belief.instruments()) {
      if (instrument.measures() == Instrument.Measures.TEMPERATURE) {
        bench(all, instrument);
      }
      if (instrument.measures() == Instrument.Measures.HOT_VOLUME) {
        all.add(asRead(CheapTest.DIP, instrument, Probe.Place.KETTLE));
      }
    }
    Twins twins = belief.twins();
    if (twins.day().rig().loop().present()) {
      double[] flow = twins.sees(Sight.FLOW_L_PER_SEC);
      double noise = JUG_RATIO * SquareRootFilter.mean(flow);
      all.add(new Trial(CheapTest.JUG_AND_CLOCK, "", flow, noise));
      if (twins.leg().pump() == Leg.Pump.OFF && twins.underWay()) {
        pumpOn(all);
      }
    }
    return all;
  }

  /// Ice and boiling water, for what can be carried to them; the hand-held also into the grain.
  private void bench(List<Trial> all, Instrument instrument) {
    if (instrument.role() != Instrument.Role.STEERS) {
      double[] ice = new double[belief.twins().count()];
      double[] boil = belief.twins().sees(Sight.BOILS_C);
      String name = instrument.name();
      all.add(
          new Trial(
              CheapTest.ICE_POINT,
              name,
              belief.traits().high(belief.twins(), name, ice),
              ICE_NOISE_K));
      Arrays.fill(boil, SquareRootFilter.mean(boil));
      all.add(
          new Trial(
              CheapTest.BOILING_WATER,
              name,
              belief.traits().high(belief.twins(), name, boil),
              BOIL_NOISE_K));
    }
    if (instrument.role() == Instrument.Role.CARRIED) {
      all.add(asRead(CheapTest.HAND_HELD_IN_CENTRE, instrument, Probe.Place.BED));
    }
  }

  private Trial asRead(CheapTest test, Instrument instrument, Probe.Place place) {
    double[] shows = belief.traits().expected(belief.twins(), instrument.name(), place, true);
    return new Trial(test, instrument.name(), shows, instrument.noise());
  }

  private void pumpOn(List<Trial> all) {
    Optional<Instrument> steering =
        belief.instruments().stream()
            .filter(each -> each.role() == Instrument.Role.STEERS)
            .findFirst();
    if (steering.isEmpty()) {
      return;
    }
    Belief tried = belief.copy();
    Switched now = tried.switched();
    tried.switchTo(new Switched(now.dutyFrac(), Optional.of(true), now.lidOn()));
    tried.advance(tried.clockSec() + PUMP_SEC);
    Instrument probe = steering.get();
    double[] shows = tried.traits().expected(tried.twins(), probe.name(), probe.place(), true);
    all.add(new Trial(CheapTest.PUMP_ON, probe.name(), shows, probe.noise()));
  }
}
