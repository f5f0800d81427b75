package gylebook.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.recipe.Ferment;
import gylebook.recipe.Liquor;
import gylebook.recipe.Pack;
import gylebook.recipe.Recipe;
import gylebook.science.BeerGas;
import gylebook.science.FermentationCurve;
import gylebook.testing.BareRecipe;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class ColdSideTest {
  private static final Liquor WATER = new Liquor("", new Liquor.Ions(0, 0, 0, 0, 0, 0), List.of());

  private static Entered celsius(double valueC) {
    return Entered.of(valueC, Unit.known(Quantity.TEMPERATURE, "°C"));
  }

  private static Ferment.Step step(double startC, double endC, double days) {
    return new Ferment.Step(
        "",
        celsius(startC),
        celsius(endC),
        Entered.of(days, Unit.known(Quantity.TIME, "d")),
        false);
  }

  private static Recipe recipe(Pack.Kind kind, Ferment.Step... steps) {
    Recipe bare = BareRecipe.of(List.of(), WATER);
    return new Recipe(
        "",
        "",
        true,
        bare.aim(),
        bare.grist(),
        bare.liquor(),
        bare.rests(),
        bare.boil(),
        bare.stands(),
        bare.hops(),
        bare.others(),
        bare.yeast(),
        new Ferment(List.of(steps)),
        new Pack(kind, Entered.of(2.6, Unit.known(Quantity.CARBONATION, "vol"))),
        "",
        bare.elsewhere(),
        bare.kept());
  }

  private static ColdSide read(Recipe recipe) {
    Doubts doubts = new Doubts(1);
    doubts.turnTo(-1);
    ColdSide cold = new ColdSide();
    cold.read(recipe, doubts);
    return cold;
  }

  @Test
  void aSteadyFermentEndsWhenTheScienceSays() {
    double wantedHr = FermentationCurve.timeHr(0.02, 18, 0.10, 3.2, 1, 2.2);
    assertThat(read(recipe(Pack.Kind.KEG, step(18, 18, 14))).fermentEndSec / 3600)
        .isCloseTo(wantedHr, within(1e-6));
    // The same when the steps are too short: it goes on at the last temperature.
    assertThat(read(recipe(Pack.Kind.KEG, step(18, 18, 1))).fermentEndSec / 3600)
        .isCloseTo(wantedHr, within(1e-6));
  }

  @Test
  void aWarmedFermentLeavesWhatTheIntegralLeaves() {
    ColdSide cold = read(recipe(Pack.Kind.KEG, step(16, 16, 1), step(16, 20, 1)));
    double tau =
        FermentationCurve.thermalNumber(
            new double[] {0, 24, 48}, new double[] {16, 16, 20}, 48, 0.10, 2.2);
    assertThat(cold.leftFrac).isCloseTo(FermentationCurve.leftFrac(tau, 3.2, 1), within(1e-5));
  }

  @Test
  void bottlesHoldTheWantedGasAndWhatHadStillToFerment() {
    Recipe bottles = recipe(Pack.Kind.BOTTLE, step(18, 20, 14));
    ColdSide cold = read(bottles);
    assertThat(cold.packagedVol(bottles, 101.325, 0)).isCloseTo(2.6, within(1e-9));
    double more = cold.packagedVol(bottles, 101.325, 1) - 2.6;
    assertThat(more).isCloseTo(BeerGas.addedVol(1, 1.01, 0.805, 0.46286), within(1e-9));
    assertThat(cold.primingG(bottles, 101.325, 20))
        .isCloseTo(BeerGas.priming(20, 2.6, 20, 101.325).sucroseG(), within(1e-9));
  }

  @Test
  void aKegNeedsNoSugar() {
    Recipe keg = recipe(Pack.Kind.KEG, step(18, 20, 14));
    assertThat(read(keg).primingG(keg, 101.325, 20)).isNaN();
    assertThat(read(keg).packagedVol(keg, 101.325, 1)).isCloseTo(2.6, within(1e-9));
  }
}
