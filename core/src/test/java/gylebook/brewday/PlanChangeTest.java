package gylebook.brewday;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.estimate.Lever;
import gylebook.estimate.Wanted;
import gylebook.simulate.Change;
import gylebook.testing.Cases;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

/// What is kept of a way that was taken; the form is our own, so nothing outside to hold it
/// against.
class PlanChangeTest {
  private static final Wanted WANTED = new Wanted(12.1, 18.4, 31.5, 22);

  private static List<Change> oneOfEach(RandomGenerator random) {
    return List.of(
        new Change.Lasts("flameOut", random.nextDouble(-3600, 3600)),
        new Change.HopsTimes(random.nextDouble(0, 3)),
        new Change.Pours("", random.nextDouble(0, 5)),
        new Change.Pours("flameOut", random.nextDouble(0, 5)),
        new Change.Dilutes(random.nextDouble(0, 5)),
        new Change.Sweetens("boilReached", random.nextDouble(0, 2), 0.04, random.nextDouble()),
        new Change.TakesOut("", random.nextDouble(0, 3)));
  }

  @Test
  void whatIsReadBackIsTheSameToTheLastBit() {
    Cases.each(
        50,
        random -> {
          Wanted wanted =
              new Wanted(
                  random.nextDouble(20),
                  random.nextDouble(40),
                  random.nextDouble(90),
                  random.nextDouble(90));
          PlanChange change =
              new PlanChange(
                  Lever.Kind.BOIL_ON,
                  "longerSec",
                  random.nextDouble(3600),
                  oneOfEach(random),
                  wanted);
          assertThat(PlanChange.read(change.text())).contains(change);
        });
  }

  @Test
  void everyKindOfChangeHasItsLine() {
    assertThat(Change.Deed.class.getPermittedSubclasses().length + 2)
        .isEqualTo(
            oneOfEach(RandomGeneratorFactory.of("L64X128MixRandom").create(1)).stream()
                .map(Change::getClass)
                .distinct()
                .count());
  }

  @Test
  void whatMakesNoSenseIsNotRead() {
    String fine =
        new PlanChange(Lever.Kind.DILUTE, "liquorL", 1, List.of(new Change.Dilutes(1)), WANTED)
            .text();
    assertThat(PlanChange.read(fine)).isPresent();
    for (String wrong :
        List.of(
            "",
            "way DILUTE",
            fine.replace("DILUTE", "PRAY"),
            fine.replace("dilutes 1.0", "dilutes -1.0"),
            fine.replace("dilutes 1.0", "dilutes NaN"),
            fine.replace("dilutes 1.0", "dilutes"),
            fine.replace("dilutes 1.0", "lasts flameOut 1e9"),
            fine.replace("wants COLOUR", "wants LUCK"),
            fine + "\nboils over",
            fine + "\npours flameOut 1".repeat(60))) {
      assertThat(PlanChange.read(wrong)).as(wrong).isEmpty();
    }
  }
}
