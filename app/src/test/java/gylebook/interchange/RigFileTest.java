package gylebook.interchange;

import static java.nio.charset.Charset.forName;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.plan.Demo;
import gylebook.plan.Planner;
import gylebook.rig.DemoRigs;
import gylebook.rig.Newcomer;
import gylebook.rig.Parameter;
import gylebook.rig.Rig;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// A rig file that somebody wrote or spoilt by hand.
class RigFileTest {
  private static final String FILE = OwnFiles.rig(DemoRigs.household());
  private static final Pattern VALUE = Pattern.compile("\"(value|doubt)\" : ([-0-9.eE+]+)");

  private static Reading<Rig> read(String text) {
    return OwnFiles.readRigFile(text.getBytes(StandardCharsets.UTF_8));
  }

  private static Rig rig(String text) {
    assertThat(read(text)).isInstanceOf(Reading.Understood.class);
    return ((Reading.Understood<Rig>) read(text)).thing();
  }

  private static String refused(Reading<?> reading) {
    assertThat(reading).isInstanceOf(Reading.NotUnderstood.class);
    return ((Reading.NotUnderstood<?>) reading).sentence();
  }

  /// The file with another text for one number of a component.
  private static String with(String component, String key, String text) {
    return Pattern.compile("(\"" + component + "\" : \\{[^}]*?\"" + key + "\" : )[^,\\n]+")
        .matcher(FILE)
        .replaceFirst("$1" + Matcher.quoteReplacement(text));
  }

  @Test
  void whatIsWrongIsToldInWordsForWhoTypedIt() {
    String pressure =
        "\"stationKpa\" : {\"value\" : 1013, \"doubt\" : 1, \"spread\" : \"NORMAL\","
            + " \"origin\" : \"MEASURED\", \"basis\" : \"\", \"asTyped\" : \"\"}";
    List<String> spoilt =
        List.of(
            with("heightM", "value", "NaN"),
            with("heightM", "value", "true"),
            with("heightM", "value", "\"14 bananas\""),
            with("heightM", "spread", "\"FLAT\""),
            with("heightM", "value", "-0.2"),
            with("altitudeM", "doubt", "300"),
            FILE.replaceFirst("\"stationKpa\" : null", pressure),
            FILE.replaceFirst("\\{", "{\"colour\" : 1,"),
            FILE.replaceFirst("\"invented\" : true,", ""),
            FILE.replaceFirst("\"heightM\" : \\{[^}]*\\},", ""),
            FILE.replaceFirst("\"heightM\" : \\{[^}]*\\},", "\"heightM\" : 0.4,"),
            FILE.substring(0, 900),
            OwnFiles.recipe(Demo.copperBitter()),
            "[1]",
            "");
    for (String text : spoilt) {
      assertThat(refused(read(text)))
          .endsWith(".")
          .doesNotContainPattern("(?i)gylebook\\.|jackson|Feature|deserial|token|property|null");
    }
    assertThat(refused(read(spoilt.get(6)))).contains("1013.0 kPa").contains("110.0 kPa");
    assertThat(refused(read(OwnFiles.recipe(Demo.copperBitter())))).contains("a recipe and no rig");
    byte[] rig = FILE.getBytes(StandardCharsets.UTF_8);
    assertThat(RecipeReader.read(rig, "rig.json"))
        .isInstanceOfSatisfying(
            ReadRecipe.NotUnderstood.class,
            no -> assertThat(no.sentence()).contains("a rig and no recipe"));
  }

  @Test
  void lettersThatAreNoneAreRefusedAndAByteOrderMarkIsNot() {
    String named = FILE.replace("the household's kettle", "Kättle");
    assertThat(refused(OwnFiles.readRigFile(named.getBytes(StandardCharsets.ISO_8859_1))))
        .contains("not UTF-8");
    assertThat(rig("\ufeff" + named).name()).isEqualTo("Kättle");
  }

  /// A recipe's letters are sometimes guessed, and it is told. A rig's never are: what is no UTF-8
  /// and has no mark is refused, however sensible a guess would be.
  @ParameterizedTest
  @ValueSource(strings = {"windows-1252", "ISO-8859-1", "UTF-16LE", "UTF-16BE", "UTF-32LE"})
  void theLettersOfARigAreNeverGuessed(String charset) {
    byte[] named = FILE.replace("the household's kettle", "Kättle").getBytes(forName(charset));
    assertThat(refused(OwnFiles.readRigFile(named)))
        .startsWith("The letters of the file are not UTF-8")
        .endsWith("Maybe save the file again as UTF-8, or it is another kind of file.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "UTF-32LE", "UTF-32BE"})
  void aMarkIsNoGuess(String charset) {
    String named = "\ufeff" + FILE.replace("the household's kettle", "Kättle");
    Reading<Rig> read = OwnFiles.readRigFile(named.getBytes(forName(charset)));
    assertThat(read)
        .isInstanceOfSatisfying(
            Reading.Understood.class,
            rig -> assertThat(((Rig) rig.thing()).name()).isEqualTo("Kättle"));
  }

  /// Their letters would have been guessed, or read by a header, before the file was refused.
  @Test
  void xmlIsCalledByItsName() {
    String said = "The file is XML; a rig file is JSON. Maybe it is a recipe,";
    for (String text :
        List.of(
            "<RECIPES>Kättle</RECIPES>",
            " <?xml version=\"1.0\" encoding=\"UTF-16\"?>\n{\"name\" : \"Kättle\"}",
            "<?xml version='1.0' encoding='x-nobody-knows'?><RECIPES/>")) {
      assertThat(refused(read(text))).startsWith(said);
      assertThat(refused(OwnFiles.readRigFile(text.getBytes(StandardCharsets.ISO_8859_1))))
          .startsWith(said);
      assertThat(refused(OwnFiles.readRigFile(("\ufeff" + text).getBytes(forName("UTF-16LE")))))
          .startsWith(said);
    }
  }

  @Test
  void anAmountWithItsUnitIsReadByTheOneParserAndKeptAsTyped() {
    Parameter height = rig(with("heightM", "value", "\"14,5 in\"")).kettle().heightM();
    assertThat(height.value()).isCloseTo(14.5 * 0.0254, within(1e-12));
    assertThat(height.asTyped()).isEqualTo("14,5 in");
    assertThat(rig(with("tapC", "value", "\"55 F\"")).site().tapC().value())
        .isCloseTo(12.777777, within(1e-5));
    assertThat(rig(with("mashLPerSec", "value", "\"1 gal/min\"")).loop().mashLPerSec().value())
        .isCloseTo(3.785411784 / 60, within(1e-9));
    assertThat(refused(read(with("altitudeM", "value", "\"5,280 ft\"")))).contains("5.280 or 5280");
  }

  @Test
  void theDemosAndEveryNewcomerLieWithinTheBounds() {
    Newcomer usual = Newcomer.usual();
    for (Rig rig : List.of(DemoRigs.household(), DemoRigs.smallFlat(), usual.rig())) {
      assertThat(read(OwnFiles.rig(rig))).isEqualTo(new Reading.Understood<>(rig));
    }
    for (double altitudeM : new double[] {-400, 5000}) {
      for (double kettleL : new double[] {5, 500}) {
        Rig rig =
            new Newcomer(
                    "any",
                    kettleL,
                    kettleL < 10 ? 300 : 30_000,
                    500,
                    90,
                    altitudeM,
                    true,
                    20,
                    0.004,
                    false,
                    true,
                    usual.place(),
                    usual.chiller(),
                    1000,
                    1)
                .rig();
        assertThat(read(OwnFiles.rig(rig))).isEqualTo(new Reading.Understood<>(rig));
      }
    }
  }

  /// Whatever one number of the file is changed to, the file is refused or the day is forecast.
  @Test
  void noNumberOfARigEndsThePlannerInAnException() {
    Matcher number = VALUE.matcher(FILE);
    int planned = 0;
    while (number.find()) {
      double spoilt = 30 * Double.parseDouble(number.group(2)) + 5;
      String text = FILE.substring(0, number.start(2)) + spoilt + FILE.substring(number.end(2));
      if (read(text) instanceof Reading.Understood<Rig>(Rig rig)) {
        assertThat(Planner.plan(Demo.copperBitter(), rig, 3, 20, () -> false, _ -> {})).isNotNull();
        planned++;
      }
    }
    assertThat(planned).isGreaterThan(20);
  }
}
