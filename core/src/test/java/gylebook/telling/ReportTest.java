package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Band;
import gylebook.plan.Demo;
import gylebook.plan.Forecast;
import gylebook.plan.Guard;
import gylebook.plan.Milestone;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Goods;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.units.ReadingUnits;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReportTest {
  @Test
  void everyLineFitsEightyColumnsInEveryUnitSet() {
    List<Planned> plans =
        List.of(
            Planner.plan(Demo.copperBitter(), DemoRigs.household(), 60, 20, () -> false, _ -> {}),
            Planner.plan(Demo.wheatBeer(), DemoRigs.smallFlat(), 60, 20, () -> false, _ -> {}),
            Planner.plan(Demo.copperBitter(), DemoRigs.smallFlat(), 60, 20, () -> false, _ -> {}));
    for (Planned planned : plans) {
      for (ReadingUnits units :
          List.of(ReadingUnits.METRIC, ReadingUnits.US, ReadingUnits.IMPERIAL)) {
        assertThat(Report.text(planned, units).lines())
            .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
      }
    }
  }

  @Test
  void everyMilestoneSaysWhereItsFiguresLieNineTimesInTen() {
    Planned planned =
        Planner.plan(Demo.copperBitter(), DemoRigs.household(), 60, 20, () -> false, _ -> {});
    Milestone boil =
        ((Planned.Feasible) planned).plan().forecast().milestone("boilReached").orElseThrow();
    Shown shown = new Shown(ReadingUnits.METRIC);

    assertThat(Report.text(planned, ReadingUnits.METRIC))
        .contains(
            "("
                + shown.range("wortC", boil.wortC())
                + ", "
                + shown.range("hotL", boil.hotL())
                + ", "
                + shown.range("wortPlato", boil.wortPlato())
                + ")");
  }

  @Test
  void everyGuardSaysWhenAndWhyAndEveryMilestoneItsWortCold() {
    Planned planned =
        Planner.plan(Demo.copperBitter(), DemoRigs.household(), 60, 20, () -> false, _ -> {});
    Forecast forecast = ((Planned.Feasible) planned).plan().forecast();
    Shown shown = new Shown(ReadingUnits.METRIC);
    String text = Report.text(planned, ReadingUnits.METRIC).replaceAll("\\s+", " ");

    assertThat(forecast.guards()).hasSizeGreaterThan(2);
    for (Guard guard : forecast.guards()) {
      assertThat(text)
          .contains("When: " + GuardWords.moment(forecast, guard) + ". Why: " + guard.cause());
    }
    Milestone boil = forecast.milestone("boilReached").orElseThrow();
    assertThat(text)
        .contains("boil reached; wort at 20 C: " + shown.value("coldL", boil.coldL().middle()))
        .contains("apparent attenuation to expect")
        .contains("bitterness by Tinseth's equation");
  }

  @Test
  void aGuardThatCountsMissesOfALimitNamesTheLimit() {
    Planned planned =
        Planner.plan(Demo.copperBitter(), DemoRigs.household(), 200, 20, () -> false, _ -> {});
    String text = Report.text(planned, ReadingUnits.METRIC).replaceAll("\\s+", " ");

    assertThat(text)
        .containsPattern("At the hot break [0-9.]+ cm stay for the foam, wanted 8.0 cm\\.")
        .containsPattern("[0-9.]+ cm stay below the rim, wanted 4.0 cm\\.");
  }

  @Test
  void whatAFileCallsThingsIsNoCommandToTheTerminal() {
    assertThat(Letters.plain("Ale\u001b[2J\u0007\u202e\nx\u0085")).isEqualTo("Ale [2J   x ");
    Recipe recipe = Demo.copperBitter();
    Goods malt = recipe.grist().getFirst();
    Goods named =
        new Goods(
            "malt\u001b[31m\nTo weigh",
            "",
            malt.kind(),
            malt.massKg(),
            malt.analysis(),
            malt.use());
    Planned planned =
        Planner.plan(
            recipe.with(List.of(named), recipe.hops()),
            DemoRigs.household(),
            20,
            20,
            () -> false,
            _ -> {});
    assertThat(Report.text(planned, ReadingUnits.METRIC))
        .contains("malt [31m To weigh")
        .doesNotContain("\u001b");
  }

  @Test
  void aRangeNamesItsUnitOnce() {
    Shown shown = new Shown(ReadingUnits.METRIC);
    assertThat(shown.range("fermenterL", new Band(18, 19, 20))).isEqualTo("18.0 to 20.0 L");
    assertThat(shown.range("strengthPlato", new Band(10, 11, 12))).matches("1\\.\\d+ to 1\\.\\d+");
    assertThat(shown.range("castC", new Band(10, 11, Double.NaN))).isEqualTo("none");
  }

  @Test
  void oddsAreWholeWords() {
    assertThat(Shown.odds(0.01)).isEqualTo("1 day in 100");
    assertThat(Shown.odds(0.12)).isEqualTo("12 days in 100");
    assertThat(Shown.odds(0.42)).isEqualTo("4 days in 10");
    assertThat(Shown.odds(0.97)).isEqualTo("97 days in 100");
    assertThat(Shown.odds(1)).isEqualTo("Almost every day");
  }
}
