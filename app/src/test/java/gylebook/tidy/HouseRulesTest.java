package gylebook.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/// The house keeps its own rules. `TidyTest` shows that each rule can fail.
final class HouseRulesTest {
  @TestFactory
  Stream<DynamicTest> theHouseKeepsItsRules() {
    List<Sheet> sheets = House.mainSheets();
    assertThat(sheets).as("sources of the house").isNotEmpty();
    return House.rules().stream()
        .map(rule -> DynamicTest.dynamicTest(rule.name(), () -> clean(rule, sheets)));
  }

  @Test
  void everyTestAssertsAndNoneWaitsOrRollsDice() {
    clean(new TestPatternRule(), House.testSheets());
  }

  @Test
  void everyRoomExplainsItself() {
    assertThat(RoomRule.unexplained(House.mainSheets()))
        .as("FAIL packages without package-info.java")
        .isEmpty();
  }

  @Test
  void roomsFormNoCycle() {
    noCycleIn("gylebook.(*)..")
        .check(
            new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("gylebook"));
  }

  @Test
  void aRingOfRoomsIsFound() {
    JavaClasses ring = new ClassFileImporter().importPackages("gylebook.tidy.ring");
    assertThat(noCycleIn("gylebook.tidy.ring.(*)..").evaluate(ring).getFailureReport().getDetails())
        .singleElement()
        .asString()
        .contains("Cycle detected", "Slice hose", "Slice kettle");
  }

  private static SliceRule noCycleIn(String rooms) {
    return SlicesRuleDefinition.slices().matching(rooms).should().beFreeOfCycles();
  }

  private static void clean(Rule rule, List<Sheet> sheets) {
    List<Fault> faults = House.faults(rule, sheets);
    assertThat(faults)
        .withFailMessage(
            () ->
                "FAIL %d faults against [%s]:%n%s"
                    .formatted(
                        faults.size(),
                        rule.name(),
                        String.join("\n", faults.stream().map(Fault::toString).toList())))
        .isEmpty();
  }
}
