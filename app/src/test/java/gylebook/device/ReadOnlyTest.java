package gylebook.device;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/// Nothing in the room can move a controller: the calls that could are not made anywhere. What goes
/// over the wire is watched by the tests of the drivers.
final class ReadOnlyTest {
  private static final JavaClasses ROOM =
      new ClassFileImporter()
          .withImportOption(new DoNotIncludeTests())
          .importPackages("gylebook.device");

  private static Set<String> called(String libraryPrefix) {
    return ROOM.stream()
        .flatMap(type -> type.getAccessesFromSelf().stream())
        .filter(access -> access.getTargetOwner().getName().startsWith(libraryPrefix))
        .map(access -> access.getTargetOwner().getSimpleName() + "." + access.getName())
        .collect(Collectors.toSet());
  }

  @Test
  void nobodyPublishesOrLeavesALastWill() {
    DescribedPredicate<JavaAccess<?>> publishing =
        DescribedPredicate.describe(
            "publish or set a will",
            access ->
                access.getTargetOwner().getName().startsWith("com.hivemq")
                    && access.getName().matches("publish|publishWith|willPublish.*|asWill"));
    noClasses().should().accessTargetWhere(publishing).check(ROOM);
    assertThat(called("com.hivemq")).contains("Mqtt5AsyncClient.subscribe");
  }

  @Test
  void registersAreReadAndNeverWritten() {
    assertThat(called("com.digitalpetri.modbus.client.Modbus"))
        .contains("ModbusClient.readHoldingRegistersAsync", "ModbusClient.readInputRegistersAsync")
        .noneMatch(call -> call.matches(".*\\.(write|mask|send|broadcast|readWrite).*"));
    assertThat(
            called("com.digitalpetri.modbus.pdu").stream()
                .map(call -> call.replaceAll("\\..*", "")))
        .isSubsetOf(
            "ReadHoldingRegistersRequest",
            "ReadHoldingRegistersResponse",
            "ReadInputRegistersRequest",
            "ReadInputRegistersResponse");
  }
}
