package gylebook.science;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.estimate.FilterReferenceTest;
import gylebook.testing.Checks;
import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// No row of a table is passed over in silence.
class EveryRowTest {
  private static final List<Checks> CHECKS =
      List.of(
          WortReferenceTest.checks(),
          ChemistryReferenceTest.checks(),
          RigReferenceTest.checks(),
          ChillerReferenceTest.checks(),
          RigPropertiesReferenceTest.checks(),
          ColdReferenceTest.checks(),
          ForecastScoreTest.checks(),
          FilterReferenceTest.checks());

  /// The section of rig.csv that belongs to field protocols, which the core knows nothing of.
  private static final Set<Character> LATER_SECTIONS = Set.of('I');

  private static final String REFERENCE_BREW = "reference brew of the state-space model";

  private static boolean claimed(ReferenceRow row) {
    return CHECKS.stream().anyMatch(checks -> checks.claims(row));
  }

  @Test
  void everyRowOfTheHotSideIsAnswered() {
    assertThat(ReferenceRows.of("hot-side.csv").stream().filter(row -> !claimed(row)).toList())
        .isEmpty();
  }

  @Test
  void everyRowOfTheColdSideIsAnswered() {
    assertThat(ReferenceRows.of("cold-side.csv").stream().filter(row -> !claimed(row)).toList())
        .isEmpty();
  }

  @Test
  void everyRowOfTheRigThatThisBuildNeedsIsAnswered() {
    List<String> open =
        ReferenceRows.of("rig.csv").stream()
            .filter(row -> !LATER_SECTIONS.contains(row.id().charAt(0)))
            .filter(row -> !row.kind().equals(REFERENCE_BREW))
            .filter(row -> !claimed(row))
            .map(row -> row.id() + " " + row.quantity())
            .toList();
    assertThat(open).isEmpty();
  }
}
