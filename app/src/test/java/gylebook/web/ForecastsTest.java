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
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/// Who computes what, and who stops whom; the figures are the planner's own.
class ForecastsTest {
  private static final String GYLE = "bitter";
  private static final Recipe BITTER = Demo.copperBitter();
  private static final Recipe WHEAT = Demo.wheatBeer();
  private static final Rig RIG = DemoRigs.household();

  private static final Duration A_MINUTE = Duration.ofMinutes(1);

  private final Forecasts forecasts = new Forecasts();

  private static void wait(CountDownLatch held) {
    try {
      held.await();
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
    }
  }

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
    long number = forecasts.begin(GYLE);

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

    Planned ahead = planned(forecasts.begin(GYLE), WHEAT, Forecasts.FIRST_DAYS);

    assertThat(told).hasSize(1);
    assertThat(told.getFirst()).isSameAs(ahead);
  }

  /// It is begun when a change is typed, and asked for again when it is taken and written.
  @Test
  void aLookThatIsUnderWayIsNotBegunAgain() {
    List<Planned> told = new CopyOnWriteArrayList<>();
    forecasts.lookAhead(GYLE, WHEAT, RIG, told::add);
    forecasts.lookAhead(GYLE, WHEAT, RIG, told::add);

    assertThat(forecasts.soon(GYLE, WHEAT, RIG, A_MINUTE)).isPresent();
    assertThat(told).hasSize(1);
  }

  /// What is only typed so far takes nothing from anybody who looks at the page.
  @Test
  void aLookAheadOvertakesNoneButItsLike() {
    long number = forecasts.begin(GYLE);
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> {});
    forecasts.lookAhead(GYLE, BITTER, RIG, _ -> {});

    assertThat(forecasts.overtaken(GYLE, number)).isFalse();
    assertThat(forecasts.soon(GYLE, WHEAT, RIG, A_MINUTE)).isEmpty();
    assertThat(forecasts.soon(GYLE, BITTER, RIG, A_MINUTE)).isPresent();
  }

  @Test
  void aLookAheadForAnotherEditIsNotTaken() {
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> {});
    Planned ahead = forecasts.soon(GYLE, WHEAT, RIG, A_MINUTE).orElseThrow();

    Planned asked = planned(forecasts.begin(GYLE), BITTER, Forecasts.FIRST_DAYS);

    assertThat(asked).isNotNull().isNotSameAs(ahead);
  }

  @Test
  void whoHasNoPatienceIsToldNothing() {
    CountDownLatch held = new CountDownLatch(1);
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> wait(held));

    assertThat(forecasts.soon(GYLE, WHEAT, RIG, Duration.ZERO)).isEmpty();

    held.countDown();
    assertThat(forecasts.soon(GYLE, WHEAT, RIG, A_MINUTE)).isPresent();
  }

  @Test
  void whoWaitsForALookThatWasStoppedIsToldSo() {
    forecasts.lookAhead(GYLE, WHEAT, RIG, _ -> {});
    long ahead = forecasts.begin(GYLE);
    var _ = forecasts.begin(GYLE);

    assertThatThrownBy(() -> planned(ahead, WHEAT, Planner.USUAL_DAYS))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void whereNobodyHasLookedNothingIsBegun() {
    long before = forecasts.begin("wheat");
    forecasts.lookAhead("wheat", WHEAT, RIG, _ -> {});

    assertThat(forecasts.overtaken("wheat", before)).isFalse();
    assertThat(forecasts.soon("wheat", WHEAT, RIG, A_MINUTE)).isEmpty();
  }
}
