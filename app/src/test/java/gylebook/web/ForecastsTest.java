package gylebook.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gylebook.plan.Demo;
import gylebook.plan.Figure;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// Who computes what, and who stops whom; the figures are the planner's own.
class ForecastsTest {
  private static final String GYLE = "bitter";
  private static final Recipe BITTER = Demo.copperBitter();
  private static final Recipe WHEAT = Demo.wheatBeer();
  private static final Rig RIG = DemoRigs.household();

  private final Forecasts forecasts = new Forecasts();

  @BeforeEach
  void somebodyHasLooked() {
    planned(forecasts.begin(GYLE), BITTER, Planner.USUAL_DAYS);
  }

  private Planned planned(long number, Recipe recipe, int days) {
    return forecasts.planned(GYLE, number, recipe, RIG, days, _ -> {});
  }

  @Test
  void aLookBegunAheadIsTheOneThatIsAskedFor() {
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> {});
    long number = forecasts.begin(GYLE, WHEAT, RIG);

    Planned ahead = planned(number, WHEAT, Forecasts.FIRST_DAYS);

    assertThat(forecasts.overtaken(GYLE, number)).isFalse();
    assertThat(planned(number, WHEAT, Forecasts.FIRST_DAYS)).isSameAs(ahead);
    assertThat(figures(ahead)).isEqualTo(figures(unhurried()));
  }

  private static List<Figure> figures(Planned planned) {
    return ((Planned.Feasible) planned).plan().forecast().figures();
  }

  /// The same look where nothing was begun ahead.
  private static Planned unhurried() {
    Forecasts other = new Forecasts();
    other.planned(GYLE, other.begin(GYLE), BITTER, RIG, Planner.USUAL_DAYS, _ -> {});
    return other.planned(GYLE, other.begin(GYLE), WHEAT, RIG, Forecasts.FIRST_DAYS, _ -> {});
  }

  @Test
  void whatElseIsMadeReadyIsReadyWhenTheLookIs() {
    List<Planned> told = new CopyOnWriteArrayList<>();
    forecasts.lookAhead(GYLE, WHEAT, RIG, told::add);

    Planned ahead = planned(forecasts.begin(GYLE, WHEAT, RIG), WHEAT, Forecasts.FIRST_DAYS);

    assertThat(told).hasSize(1);
    assertThat(told.getFirst()).isSameAs(ahead);
  }

  /// It is begun when a change is understood, and asked for again when the change is written.
  @Test
  void aLookThatIsUnderWayIsNotBegunAgain() {
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> {});
    long number = forecasts.begin(GYLE, WHEAT, RIG);
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> {});

    assertThat(forecasts.overtaken(GYLE, number)).isFalse();
    assertThat(forecasts.begin(GYLE, WHEAT, RIG)).isEqualTo(number);
  }

  @Test
  void aLookAheadForAnotherEditIsStoppedAndNotTaken() {
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> {});
    long ahead = forecasts.begin(GYLE, WHEAT, RIG);
    long number = forecasts.begin(GYLE, BITTER, RIG);

    assertThat(number).isGreaterThan(ahead);
    assertThat(forecasts.overtaken(GYLE, ahead)).isTrue();
    assertThat(planned(number, BITTER, Forecasts.FIRST_DAYS)).isNotNull();
  }

  @Test
  void whoWaitsForALookThatWasStoppedIsToldSo() {
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> {});
    long ahead = forecasts.begin(GYLE, WHEAT, RIG);
    var _ = forecasts.begin(GYLE);

    assertThatThrownBy(() -> planned(ahead, WHEAT, Planner.USUAL_DAYS))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void whereNobodyHasLookedNothingIsBegun() {
    long before = forecasts.begin("wheat");
    forecasts.lookAhead("wheat", WHEAT, RIG, _ -> {});

    assertThat(forecasts.overtaken("wheat", before)).isFalse();
  }
}
