package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.estimate.Held;
import gylebook.journal.Event;
import gylebook.plan.Band;
import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import gylebook.simulate.Engine;
import gylebook.simulate.Outcome;
import gylebook.testing.Cases;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// What is kept of a forecast; the form is our own, so nothing outside to hold it against.
class GivenForecastTest {
  private static final Instant START = Instant.parse("2026-03-14T08:00:00Z");
  private static Follower follower;

  @BeforeAll
  static void plan() {
    follower = Follower.of(Demo.copperBitter(), DemoRigs.household(), 100, 20, START).orElseThrow();
  }

  private static Instant at(double min) {
    return START.plusMillis(Math.round(60_000 * min));
  }

  private static List<DayNote> morning() {
    return List.of(
        new DayNote(1, at(0), at(0), new Event.DayStarted(9), true),
        new DayNote(2, at(38), at(38), new Event.PointReached("strikeReady"), true));
  }

  private static Foreseen any(RandomGenerator random, int number) {
    double low = random.nextDouble(-5, 9e4);
    double high = low + random.nextDouble(1e-3, 1e3);
    Held held = new Held((low + high) / 2, random.nextDouble(1e-6, 9e3), low, high);
    return new Foreseen("rest." + number, number % 2 == 0 ? Foreseen.AT : "grainC", held);
  }

  @Test
  void whatIsReadBackIsWhatWasKeptAndSixDigitsOfWhatWasReckoned() {
    Cases.each(
        50,
        random -> {
          List<Foreseen> all = new ArrayList<>();
          for (int i = 0; i < 8; i++) {
            all.add(any(random, i));
          }
          GivenForecast given = new GivenForecast("5", random.nextDouble(0, 4e4), all);
          GivenForecast back = GivenForecast.read(given.text()).orElseThrow();

          assertThat(back.text()).isEqualTo(given.text());
          assertThat(GivenForecast.read(back.text())).contains(back);
          assertThat(back.foreseen()).hasSameSizeAs(all);
          for (int i = 0; i < all.size(); i++) {
            double mean = all.get(i).held().mean();
            assertThat(back.foreseen().get(i).held().mean())
                .isCloseTo(mean, within(Math.abs(mean) * 1e-5));
          }
        });
  }

  @Test
  void aPlanIsKeptWithTheRangesItShows() {
    GivenForecast given = GivenForecast.of(follower.plan());
    Band strength = follower.plan().forecast().figure(Outcome.STRENGTH.key()).orElseThrow().band();

    assertThat(given.beforeTheDay()).isTrue();
    assertThat(given.engine()).isEqualTo(Engine.REVISION);
    Held held = given.held(Foreseen.DAY, "strengthPlato").orElseThrow();
    assertThat(held.low()).isEqualTo(strength.low());
    assertThat(held.high()).isEqualTo(strength.high());
    // 90 % of a normal spread lie within 1.645 of its standard deviations.
    assertThat(held.doubt() * 2 * 1.645).isCloseTo(strength.high() - strength.low(), within(1e-3));
    assertThat(given.held("strikeReady", Foreseen.AT)).isPresent();
    assertThat(given.held("settled", "grainC")).isPresent();
    assertThat(given.held("bagOut", "hotL")).isPresent();
    assertThat(given.held(Foreseen.DAY, "castC")).isPresent();
  }

  @Test
  void atAPointTheSameNumbersAreKeptAsThePageTells() {
    GivenForecast given = follower.given(morning(), at(39));
    Followed told = follower.at(morning(), at(39));

    assertThat(given.atSec()).isEqualTo(39 * 60);
    for (Followed.Coming coming : told.coming()) {
      assertThat(given.held(coming.key(), Foreseen.AT)).contains(coming.atSec());
    }
    Held strength = told.outcomes().getOrDefault(Outcome.STRENGTH, new Held(0, 0, 0, 0));
    assertThat(given.held(Foreseen.DAY, "strengthPlato")).contains(strength);
    assertThat(given.held("strikeReady", Foreseen.AT)).as("what is past").isEmpty();
    assertThat(GivenForecast.read(given.text())).isPresent();
  }

  @Test
  void whatLiesBehindIsForecastNoMore() {
    List<DayNote> notes = new ArrayList<>(morning());
    notes.add(new DayNote(3, at(220), at(220), new Event.PointReached("boilReached"), true));
    GivenForecast boiling = follower.given(notes, at(221));
    assertThat(boiling.held(Foreseen.DAY, "preBoilPlato")).isEmpty();
    assertThat(boiling.held("boilReached", "hotL")).isEmpty();
    assertThat(boiling.held("flameOut", "hotL")).isPresent();

    notes.add(new DayNote(4, at(400), at(400), new Event.PointReached("cast"), true));
    GivenForecast over = follower.given(notes, at(401));
    assertThat(over.foreseen()).allMatch(one -> one.point().equals(Foreseen.DAY)).isNotEmpty();
  }

  /// A day has some twenty points; all its forecasts together stay far below one photograph.
  @Test
  void aForecastIsSmall() {
    assertThat(GivenForecast.of(follower.plan()).text().getBytes(StandardCharsets.UTF_8).length)
        .isLessThan(2500);
  }

  @Test
  void whatIsNoForecastIsNotRead() {
    String good = "engine 5\nat 2280\nboilReached atSec 9300 210 8950 9660";
    assertThat(GivenForecast.read(good)).isPresent();
    for (String bad :
        List.of(
            "",
            "engine 5",
            "at 3\nengine 5",
            "engine 5\nat noon",
            "engine 5\nat NaN",
            good.replace(" 9660", ""),
            good.replace("210", "-1"),
            good.replace("8950", "9999"),
            good.replace("9300", "Infinity"),
            good + "\n" + "x".repeat(20),
            good + "\nboilReached hotL 1 1 1 2".repeat(1000))) {
      assertThat(GivenForecast.read(bad)).as(bad).isEmpty();
    }
  }
}
