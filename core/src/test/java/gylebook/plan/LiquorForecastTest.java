package gylebook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LiquorForecastTest {
  private static Forecast forecast(Recipe recipe) {
    Planned planned = Planner.plan(recipe, DemoRigs.household(), 200, 20, () -> false, _ -> {});
    return ((Planned.Feasible) planned).plan().forecast();
  }

  private static Recipe with(Liquor.Agent agent, double massG) {
    Recipe bitter = Demo.copperBitter();
    List<Liquor.Addition> additions = new ArrayList<>(bitter.liquor().additions());
    additions.add(
        new Liquor.Addition(
            "a spoonful",
            agent,
            Entered.of(massG, Unit.known(Quantity.SMALL_MASS, "g")),
            Liquor.Into.MASH));
    return bitter.withLiquor(bitter.liquor().withAdditions(additions));
  }

  @Test
  void theMashPhHasABandThatTheMaltsBufferMoves() {
    Figure figure = forecast(Demo.copperBitter()).figure("mashPh").orElseThrow();
    // Calcium of gypsum and chloride brings a bitter's pale mash into the usual 5.2 to 5.6.
    assertThat(figure.band().middle()).isBetween(5.2, 5.6);
    assertThat(figure.band().high() - figure.band().low()).isBetween(0.1, 0.5);
    assertThat(figure.why().movers().stream().map(Figure.Mover::path))
        .contains("model.maltPh", "model.maltBufferFactor");
    assertThat(figure.why().sources()).contains("delange2015");
  }

  @Test
  void muchSodaRaisesAGuardAndNoneDoesNot() {
    assertThat(forecast(with(Liquor.Agent.BAKING_SODA, 20)).guards())
        .anyMatch(guard -> guard.key().equals("mashPhHigh"));
    assertThat(forecast(Demo.copperBitter()).guards())
        .noneMatch(guard -> guard.key().equals("mashPhLow"));
  }

  @Test
  void whatIsNotKnownIsSaidAndNotCounted() {
    Forecast forecast = forecast(with(Liquor.Agent.UNKNOWN, 5));
    Guard guard =
        forecast.guards().stream()
            .filter(found -> found.key().equals("saltUnknown"))
            .findFirst()
            .orElseThrow();
    assertThat(NoteText.plain(guard.what())).contains("a spoonful");
    assertThat(forecast.figure("mashSodiumMgPerL").orElseThrow().band().middle())
        .isEqualTo(
            forecast(Demo.copperBitter()).figure("mashSodiumMgPerL").orElseThrow().band().middle());
  }
}
