package gylebook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import gylebook.plan.Demo;
import gylebook.plan.Plan;
import gylebook.plan.Planned;
import gylebook.plan.Planner;
import gylebook.recipe.Recipe;
import gylebook.rig.DemoRigs;
import gylebook.rig.Rig;
import gylebook.telling.WallSheet;
import gylebook.testing.InBrowser;
import gylebook.units.ReadingUnits;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The wall sheet as a browser prints it.
class WallSheetPrintTest extends InBrowser {
  private static final Pattern PAPER_SIDE = Pattern.compile("/Type\\s*/Page[^s]");

  private static Plan bitter;
  private static Plan wheat;

  /// Not while this class is still being set up: the planner's workers call back into it.
  @BeforeAll
  static void plan() {
    bitter = plan(Demo.copperBitter(), DemoRigs.household());
    wheat = plan(Demo.wheatBeer(), DemoRigs.smallFlat());
  }

  private static Plan plan(Recipe recipe, Rig rig) {
    Planned planned = Planner.plan(recipe, rig, 200, 20, () -> false, _ -> {});
    return ((Planned.Feasible) planned).plan();
  }

  private static String sheet(String beer, String set) {
    Plan plan = beer.equals("wheat") ? wheat : bitter;
    ReadingUnits units = set.equals("us") ? ReadingUnits.US : ReadingUnits.METRIC;
    return WallSheet.html(plan, units);
  }

  @ParameterizedTest
  @CsvSource({
    "bitter,metric,A4",
    "bitter,metric,Letter",
    "bitter,us,Letter",
    "wheat,metric,A4",
    "wheat,us,Letter"
  })
  void takesAtMostTwoSidesOfPaperAndFetchesNothing(String beer, String set, String paper) {
    takesTwoSides(sheet(beer, set), paper);
  }

  /// A household without the first font of the list prints with a wider one.
  @ParameterizedTest
  @CsvSource({"bitter,metric,A4", "bitter,us,Letter", "wheat,us,Letter"})
  void staysOnTwoSidesInAWiderFont(String beer, String set, String paper) {
    String narrow = "\"Liberation Sans\", Arial, Helvetica";
    assertThat(sheet(beer, set)).contains(narrow);
    takesTwoSides(sheet(beer, set).replace(narrow, "\"DejaVu Sans\""), paper);
  }

  private static void takesTwoSides(String sheet, String paper) {
    List<String> fetched = new ArrayList<>();
    try (BrowserContext context =
        browser.with(new NewContextOptions().setJavaScriptEnabled(false))) {
      Page page = context.newPage();
      page.onRequest(request -> fetched.add(request.url()));
      page.setContent(sheet);
      byte[] pdf = page.pdf(new Page.PdfOptions().setFormat(paper));
      String text = new String(pdf, StandardCharsets.ISO_8859_1);
      assertThat(PAPER_SIDE.matcher(text).results().count()).isBetween(1L, 2L);
    }
    assertThat(fetched).isEmpty();
  }

  /// Arm's length is taken as 0.65 m; capitals of 1/200 of the distance are 3.2 mm high (rule of
  /// thumb of the FAA's human-factors training; capitals are about 0.7 of the font's size).
  @ParameterizedTest
  @CsvSource({".day .clock", ".day strong", ".day .expect", ".weigh th"})
  void figuresAreBigEnoughForArmsLength(String place) {
    try (BrowserContext context = browser.with(new NewContextOptions())) {
      Page page = context.newPage();
      page.setContent(sheet("wheat", "metric"));
      String size =
          (String)
              page.locator(place)
                  .first()
                  .evaluate("place => getComputedStyle(place).fontSize.replace('px', '')");
      double fontMm = Double.parseDouble(size) * 25.4 / 96;
      // 3.0 mm: a hair under the rule of thumb, well over its least (16 minutes of arc).
      assertThat(0.7 * fontMm).isGreaterThan(3.0);
    }
  }
}
