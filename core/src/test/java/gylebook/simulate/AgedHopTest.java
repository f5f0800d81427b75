package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AgedHopTest {
  private static final Settings SET = new Settings(26, 70, 0, 1, 1, 0.7, 0);

  private static Hop aged(Hop hop, double agedDay, double storedC, Hop.Wrap wrap) {
    return new Hop(
        hop.name(),
        hop.lot(),
        hop.form(),
        hop.massG(),
        hop.alphaFrac(),
        hop.when(),
        Optional.of(Entered.of(agedDay, Unit.known(Quantity.TIME, "d"))),
        Optional.of(Entered.of(storedC, Unit.known(Quantity.TEMPERATURE, "°C"))),
        wrap);
  }

  private static Hop first() {
    return Demo.copperBitter().hops().getFirst();
  }

  @Test
  void halfAYearLooseInTheRoomLosesAThirdAndAFreezerHalvesTheLossEvery15Kelvin() {
    // Garetz 1994, after Green 1978: 35 % in half a year at 20 C is the middle of the lists; the
    // rate halves every 15 K, so 180 d at 5 C are as 90 d at 20 C.
    assertThat(AgedHop.leftFrac(aged(first(), 180, 20, Hop.Wrap.LOOSE)))
        .isCloseTo(0.65, within(1e-9));
    assertThat(AgedHop.leftFrac(aged(first(), 180, 5, Hop.Wrap.LOOSE)))
        .isCloseTo(Math.sqrt(0.65), within(1e-9));
    assertThat(AgedHop.leftFrac(aged(first(), 180, 20, Hop.Wrap.SEALED)))
        .isCloseTo(Math.sqrt(0.65), within(1e-9));
    assertThat(AgedHop.leftFrac(first())).isEqualTo(1);
  }

  @Test
  void beyondTheLawItsEndHolds() {
    assertThat(AgedHop.leftFrac(aged(first(), 90, -60, Hop.Wrap.OPENED)))
        .isEqualTo(AgedHop.leftFrac(aged(first(), 90, -30, Hop.Wrap.OPENED)));
  }

  @Test
  void agedHopsBitterLessByWhatTheyLost() {
    Recipe fresh = Demo.copperBitter();
    List<Hop> old = fresh.hops().stream().map(hop -> aged(hop, 180, 20, Hop.Wrap.LOOSE)).toList();
    double before = bitterness(fresh);
    double after = bitterness(fresh.with(fresh.grist(), old));
    assertThat(after / before).isCloseTo(0.65, within(0.02));
  }

  private static double bitterness(Recipe recipe) {
    Ensemble one =
        Ensemble.of(new BrewDay(recipe, DemoRigs.household(), SET), 1, 1, () -> false, _ -> {})
            .orElseThrow();
    return one.outcome(Outcome.BITTERNESS)[0];
  }
}
