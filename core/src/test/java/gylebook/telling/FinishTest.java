package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Band;
import gylebook.plan.Demo;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Aim;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class FinishTest {
  private static Planned planned;

  /// Not in an initialiser: the planner's threads would wait for this class, and it for them.
  @BeforeAll
  static void plan() {
    planned = Planner.plan(Demo.copperBitter(), DemoRigs.household(), 100, 1, () -> false, _ -> {});
  }

  private static Band day() {
    Plan plan = ((Planned.Feasible) planned).plan();
    return plan.forecast().figure("daySec").orElseThrow().band();
  }

  private static Appointment by(String typed) {
    return ((Filled.Done<Appointment>) Appointment.readHour(typed)).thing();
  }

  @Test
  void theLongDayBeginsInTimeAndTheMiddleOneLater() {
    LocalTime end = LocalTime.of(18, 0);
    String says = Finish.says(planned, by("18:00"));

    LocalTime sure = end.minus(Duration.ofMinutes((long) Math.ceil(day().high() / 60)));
    LocalTime even = end.minus(Duration.ofMinutes((long) Math.ceil(day().middle() / 60)));
    assertThat(says).contains("by 18:00, begin at " + sure).contains("beginning at " + even);
    assertThat(sure).isBefore(even);
  }

  @Test
  void anEarlyEndIsBegunTheDayBefore() {
    assertThat(Finish.says(planned, by("1:30"))).contains("the day before");
    assertThat(Finish.says(planned, by("23:00"))).doesNotContain("the day before");
    assertThat(Finish.says(planned, by("Monday 01:30"))).contains("begin at Sunday 2");
    assertThat(Finish.says(planned, by("2028-03-01 1:30"))).contains("begin at 2028-02-29 2");
  }

  private static Recipe wanting(String readyBy, String doneBy) {
    Recipe bitter = Demo.copperBitter();
    Aim aim = bitter.aim();
    return bitter.withAim(
        new Aim(
            aim.lengthL(),
            aim.into(),
            aim.strengthPlato(),
            aim.bitternessMgPerL(),
            readyBy,
            doneBy,
            Optional.empty()));
  }

  @Test
  void aBeerForADayIsBrewedItsFermentBefore() {
    // Ten days of ferment; 5 December 2026 is a Saturday by the calendar.
    assertThat(Finish.says(planned, wanting("2026-12-05", "")))
        .isEqualTo(
            "To be ready on 2026-12-05, brew by 2026-11-25, 10 days before: so long is its"
                + " ferment; what it takes to carbonate comes on top.");
    assertThat(Finish.says(planned, wanting("Saturday", "Wed 18:00")))
        .startsWith("To be done by Wednesday 18:00, begin at ")
        .contains("To be ready on Saturday, brew by Wednesday, 10 days before");
  }

  @Test
  void wordsOfAnOlderEditionSayNothing() {
    assertThat(Finish.says(planned, wanting("the harvest supper", ""))).isEmpty();
    assertThat(Finish.says(planned, wanting("", "teatime"))).isEmpty();
    assertThat(Finish.says(planned, wanting("", "Saturday"))).isEmpty();
  }
}
