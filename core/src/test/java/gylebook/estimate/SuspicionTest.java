package gylebook.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import gylebook.rig.Site;
import gylebook.simulate.BrewDay;
import gylebook.simulate.Leg;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/// Faults that really happen to the hidden truth, by seed; the bank must name them. No outside
/// source: a twin experiment.
class SuspicionTest {
  private static final int TWINS = 50;
  private static final int SEEDS = Boolean.getBoolean("long") ? 20 : 2;
  private static final double HIGH_M = 900;

  /// A fault, what should be supposed, and the leg at whose end that is asked.
  private record Seeded(String name, Rehearsal.Fault fault, Supposition right, String leg) {}

  private static boolean inRest(Leg leg) {
    return leg.key().equals("rest.0");
  }

  private static Rehearsal.Fault inRests(UnaryOperator<Leg> really) {
    return () -> leg -> inRest(leg) ? really.apply(leg) : leg;
  }

  /// A relay that gives this whatever the controller says; the controller says the opposite, as it
  /// would after a while.
  private static Rehearsal.Fault relay(double dutyFrac) {
    return new Rehearsal.Fault() {
      @Override
      public UnaryOperator<Leg> truth() {
        return leg ->
            inRest(leg)
                ? leg.switched(new Leg.Drive.ByHand(dutyFrac), leg.pump(), leg.lidOn())
                : leg;
      }

      @Override
      public double toldFrac(Leg leg, double really) {
        return inRest(leg) ? (dutyFrac > 0 ? 0 : 0.3) : really;
      }
    };
  }

  private static Rehearsal.Fault dial() {
    return new Rehearsal.Fault() {
      @Override
      public UnaryOperator<Leg> truth() {
        return UnaryOperator.identity();
      }

      @Override
      public double dialK() {
        return 4.2;
      }

      @Override
      public double dialDoubtK() {
        return 0.7;
      }
    };
  }

  private static Rehearsal.Fault height() {
    return new Rehearsal.Fault() {
      @Override
      public UnaryOperator<Leg> truth() {
        return UnaryOperator.identity();
      }

      @Override
      public BrewDay day(BrewDay day) {
        return high(day);
      }
    };
  }

  private static BrewDay high(BrewDay day) {
    Rig rig = day.rig();
    Site site = rig.site();
    Site up =
        new Site(
            Parameter.assumed(HIGH_M, 20, ""),
            site.stationKpa(),
            site.roomC(),
            site.roomHumidityFrac(),
            site.tapC(),
            site.goodsC());
    return new BrewDay(
        day.recipe(),
        new Rig(
            rig.name(),
            true,
            up,
            rig.kettle(),
            rig.element(),
            rig.bag(),
            rig.loop(),
            rig.probes(),
            rig.controller(),
            rig.chiller(),
            rig.working()),
        day.settings());
  }

  private static List<Seeded> faults() {
    return List.of(
        new Seeded(
            "pump off",
            inRests(leg -> leg.switched(leg.drive(), Leg.Pump.OFF, leg.lidOn())),
            Supposition.PUMP_OFF,
            "rest.0"),
        new Seeded(
            "lid off",
            inRests(leg -> leg.switched(leg.drive(), leg.pump(), false)),
            Supposition.LID_OTHERWISE,
            "rest.0"),
        new Seeded("relay stuck", relay(1), Supposition.HEATER_STUCK_ON, "rest.0"),
        new Seeded("heater dead", relay(0), Supposition.HEATER_DEAD, "rest.0"),
        new Seeded("dial off", dial(), Supposition.DIAL_OFF, "strikeReady"),
        new Seeded("height wrong", height(), Supposition.HEIGHT_WRONG, "hop.1"));
  }

  private static Supposition leading(Seeded seeded, int seed) {
    Map<String, List<Suspicion.Share>> suspected =
        new Rehearsal(seed, TWINS, seeded.fault(), true).suspecting().upTo(seeded.leg()).suspected;
    return suspected.getOrDefault(seeded.leg(), List.of()).getFirst().supposition();
  }

  @Test
  void theRightSuppositionLeadsInNineOfTenSeededFaults() {
    int right = 0;
    int all = 0;
    StringBuilder missed = new StringBuilder();
    for (Seeded seeded : faults()) {
      for (int seed = 1; seed <= SEEDS; seed++) {
        Supposition led = leading(seeded, seed);
        all++;
        right += led == seeded.right() ? 1 : 0;
        missed.append(led == seeded.right() ? "" : seeded.name() + " " + seed + ": " + led + "; ");
      }
    }
    System.out.printf(
        "seeded faults, %d seeds each: %d of %d led; missed: %s%n", SEEDS, right, all, missed);
    assertThat(right)
        .as("of %d; missed: %s", all, missed)
        .isGreaterThanOrEqualTo((all * 9 + 9) / 10);
  }

  /// A probe that is as slow as in air shows where what it reads turns: at the strike and after the
  /// malt went in. Of ten days (seeds 1 to 10) seven were named by then; once its slowness is
  /// learnt it is a slow probe and no surprise, so it is asked early.
  @Test
  void aSteeringProbeAsSlowAsInAirIsNamedOnMostDaysByTheTimeTheMaltIsIn() {
    Rehearsal.Fault dry =
        new Rehearsal.Fault() {
          @Override
          public UnaryOperator<Leg> truth() {
            return UnaryOperator.identity();
          }

          @Override
          public BrewDay day(BrewDay day) {
            return Supposition.dry(day);
          }
        };
    int named = 0;
    for (int seed = 1; seed <= 2 * SEEDS; seed++) {
      Map<String, List<Suspicion.Share>> suspected =
          new Rehearsal(seed, TWINS, dry, true).suspecting().upTo("doughedIn").suspected;
      boolean led =
          suspected.values().stream()
              .map(List::getFirst)
              .anyMatch(first -> first.leads() && first.supposition() == Supposition.PROBE_DRY);
      named += led ? 1 : 0;
    }
    System.out.printf("a slow probe, seeds 1 to %d: %d named%n", 2 * SEEDS, named);
    assertThat(named).isGreaterThanOrEqualTo(SEEDS);
  }

  @Test
  void whereNothingIsWrongNothingIsSupposed() {
    int quiet = 0;
    int legs = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      Rehearsal day = new Rehearsal(seed, TWINS, Rehearsal.NONE, true).suspecting();
      for (List<Suspicion.Share> shares : day.upTo("flameOut").suspected.values()) {
        legs++;
        quiet += shares.getFirst().supposition() == Supposition.NOTHING ? 1 : 0;
        assertThat(shares.stream().mapToDouble(Suspicion.Share::shareFrac).sum())
            .isCloseTo(1, org.assertj.core.api.Assertions.within(1e-9));
      }
    }
    System.out.printf(
        "days without a fault, seeds 1 to %d: nothing supposed at %d of %d points%n",
        SEEDS, quiet, legs);
    assertThat((double) quiet / legs).isGreaterThan(0.95);
  }
}
