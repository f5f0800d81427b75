package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Band;
import gylebook.plan.Demo;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.rig.DemoRigs;
import java.time.Duration;
import java.time.LocalTime;
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

  @Test
  void theLongDayBeginsInTimeAndTheMiddleOneLater() {
    LocalTime end = LocalTime.of(18, 0);
    String says = Finish.says(planned, end);

    LocalTime sure = end.minus(Duration.ofMinutes((long) Math.ceil(day().high() / 60)));
    LocalTime even = end.minus(Duration.ofMinutes((long) Math.ceil(day().middle() / 60)));
    assertThat(says).contains("by 18:00, begin at " + sure).contains("beginning at " + even);
    assertThat(sure).isBefore(even);
  }

  @Test
  void anEarlyEndIsBegunTheDayBefore() {
    assertThat(Finish.says(planned, LocalTime.of(1, 30))).contains("the day before");
    assertThat(Finish.says(planned, LocalTime.of(23, 0))).doesNotContain("the day before");
  }

  @Test
  void anHourIsReadAsPeopleWriteIt() {
    assertThat(Finish.hour("18:00")).hasValue(LocalTime.of(18, 0));
    assertThat(Finish.hour(" 6.30 ")).hasValue(LocalTime.of(6, 30));
    assertThat(Finish.hour("18h")).hasValue(LocalTime.of(18, 0));
    assertThat(Finish.hour("7")).hasValue(LocalTime.of(7, 0));
    for (String wrong : new String[] {"", "noon", "25:00", "12:60", "1:2:3", "-3"}) {
      assertThat(Finish.hour(wrong)).as(wrong).isEmpty();
    }
  }
}
