package gylebook.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.plan.Guard;
import gylebook.plan.Milestone;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Goods;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.telling.Shown;
import gylebook.units.ReadingUnits;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/// The chart is read as a person reads it: by the values at its scale and the hours at its foot.
class DayChartTest {
  private static final Pattern POINT = Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)");
  private static final Pattern HOUR = Pattern.compile("([0-9]+) h");

  private static Plan bitter;
  private static Plan wheat;

  @BeforeAll
  static void plans() {
    bitter = plan(Demo.copperBitter(), DemoRigs.household());
    wheat = plan(Demo.wheatBeer(), DemoRigs.smallFlat());
  }

  private static Plan plan(Recipe recipe, Rig rig) {
    Planned planned = Planner.plan(recipe, rig, 100, 20, () -> false, _ -> {});
    return ((Planned.Feasible) planned).plan();
  }

  private static Element chart(Plan plan) {
    return read(DayChart.svg(plan, new Shown(ReadingUnits.METRIC)));
  }

  private static Element read(String xml) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(xml)))
          .getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException broken) {
      throw new AssertionError(broken);
    }
  }

  private static List<Element> all(Element of, String tag, String kind) {
    List<Element> found = new ArrayList<>();
    NodeList nodes = of.getElementsByTagName(tag);
    for (int i = 0; i < nodes.getLength(); i++) {
      Element element = (Element) nodes.item(i);
      if (List.of(element.getAttribute("class").split(" ", -1)).contains(kind)) {
        found.add(element);
      }
    }
    return found;
  }

  private static double number(Element of, String name) {
    return Double.parseDouble(of.getAttribute(name));
  }

  /// Heights of the values written at the left whose text ends so, by value.
  private static NavigableMap<Double, Double> scale(Element chart, String symbol) {
    NavigableMap<Double, Double> heights = new TreeMap<>();
    for (Element tick : all(chart, "text", "tick")) {
      String text = tick.getTextContent();
      if (text.endsWith(symbol)) {
        double value = Double.parseDouble(text.substring(0, text.length() - symbol.length()));
        heights.put(value, number(tick, "y") - 5);
      }
    }
    return heights;
  }

  private static double valueAt(double y, NavigableMap<Double, Double> heights) {
    double foot = heights.firstEntry().getValue();
    double head = heights.lastEntry().getValue();
    double share = (y - foot) / (head - foot);
    return heights.firstKey() + share * (heights.lastKey() - heights.firstKey());
  }

  private static double xOf(double sec, Element chart) {
    NavigableMap<Double, Double> hours = new TreeMap<>();
    for (Element tick : all(chart, "text", "tick")) {
      Matcher hour = HOUR.matcher(tick.getTextContent());
      if (hour.matches()) {
        hours.put(Double.valueOf(hour.group(1)), number(tick, "x"));
      }
    }
    double from = hours.firstEntry().getValue();
    return from + (hours.lastEntry().getValue() - from) / hours.lastKey() * sec / 3600;
  }

  /// The height of a line at an x, straight between the points it is told by.
  private static double heightAt(Element path, double x) {
    Matcher point = POINT.matcher(path.getAttribute("d"));
    double beforeX = Double.NaN;
    double beforeY = Double.NaN;
    while (point.find()) {
      double nextX = Double.parseDouble(point.group(1));
      double nextY = Double.parseDouble(point.group(2));
      if (nextX >= x) {
        return Double.isNaN(beforeX) || nextX == beforeX
            ? nextY
            : beforeY + (nextY - beforeY) * (x - beforeX) / (nextX - beforeX);
      }
      beforeX = nextX;
      beforeY = nextY;
    }
    return beforeY;
  }

  @Test
  void theLineReadsWhatTheMilestonesSay() {
    for (Plan plan : List.of(bitter, wheat)) {
      Element chart = chart(plan);
      Element wort = all(all(chart, "g", "temperature").getFirst(), "path", "middle").getFirst();
      NavigableMap<Double, Double> heights = scale(chart, " °C");
      assertThat(heights).hasSizeGreaterThan(2);
      for (String key : List.of("liquorIn", "rest.0", "flameOut")) {
        Milestone milestone = plan.forecast().milestone(key).orElseThrow();
        // At flame-out half the days cool already; a little before, all of them boil.
        double beforeSec = key.equals("flameOut") ? 300 : 0;
        double x = xOf(milestone.atSec().middle() - beforeSec, chart);
        // The line is the middle of all days at one time, the milestone that of all times.
        assertThat(valueAt(heightAt(wort, x), heights))
            .as(key)
            .isCloseTo(milestone.wortC().middle(), within(1.5));
      }
    }
  }

  @Test
  void theElementStandsAtItsHeightOnTheLevelStrip() {
    Element chart = chart(bitter);
    NavigableMap<Double, Double> heights = scale(chart, " cm");
    List<Double> cm =
        all(chart, "line", "element").stream()
            .map(line -> valueAt(number(line, "y1"), heights))
            .toList();
    assertThat(cm).hasSize(2);
    assertThat(cm.get(0)).isCloseTo(100 * bitter.rig().kettle().heightM().value(), within(0.3));
    assertThat(cm.get(1)).isCloseTo(100 * bitter.rig().element().topM().value(), within(0.3));
    assertThat(chart.getTextContent()).contains("top of the element").contains("rim");
  }

  @Test
  void ringsStandWhereThingsGoInAndCarryTheirNames() {
    Element chart = chart(bitter);
    List<Double> rings =
        all(chart, "circle", "ring").stream().map(ring -> number(ring, "cx")).toList();
    for (String key : List.of("liquorIn", "doughedIn", "hop.0", "hop.1", "standAt.0")) {
      double x = xOf(bitter.forecast().milestone(key).orElseThrow().atSec().middle(), chart);
      assertThat(rings).as(key).anyMatch(ring -> Math.abs(ring - x) < 1);
    }
    assertThat(rings).hasSize(5);
    assertThat(chart.getTextContent())
        .contains("gypsum, calcium chloride")
        .contains("pale malt, dark crystal malt")
        .contains("g Goldings");
  }

  /// From where to where a label reaches, at 7 px a letter.
  private record Reach(double from, double to) {}

  @Test
  void namesOfAdditionsDoNotRunIntoEachOther() {
    Element chart = chart(bitter);
    NavigableMap<Double, List<Reach>> rows = new TreeMap<>();
    for (Element label : all(chart, "text", "label")) {
      if (label.getTextContent().matches(".*(Goldings|malt|gypsum).*")) {
        double x = number(label, "x");
        double width = 7.0 * label.getTextContent().length();
        boolean end = label.getAttribute("text-anchor").equals("end");
        rows.computeIfAbsent(number(label, "y"), _ -> new ArrayList<>())
            .add(end ? new Reach(x - width, x) : new Reach(x, x + width));
      }
    }
    assertThat(rows).isNotEmpty();
    for (List<Reach> row : rows.values()) {
      row.sort(Comparator.comparingDouble(Reach::from));
      for (int i = 1; i < row.size(); i++) {
        assertThat(row.get(i).from()).isGreaterThan(row.get(i - 1).to());
      }
      assertThat(row.getLast().to()).isLessThan(TimeAxis.WIDTH);
    }
  }

  @Test
  void everyBandHasNineSingleDaysAndAMiddle() {
    Element chart = chart(bitter);
    for (Element line : all(chart, "path", "middle")) {
      Element strip = (Element) line.getParentNode();
      boolean grain = strip.getAttribute("class").contains("grain");
      assertThat(all(strip, "path", "one")).hasSize(grain ? 0 : 9);
      assertThat(all(strip, "path", "band")).hasSize(grain ? 0 : 1);
    }
    assertThat(all(chart, "path", "middle")).hasSize(4);
    assertThat(all(chart, "path", "bar").getFirst().getAttribute("d").split("M", -1))
        .hasSizeGreaterThan(20);
  }

  @Test
  void everyGuardIsMarkedByShapeAndWord() {
    for (Plan plan : List.of(bitter, wheat)) {
      List<Guard> guards = plan.forecast().guards();
      assertThat(all(chart(plan), "g", "plate-mark")).hasSameSizeAs(guards);
      String plates = Plates.html(plan.forecast(), new Shown(ReadingUnits.METRIC));
      for (Guard guard : guards) {
        assertThat(plates).contains(" " + guard.level().name() + "</h3>");
        assertThat(plates).contains(Html.escaped(guard.doThis()));
      }
    }
    // Eight corners, three corners, a box with round ones.
    assertThat(Plates.shape(Guard.Level.STOP, 0, 0, "m"))
        .containsPattern("d=\"M[0-9 ]+([HVL][0-9 ]+){7}Z\"");
    assertThat(Plates.shape(Guard.Level.SOON, 0, 0, "m"))
        .containsPattern("d=\"M[0-9 ]+([HVL][0-9 ]+){2}Z\"");
    assertThat(Plates.shape(Guard.Level.NOTE, 0, 0, "m")).containsPattern("<rect [^>]*rx=\"8\"");
  }

  @Test
  void aSentenceAndATableStandBehindEachStrip() {
    for (ReadingUnits units : List.of(ReadingUnits.METRIC, ReadingUnits.US)) {
      String html = DayChart.html(bitter, new Shown(units));
      Element behind = read(html.substring(html.indexOf("<div class=\"behind\">")));
      NodeList strips = behind.getElementsByTagName("details");
      assertThat(strips.getLength()).isEqualTo(6);
      for (int i = 0; i < strips.getLength(); i++) {
        Element strip = (Element) strips.item(i);
        assertThat(strip.getElementsByTagName("summary").getLength()).isEqualTo(1);
        assertThat(strip.getElementsByTagName("p").item(0).getTextContent()).hasSizeGreaterThan(20);
        assertThat(strip.getElementsByTagName("tr").getLength()).isGreaterThan(3);
      }
      assertThat(html).doesNotContain("NaN").doesNotContain("Infinity");
      assertThat(html.contains("°F")).isEqualTo(units.equals(ReadingUnits.US));
      assertThat(html.contains("°C")).isEqualTo(units.equals(ReadingUnits.METRIC));
    }
  }

  @Test
  void namesFromAFileStayText() {
    Recipe recipe = Demo.copperBitter();
    Goods malt = recipe.grist().getFirst();
    Goods named =
        new Goods("<b>malt</b>\"&", "", malt.kind(), malt.massKg(), malt.analysis(), malt.use());
    Plan plan = plan(recipe.with(List.of(named), recipe.hops()), DemoRigs.household());
    assertThat(chart(plan).getTextContent()).contains("<b>malt</b>\"&");
    assertThat(DayChart.html(plan, new Shown(ReadingUnits.METRIC))).doesNotContain("<b>malt");
  }
}
