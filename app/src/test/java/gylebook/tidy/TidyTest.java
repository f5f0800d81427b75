package gylebook.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Checkout;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/// Each house rule can fail, and does not cry wolf. In `tidy-bad` the mark `FAULT rule` stands on
/// the line that breaks the rule (`FAULT rule:1` names another line).
final class TidyTest {
  private static final Path SAMPLES = Checkout.root().resolve("app/src/test/resources");
  private static final Pattern MARK = Pattern.compile("FAULT ([a-z-]+)(?::(\\d+))?");

  private static List<Rule> rules() {
    return List.of(
        new LadderRule(),
        new NamingRule(),
        new DimensionRule(),
        new BanRule(),
        new LocaleRule(),
        new SizeRule(),
        new CommentRule(),
        new TypeNameRule(),
        new RoomRule(),
        new SourceRule(Set.of("known-2000")),
        new TestPatternRule());
  }

  @TestFactory
  Stream<DynamicTest> badCodeIsFoundWhereItStands() {
    return sheets("tidy-bad").stream()
        .map(
            sheet ->
                DynamicTest.dynamicTest(
                    sheet.file(),
                    () ->
                        assertThat(found(sheet))
                            .containsExactlyInAnyOrderElementsOf(marked(sheet))));
  }

  @TestFactory
  Stream<DynamicTest> goodCodeRaisesNoAlarm() {
    return sheets("tidy-good").stream()
        .map(
            sheet ->
                DynamicTest.dynamicTest(sheet.file(), () -> assertThat(found(sheet)).isEmpty()));
  }

  @Test
  void everyRuleHasASampleThatBreaksIt() {
    Set<String> broken = new TreeSet<>();
    sheets("tidy-bad")
        .forEach(sheet -> marked(sheet).forEach(mark -> broken.add(mark.replaceAll(":.*", ""))));
    assertThat(broken)
        .containsExactlyInAnyOrderElementsOf(rules().stream().map(Rule::name).toList());
  }

  @Test
  void aRoomWithoutExplanationIsFound() {
    assertThat(RoomRule.unexplained(sheets("tidy-good")))
        .contains("gylebook.store")
        .doesNotContain("gylebook.simulate");
  }

  private static List<Sheet> sheets(String folder) {
    return Sheet.read(List.of(SAMPLES.resolve(folder)), SAMPLES, Sheet.Reading.RESOLVED);
  }

  private static List<String> found(Sheet sheet) {
    List<String> found = new ArrayList<>();
    for (Rule rule : rules()) {
      boolean test = sheet.file().endsWith("Test.java");
      if (test == rule instanceof TestPatternRule) {
        rule.faults(sheet).forEach(fault -> found.add(fault.rule() + ":" + fault.line()));
      }
    }
    return found;
  }

  private static List<String> marked(Sheet sheet) {
    List<String> marked = new ArrayList<>();
    for (int i = 0; i < sheet.lines().size(); i++) {
      Matcher mark = MARK.matcher(sheet.lines().get(i));
      while (mark.find()) {
        marked.add(mark.group(1) + ":" + (mark.group(2) == null ? i + 1 : mark.group(2)));
      }
    }
    return marked;
  }
}
