package gylebook.telling;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Band;
import gylebook.plan.Demo;
import gylebook.plan.Figure;
import gylebook.plan.Guard;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Goods;
import gylebook.recipe.Hop;
import gylebook.recipe.Liquor;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.units.ReadingUnits;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class WallSheetTest {
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

  private static Plan bitter;
  private static Plan wheat;

  /// Not in field initialisers: other threads would wait for this class to be there.
  @BeforeAll
  static void plans() {
    bitter = plan(Demo.copperBitter(), DemoRigs.household());
    wheat = plan(Demo.wheatBeer(), DemoRigs.smallFlat());
  }

  private static Plan plan(Recipe recipe, Rig rig) {
    Planned planned = Planner.plan(recipe, rig, 100, 20, () -> false, _ -> {});
    return ((Planned.Feasible) planned).plan();
  }

  /// The page read as XML by the parser of the Java platform.
  private static Document read(String page) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(page)));
    } catch (ParserConfigurationException | SAXException | IOException broken) {
      throw new AssertionError(broken);
    }
  }

  private static Document metric(Plan plan) {
    return read(WallSheet.html(plan, ReadingUnits.METRIC));
  }

  private static List<Element> elements(Element of, String tag, String kind) {
    List<Element> found = new ArrayList<>();
    NodeList nodes = of.getElementsByTagName(tag);
    for (int i = 0; i < nodes.getLength(); i++) {
      Element element = (Element) nodes.item(i);
      if (kind.isEmpty() || element.getAttribute("class").equals(kind)) {
        found.add(element);
      }
    }
    return found;
  }

  private static List<Element> rows(Document page) {
    Element day = elements(page.getDocumentElement(), "table", "day").getFirst();
    return elements(elements(day, "tbody", "").getFirst(), "tr", "");
  }

  private static String text(Element element) {
    return element.getTextContent().replace('\u00a0', ' ');
  }

  private static String clock(double sec) {
    long minutes = Math.round(sec / 60);
    return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
  }

  @Test
  void thePageStandsAlone() {
    for (Plan plan : List.of(bitter, wheat)) {
      String page = WallSheet.html(plan, ReadingUnits.METRIC);
      Element all = read(page).getDocumentElement();
      for (String tag : List.of("script", "link", "img", "iframe", "object", "a")) {
        assertThat(elements(all, tag, "")).as(tag).isEmpty();
      }
      assertThat(page).doesNotContain("url(").doesNotContain("@import").doesNotContain("http");
      String words = text(elements(all, "body", "").getFirst());
      assertThat(words).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("none");
    }
  }

  @Test
  void everyMilestoneHasItsClockAndTheRowsRunForward() {
    for (Plan plan : List.of(bitter, wheat)) {
      List<String> clocks =
          rows(metric(plan)).stream()
              .map(row -> text(elements(row, "td", "clock").getFirst()))
              .toList();
      for (Milestone milestone : plan.forecast().milestones()) {
        assertThat(clocks)
            .as(milestone.key())
            .anyMatch(at -> at.startsWith(clock(milestone.atSec().middle())));
      }
      List<Integer> minutes = clocks.stream().map(WallSheetTest::minutes).toList();
      assertThat(minutes).isSorted().hasSizeGreaterThan(8);
    }
  }

  private static int minutes(String clock) {
    String[] parts = clock.split("[:\\D]", -1);
    return 60 * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1].substring(0, 2));
  }

  @Test
  void everyStepStandsInTheDayOnceAndInOrder() {
    for (Plan plan : List.of(bitter, wheat)) {
      StringBuilder day = new StringBuilder();
      rows(metric(plan)).forEach(row -> day.append(text(elements(row, "td", "does").getFirst())));
      int from = 0;
      for (Plan.PlannedStep step : plan.steps()) {
        int at = day.indexOf(step.does(), from);
        assertThat(at).as(step.does() + " after " + from + " in " + day).isNotNegative();
        from = at + step.does().length();
      }
    }
  }

  /// The bag is lifted when the mash is done, not when it has dripped.
  @Test
  void whatLeadsToAMomentIsSaidBeforeIt() {
    List<Element> rows = rows(metric(bitter));
    int lift = row(rows, "lift the bag");
    assertThat(text(rows.get(lift))).contains("mash done").contains("Two pairs of hands");
    assertThat(text(rows.get(lift + 1))).contains("Bag out").contains("Full heat");
    assertThat(row(rows, "heat until the thermometer reads")).isZero();
    assertThat(text(rows.get(row(rows, "Cooled for stand 1"))))
        .containsPattern("Goldings in: \\d+\\.\\d g");
  }

  private static int row(List<Element> rows, String words) {
    for (int i = 0; i < rows.size(); i++) {
      if (text(rows.get(i)).contains(words)) {
        return i;
      }
    }
    throw new AssertionError("no row says " + words);
  }

  @Test
  void noExpectedNumberIsOneThePlanDoesNotHave() {
    for (ReadingUnits units : List.of(ReadingUnits.METRIC, ReadingUnits.US)) {
      Document page = read(WallSheet.html(wheat, units));
      Set<String> known = numbers(wheat, new Shown(units));
      for (Element row : rows(page)) {
        for (Element expected : elements(elements(row, "td", "expect").getFirst(), "span", "")) {
          assertThat(known).containsAll(numbers(text(expected)));
        }
        for (Element figure : elements(row, "strong", "")) {
          assertThat(known).containsAll(numbers(text(figure)));
        }
      }
    }
  }

  private static List<String> numbers(String text) {
    return NUMBER.matcher(text).results().map(MatchResult::group).toList();
  }

  private static Set<String> numbers(Plan plan, Shown shown) {
    Set<String> known = new HashSet<>();
    for (Milestone milestone : plan.forecast().milestones()) {
      add(known, shown, "wortC", milestone.wortC());
      add(known, shown, "grainC", milestone.grainC());
      add(known, shown, "hotL", milestone.hotL());
      add(known, shown, "wortPlato", milestone.wortPlato());
    }
    for (Figure figure : plan.forecast().figures()) {
      add(known, shown, figure.key(), figure.band());
    }
    for (Plan.PlannedStep step : plan.steps()) {
      known.addAll(numbers(shown.value(step.key(), step.amountNumber())));
    }
    return known;
  }

  private static void add(Set<String> known, Shown shown, String key, Band band) {
    known.addAll(numbers(shown.value(key, band.middle())));
    known.addAll(numbers(shown.giveOrTake(key, band)));
  }

  @Test
  void everythingIsThereToWeigh() {
    String weigh =
        text(elements(metric(bitter).getDocumentElement(), "section", "weigh").getFirst());
    for (Goods line : bitter.recipe().grist()) {
      String kg = String.format(Locale.ROOT, "%.2f kg", line.massKg().inside());
      assertThat(weigh).contains(kg + line.name());
    }
    for (Hop hop : bitter.recipe().hops()) {
      assertThat(weigh)
          .contains(String.format(Locale.ROOT, "%.1f g", hop.massG().inside()) + hop.name());
    }
    for (Liquor.Addition salt : bitter.recipe().liquor().additions()) {
      assertThat(weigh).contains(salt.name() + ", into the liquor");
    }
    assertThat(weigh)
        .contains(String.format(Locale.ROOT, "%.1f L", bitter.settings().liquorL()))
        .contains("1 ×dry ale yeast");
  }

  @Test
  void everyExpectedValueHasALineToWriteOn() {
    for (Element row : rows(metric(bitter))) {
      List<Element> blanks = elements(row, "td", "blank");
      int expected = elements(elements(row, "td", "expect").getFirst(), "span", "").size();
      assertThat(elements(blanks.getFirst(), "span", "")).hasSize(expected);
      assertThat(elements(blanks.getLast(), "span", "")).hasSize(1);
      assertThat(elements(row, "td", "tick")).hasSize(1);
    }
  }

  @Test
  void everySlopeAndEveryGuardIsOnIt() {
    for (Plan plan : List.of(bitter, wheat)) {
      String all = text(metric(plan).getDocumentElement());
      assertThat(all).contains(OffBy.CAUTION);
      plan.slopes().forEach(slope -> assertThat(all).contains(slope.what()));
      for (Guard guard : plan.forecast().guards()) {
        // The ferment's gas comes when the sheet is down; it stands with what is always said.
        if (!guard.key().equals("gasInRoom")) {
          assertThat(all).contains(guard.doThis()).contains(guard.caution());
        }
      }
      assertThat(all)
          .contains("burn skin")
          .contains("gas kills without warning")
          .contains("with the arms out")
          .contains("ground-fault breaker")
          .contains("Follow your local code; wiring, gas and pressure");
    }
  }

  /// 1 L is 0.264 US gal and 1 K is 1.8 °F (NIST SP 811, appendix B.8, from memory).
  @Test
  void deviationsAreRoundInTheReadersUnitAndTheirChangesFollow() {
    Shown us = new Shown(ReadingUnits.US);
    List<OffBy.Line> lines = OffBy.of(wheat, us);
    assertThat(lines.get(0).by()).isEqualTo("0.25 US gal");
    assertThat(lines.get(1).by()).isEqualTo("2 °F");
    // A litre more liquor leaves about a litre more in the fermenter, so a quarter gallon more
    // leaves about a quarter gallon more.
    assertThat(lines.get(0).then()).contains("in the fermenter +0.25 US gal");
    OffBy.Line metric = OffBy.of(wheat, new Shown(ReadingUnits.METRIC)).getFirst();
    assertThat(metric.by()).isEqualTo("1 L");
    assertThat(metric.then()).contains("in the fermenter +1.0 L");
  }

  @Test
  void anAmericanReaderFindsNoMetricFigure() {
    Document page = read(WallSheet.html(wheat, ReadingUnits.US));
    for (Element table : elements(page.getDocumentElement(), "table", "")) {
      assertThat(text(table)).doesNotContainPattern("\\d (°C|L|kg|g)\\b");
    }
    assertThat(text(page.getDocumentElement())).contains("US gal").contains("°F").contains("lb");
  }

  @Test
  void namesFromAFileStayText() {
    Recipe named =
        Demo.wheatBeer()
            .with(
                Demo.wheatBeer().grist(),
                List.of(
                    new Hop(
                        "<script>alert(\"&\")</script>",
                        "",
                        Hop.Form.PELLET,
                        Demo.wheatBeer().hops().getFirst().massG(),
                        Demo.wheatBeer().hops().getFirst().alphaFrac(),
                        new Hop.When.FlameOut())));
    Document page = metric(plan(named, DemoRigs.smallFlat()));
    assertThat(elements(page.getDocumentElement(), "script", "")).isEmpty();
    assertThat(text(page.getDocumentElement())).contains("<script>alert(\"&\")</script> in:");
  }
}
