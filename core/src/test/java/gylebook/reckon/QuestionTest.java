package gylebook.reckon;

import static gylebook.reckon.Lines.asked;
import static gylebook.reckon.Lines.meant;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import gylebook.units.ReadingUnits;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Lines as brewers type them: which calculation is meant, and which amount goes where.
class QuestionTest {
  private static double number(String line) {
    return Lines.answer(line).results().getFirst().value();
  }

  private static String sentence(String line) {
    return switch (asked(line)) {
      case Asked.Meant meant -> throw new AssertionError(line + ": " + meant);
      case Asked.Unclear unclear -> unclear.sentence();
    };
  }

  /// The calculation and its inputs by their names in the code; brackets where an amount was taken
  /// across to another kind.
  private static String understood(Asked.Meant meant) {
    return meant.calculation().name()
        + " "
        + meant.taken().stream()
            .map(
                t ->
                    t.input().javaName()
                        + "="
                        + (t.how().isEmpty() ? t.value() : "(" + t.value() + ")"))
            .collect(Collectors.joining("; "));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "boiling point at 1200 m | boiling-point pressureKpa=(87.718 kPa)",
        "boiling point 90 kPa | boiling-point pressureKpa=90 kPa",
        "Boiling point at 4000 ft? | boiling-point pressureKpa=(87.513 kPa)",
        "wort boiling point 12 P at 1200 m | "
            + "wort-boiling-point extractFrac=(0.12); pressureKpa=(87.718 kPa)",
        "ABV 1.064 1.012 | alcohol originalPlato=1.064; apparentPlato=1.012",
        "abv og 1.064 fg 1.012 | alcohol originalPlato=1.064; apparentPlato=1.012",
        "alcohol 16 P 3 P | alcohol originalPlato=16 P; apparentPlato=3 P",
        "how strong is a beer of 1.050 and 1.010 | "
            + "alcohol originalPlato=1.050; apparentPlato=1.010",
        "carbonate 2.4 at 4 C | carbonation-pressure beerC=4 C; wantedVol=2.4",
        "carbonate 2.4 at 4 | carbonation-pressure beerC=4; wantedVol=2.4",
        "carbonate to 2.4 volumes at 40 F at 1600 m | "
            + "carbonation-pressure beerC=40 F; wantedVol=2.4 volumes; airKpa=(83.5277 kPa)",
        "residual alkalinity 50 mg/L Ca 10 mg/L Mg 100 mg/L HCO3 | residual-alkalinity"
            + " calciumMgPerL=50 mg/L; magnesiumMgPerL=10 mg/L; bicarbonateMgPerL=100 mg/L",
        "residual alkalinity 50 mg/L Ca 10 mg/L Mg 100 ppm as CaCO3 | residual-alkalinity"
            + " calciumMgPerL=50 mg/L; magnesiumMgPerL=10 mg/L; bicarbonateMgPerL=(121.9 mg/L)",
        "residual alkalinity 50 mg/L Ca 10 mg/L Mg 100 mg/L CaCO3 | residual-alkalinity"
            + " calciumMgPerL=50 mg/L; magnesiumMgPerL=10 mg/L; bicarbonateMgPerL=(121.9 mg/L)",
        "residual alkalinity Ca 50 mg/L Mg 10 mg/L alkalinity 100 mg/L CaCO3 | residual-alkalinity"
            + " calciumMgPerL=50 mg/L; magnesiumMgPerL=10 mg/L; bicarbonateMgPerL=(121.9 mg/L)",
        "residual alkalinity Ca 50 mg/L Mg 10 mg/L HCO3 100 mg/L | residual-alkalinity"
            + " calciumMgPerL=50 mg/L; magnesiumMgPerL=10 mg/L; bicarbonateMgPerL=100 mg/L",
        "time to chill 20 L from 100 to 20 C water 12 C flow 6 L/min | immersion-chilling-time"
            + " wortKg=(20.6 kg); startC=100 C; targetC=20 C; waterKgPerSec=(0.0998203 kg/s);"
            + " waterC=12 C",
        "co2 in closed room 20 m3 5 kg | room-gas-from-cylinder gasKg=5 kg; roomM3=20 m3",
        "thermistor temperature 3 kohm | thermistor-temperature thermistorOhm=(3000 Ω)",
        "lactic acid for mash pH 5.4 | mash-acid targetPh=5.4",
        "where will it end 12 P 20 C 24:9.1 48:4.7 60:3.5:float | ferment-fit originalPlato=12 P;"
            + " fermentC=20 C; readings=24:9.1 48:4.7 60:3.5:float",
        "ferment readings 24:9,1 48:4,7 from 1.048 at 18 C | ferment-fit originalPlato=1.048;"
            + " fermentC=18 C; readings=24:9,1 48:4,7",
        "is it done 12 P 20 C 24:9.1 96:3.0 144:3.0 clean | ferment-done originalPlato=12 P;"
            + " fermentC=20 C; readings=24:9.1 96:3.0 144:3.0; diacetyl=clean",
        "pump need 2.4:quiet 1.0:rattled | pump-need remarks=2.4:quiet 1.0:rattled",
        "dried yeast mass 190 thousand million | dried-yeast cellsCount=190e9",
        "carbonation 12 psi 4 C | carbonation beerC=4 C; gaugeKpa=12 psi",
        "strike 4.4 kg 66 C 15 L | strike liquorKg=(14.973 kg); maltKg=4.4 kg; mashC=66 C",
        "strike 15 L 4.4 kg 66 C 18 C | "
            + "strike liquorKg=(14.973 kg); maltKg=4.4 kg; maltC=18 C; mashC=66 C",
        "strike 10 lb 4 oz grain at 18 C, 4 gal, mash at 152 F | "
            + "strike liquorKg=(15.1144 kg); maltKg=10 lb 4 oz; maltC=18 C; mashC=152 F",
        "strike malt 4.4 kg liquor 15 L mash 66 C | "
            + "strike liquorKg=(14.973 kg); maltKg=4.4 kg; mashC=66 C",
        "strike 4.4 kg 66 C | strike maltKg=4.4 kg; mashC=66 C",
        "mash temperature 15 L at 72 C, 4.4 kg malt | "
            + "mash-temperature liquorKg=(14.973 kg); liquorC=72 C; maltKg=4.4 kg",
        "ibu 30 g 5.5 % 20 L 60 min | "
            + "bitterness-of-addition hopG=30 g; alphaFrac=5.5 %; wortL=20 L; boiledMin=60 min",
        "bitterness 1 oz 5.5% 5 gal 60 min 1.050 | "
            + "bitterness-of-addition hopG=1 oz; alphaFrac=5.5%; wortL=5 gal; "
            + "boiledMin=60 min; wortSg=1.050",
        "hop utilisation 1.050 60 min | hop-utilisation wortSg=1.050; boiledMin=60 min",
        "hop utilisation 60 min 1.050 | hop-utilisation wortSg=1.050; boiledMin=60 min",
        "iso alpha 80 C 25 min | iso-alpha-formed wortC=80 C; heldMin=25 min",
        "prime 19 L 2.4 vol 20 C | priming-sugar beerL=19 L; wantedVol=2.4 vol; warmestC=20 C",
        "priming sugar 5 gal | priming-sugar beerL=5 gal",
        "hydrometer 1.045 at 30 C | hydrometer indicatedSg=1.045; sampleC=30 C",
        "hydrometer 1.045 at 30 C calibrated 60 F | "
            + "hydrometer indicatedSg=1.045; sampleC=30 C; calibratedC=60 F",
        "refractometer 12.4 brix 6.2 brix | "
            + "beer-refractometer originalPlato=12.4 brix; readingPlato=6.2 brix",
        "plato 1.048 | plato gravitySg=1.048",
        "gravity 12 P | gravity extractPlato=12 P",
        "12 plato in sg | gravity extractPlato=12 plato",
        "1.048 to plato | plato gravitySg=1.048",
        "brix 1.048 | brix gravitySg=1.048",
        "10 srm in ebc | ebc-from-srm beerSrm=10 srm",
        "ebc from lovibond 60 | ebc-from-lovibond maltLovibond=60",
        "lovibond 150 ebc | lovibond-from-ebc maltEbc=150 ebc",
        "dilute 20 L 14 P to 12 P | dilution-water wortL=20 L; extractPlato=14 P; wantedPlato=12 P",
        "top up 20 L 1.056 1.050 | "
            + "dilution-water wortL=20 L; extractPlato=1.056; wantedPlato=1.050",
        "heat 30 L from 15 C to 68 C with 2500 W | "
            + "heating-time massKg=(29.9461 kg); fromC=15 C; toC=68 C; powerW=2500 W",
        "heating time 30 kg 68 C 2.5 kW | heating-time massKg=30 kg; toC=68 C; powerW=2.5 kW",
        "evaporation at a duty 60 % 3000 W | boil-evaporation elementW=3000 W; dutyFrac=60 %",
        "boil off 3500 W | boil-off powerW=3500 W",
        "lift limit reach 0.5 m height 1.2 m | lift-limit reachM=0.5 m; heightM=1.2 m",
        "seconds to burn 70 C | seconds-to-burn liquidC=70 C",
        "burn 60c | seconds-to-burn liquidC=60c",
        "pitch 20 L 1.050 | cells-to-pitch wortL=20 L; originalPlato=1.050",
        "cells to pitch 20 L 12 P 1e6 | "
            + "cells-to-pitch wortL=20 L; originalPlato=12 P; rateCountPerMl=1e6",
        "dried yeast 200e9 | dried-yeast cellsCount=200e9",
        "yeast viability 60 days at 4 C | yeast-viability-stored storageC=4 C; heldDay=60 days",
        "mash ph 4.4 kg 15 L alkalinity 2 calcium 3 magnesium 0.5 | "
            + "mash-ph maltKg=4.4 kg; liquorL=15 L; alkalinityMeqPerL=2; "
            + "calciumMeqPerL=3; magnesiumMeqPerL=0.5",
        "mash ph malt 4.4 kg liquor 15 L alkalinity 2 meq/L calcium 3 meq/L magnesium 0.5 meq/L | "
            + "mash-ph maltKg=4.4 kg; liquorL=15 L; alkalinityMeqPerL=2 meq/L; "
            + "calciumMeqPerL=3 meq/L; magnesiumMeqPerL=0.5 meq/L",
        "residual alkalinity calcium 80 magnesium 10 bicarbonate 200 | "
            + "residual-alkalinity calciumMgPerL=80; magnesiumMgPerL=10; bicarbonateMgPerL=200",
        "attenuation 1.050 1.010 | attenuation-apparent originalPlato=1.050; apparentPlato=1.010",
        "attenuation limit 66 C | attenuation-limit mashC=66 C",
        "fermentability 66 C 90 min | attenuation-after-rest mashC=66 C; heldMin=90 min",
        "first wort 3 L/kg | first-wort thicknessKgPerKg=(2.99461 kg/kg)",
        "mash volume 15 L 4.4 kg | mash-volume liquorL=15 L; maltKg=4.4 kg",
        "oxygen in wort 18 C 12 P | oxygen-in-wort liquidC=18 C; originalPlato=12 P",
        "cold volume 25 L 1.050 | cold-volume hotL=25 L; extractFrac=(0.123876)",
        "shrinkage 12 P | shrinkage extractFrac=(0.12)",
        "air pressure 1600 m | air-pressure altitudeM=1600 m",
        "salt ions CaCl2 0.5 g/L | salt-ions doseGPerL=0.5 g/L; saltFormula=CaCl2",
        "molar mass CaSO4 | molar-mass formula=CaSO4",
        "diacetyl rest 18 C | diacetyl-rest beerC=18 C",
        "pt100 125 ohm | pt100-temperature probeOhm=125 ohm",
        "pt100 66 C | pt100-resistance probeC=66 C",
        "thermistor 10000 ohm | thermistor-temperature thermistorOhm=10000 ohm",
        "thermocouple k 66 C | thermocouple-k-voltage junctionC=66 C",
        "breaker 5500 W 240 V | breaker-size powerW=5500 W; mainsV=240 V",
        "heater current 3000 W 230 V | heater-current powerW=3000 W; mainsV=230 V",
        "element power 5500 W 240 V on 208 V | "
            + "element-power plateW=5500 W; plateV=240 V; mainsV=208 V",
        "draught line length 80 kPa | draught-line-length kegKpa=80 kPa",
        "boilng point at 1200 m | boiling-point pressureKpa=(87.718 kPa)",
        "boiling-point pressure=90 kPa | boiling-point pressureKpa=90 kPa",
        "strike malt-kg=4.4 kg mash=66 liquor=15 | strike maltKg=4.4 kg; mashC=66; liquorKg=15",
        "water density 66 C | water-density waterC=66 C",
        "saturation pressure 100 C | saturation-pressure waterC=100 C",
        "pasteurisation 62 C 20 min | pasteurisation-units doseC=62 C; heldMin=20 min",
        "co2 in room 20 kg 8 P 30 m3 | "
            + "room-gas-from-fermentation wortKg=20 kg; realDropPlato=8 P; roomM3=30 m3",
        "immersion chiller 20 kg 0.1 kg/s 12 C | "
            + "immersion-chilling-time wortKg=20 kg; waterKgPerSec=0.1 kg/s; waterC=12 C",
        "hose drop 6 L/min | hose-drop flowLPerSec=6 L/min",
        "yeast starter 1e11 1 L 10 P | starter-cells startCount=1e11; starterL=1 L; dropPlato=10 P",
        "final 1.012 original 1.064 abv | alcohol originalPlato=1.064; apparentPlato=1.012",
        "fg 1.012 og 1.064 abv | alcohol originalPlato=1.064; apparentPlato=1.012",
        "mash 66 C strike 15 L malt 4.4 kg | "
            + "strike liquorKg=(14.973 kg); maltKg=4.4 kg; mashC=66 C",
        "refractometer 12.4 P 6.2 P | beer-refractometer originalPlato=12.4 P; readingPlato=6.2 P",
        "66 C mash 18 C malt strike 4.4 kg grain 15 L | "
            + "strike liquorKg=(14.973 kg); maltKg=4.4 kg; maltC=18 C; mashC=66 C",
        "mash in 15 L 72 C 4.4 kg | "
            + "mash-temperature liquorKg=(14.973 kg); liquorC=72 C; maltKg=4.4 kg",
        "strike 4,4 kg 66 °C 15 L | strike liquorKg=(14.973 kg); maltKg=4,4 kg; mashC=66 °C",
        "strike 4.4kg 66c 15l | strike liquorKg=(14.973 kg); maltKg=4.4kg; mashC=66c",
        "alcohol from 1.050 down to 1.010 | alcohol originalPlato=1.050; apparentPlato=1.010",
        "how much sugar to prime 19 L to 2.5 volumes | "
            + "priming-sugar beerL=19 L; wantedVol=2.5 volumes",
        "what temperature does water boil at 5000 ft | boiling-point pressureKpa=(84.3111 kPa)",
        "how long to chill 20 kg with 0.1 kg/s at 12 C | "
            + "immersion-chilling-time wortKg=20 kg; waterKgPerSec=0.1 kg/s; waterC=12 C",
        "carbonate at 38F for 2.5 vols | carbonation-pressure beerC=38F; wantedVol=2.5 vols",
        "dry yeast for 180 billion cells | dried-yeast cellsCount=180e9",
        "how hot must strike water be for 6 kg malt and 30 kg water to mash at 67 C | "
            + "strike liquorKg=30 kg; maltKg=6 kg; mashC=67 C",
        "heat up 40 L 15 C 69.6 C 5500 W | "
            + "heating-time massKg=(39.9281 kg); fromC=15 C; toC=69.6 C; powerW=5500 W",
        "chilling water 95 C 20 C 12 C | "
            + "least-chilling-water startC=95 C; targetC=20 C; waterC=12 C",
        "counterflow wort 3 L/min 95 C water 6 L/min 12 C UA 500 | "
            + "counterflow-chiller wortKgPerSec=(0.0515 kg/s); wortC=95 C; "
            + "waterKgPerSec=(0.0998203 kg/s); waterC=12 C; uaWPerK=500",
        "boiling point at 0.1 MPa | boiling-point pressureKpa=0.1 MPa",
        "ramp error 1.7 K/min | probe-ramp-error rampKPerSec=(0.0283333333 K/s)",
        "duty ripple 5500 W 205 kJ/K | duty-ripple powerW=5500 W; heatJPerK=(205000 J/K)",
        "chip register 0x0191 | chip-temperature registerNumber=401",
        "residual alkalinity Ca 50 Mg 10 HCO3 100 | "
            + "residual-alkalinity calciumMgPerL=50; magnesiumMgPerL=10; bicarbonateMgPerL=100",
        "gypsum 1 g/L | salt-ions doseGPerL=1 g/L; saltFormula=CaSO4.2H2O",
        "attenuation at mash temperature 65 C | attenuation-limit mashC=65 C",
        "whirlpool hops 98 C to 78 C in 40 min | "
            + "iso-alpha-in-even-cooling startC=98 C; endC=78 C; coolingMin=40 min",
        "whirlpool 20 min at 85 C | iso-alpha-formed wortC=85 C; heldMin=20 min",
        "vapour pressure of water at 66 C | saturation-pressure waterC=66 C",
        "real extract 12 P 2.5 P | alcohol originalPlato=12 P; apparentPlato=2.5 P",
        "calories of a beer 1.050 1.010 | "
            + "food-energy-from-gravities originalPlato=1.050; apparentPlato=1.010",
        "latent heat at 1000 m | latent-heat-of-the-boil pressureKpa=(89.8763 kPa)",
        "boil off 27 L 11 P 3 kg | boil-concentration wortL=27 L; wortPlato=11 P; waterKg=3 kg",
        "bleach 5.25 % 100 mg/L | sanitiser-dose stockFrac=5.25 %; wantedMgPerL=100 mg/L",
        "hardness calcium 50 magnesium 10 | water-hardness calciumMgPerL=50; magnesiumMgPerL=10",
        "carbonation at altitude 5000 ft | carbonation-altitude altitudeM=5000 ft"
      })
  void aLineIsUnderstood(String line, String understood) {
    assertThat(understood(meant(line)).strip()).isEqualTo(understood);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "asdf 12 | 'asdf' is nothing that can be reckoned here",
        "qwertz | 'qwertz' is nothing that can be reckoned here",
        "12 P | amount without a question",
        "1.050 1.010 | amount without a question",
        "boil the ocean | choose one or say it with other words",
        "what is the meaning of life | choose one or say it with other words",
        "carbonate 20-25 C | '20-25' begins like an amount and is none",
        "strike 4.4 kg 66 C 15 L 230 V | strike has no place for '230 V'; it asks for liquor (kg)",
        "boiling-point pressur=90 kPa | boiling-point knows no 'pressur'; it asks for pressure",
        "plato gravity=1.048 gravity=1.050 | gravity is given twice",
        "= 12 | An equals sign stands between a name and its value",
        "ground-fault-trip 12 A | asks for nothing; it has no place for '12 A'",
        "mash ph 1 2 3 4 5 6 7 8 9 10 | holds 10 amounts"
      })
  void whatIsNotUnderstoodIsSaidInASentence(String line, String said) {
    assertThat(sentence(line)).contains(said).endsWith(".");
  }

  @Test
  void anEmptyOrAnEndlessLineIsASentenceToo() {
    assertThat(sentence("")).contains("boiling point at 1200 m");
    assertThat(sentence("   ")).contains("boiling point at 1200 m");
    assertThat(sentence("strike ".repeat(60))).contains("420 characters");
  }

  @Test
  void whatIsMissingIsAskedForInOneSentence() {
    assertThat(meant("strike 4.4 kg 66 C").missing()).isEqualTo("strike still needs liquor (kg).");
    assertThat(meant("lift index").missing())
        .isEqualTo("lift-index still needs load (kg) and limit (kg).");
    assertThat(meant("boiling point").missing()).isEmpty();
  }

  @Test
  void whatWasReadOtherwiseThanTypedIsSaid() {
    assertThat(meant("boilng point at 1200 m").remarks())
        .containsExactly("'boilng' was read as 'boiling'.");
    assertThat(meant("boiling point in tibet at 4500 m").remarks())
        .containsExactly("'tibet' was not used.");
    Taken taken = meant("boiling point at 1200 m").taken().getFirst();
    assertThat(taken.how()).isEqualTo("air at 1200 m in standard weather");
    assertThat(taken.typed()).isEqualTo("1200 m");
  }

  @Test
  void aUnitThatIsUnknownIsNotPassedOver() {
    assertThat(sentence("boiling point at 29.2 furlong"))
        .isEqualTo("'furlong' behind 29.2 is no unit that is known here.");
    // Barometers of the trade: 29.92 inHg and 760 mmHg are one atmosphere.
    assertThat(number("boiling point at 29.92 inHg")).isCloseTo(99.97, within(0.01));
    assertThat(number("boiling point at 760 mmHg")).isCloseTo(99.97, within(0.01));
  }

  @Test
  void aGravityIsNoTemperature() {
    assertThat(meant("ibu 28 g 10 % alpha 60 min 20 L 1.050").calculation().name())
        .isEqualTo("bitterness-of-addition");
    assertThat(meant("abv 1.05 1.01").taken())
        .extracting(Taken::value)
        .containsExactly("1.050", "1.010");
    assertThat(meant("refractometer 14.2 7.1").taken())
        .extracting(each -> each.input().key())
        .containsExactly("original", "reading");
  }

  @Test
  void aMassInAVolumeIsADoseWhereADoseIsAskedFor() {
    assertThat(meant("dry hop 100 g 20 L").taken())
        .extracting(Taken::value)
        .containsExactly("5 g/L");
    assertThat(meant("dry hop 100 g 20 L").remarks())
        .containsExactly("'100 g' in '20 L' was taken for 5 g/L.");
    // Calcium is 40.078 of the 172.17 of gypsum (standard atomic weights): 250 mg/L bring 58.2.
    assertThat(number("gypsum 5 g in 20 L")).isCloseTo(58.2, within(0.05));
    assertThat(sentence("gypsum 20 L 5 g")).contains("has no place for");
    // Where mass and volume have places of their own they stay apart.
    assertThat(meant("ibu 30 g 5.5 % 20 L 60 min").remarks()).isEmpty();
  }

  @Test
  void lettersAloneAskNothing() {
    assertThat(sentence("150 F in C")).startsWith("That is an amount without a question");
    assertThat(meant("convert 20 EBC to SRM").calculation().name()).isEqualTo("srm-from-ebc");
    assertThat(meant("convert 10 SRM to EBC").calculation().name()).isEqualTo("ebc-from-srm");
  }

  @Test
  void aHeightWithoutAirIsNamedWithItsLimits() {
    assertThat(sentence("boiling point at 20000 m"))
        .isEqualTo("20000 m is no altitude here; it must lie between -500 and 11000 m.");
  }

  @Test
  void otherMeaningsAreOffered() {
    assertThat(meant("boiling point at 1200 m").others())
        .extracting(Calculation::name)
        .contains("wort-boiling-point");
  }

  @Test
  void everyCalculationIsFoundByItsNameAndByTheWordsOfIt() {
    for (Calculation calculation : Reckoner.all()) {
      assertThat(meant(calculation.name()).calculation()).isEqualTo(calculation);
      if (calculation.name().matches(".*-\\d+(-.*)?")) {
        continue; // Typed as words, the number in it is an amount.
      }
      String words = calculation.name().replace('-', ' ');
      Asked asked = asked(words);
      List<Calculation> offered =
          asked instanceof Asked.Meant meant
              ? Stream.concat(Stream.of(meant.calculation()), meant.others().stream()).toList()
              : ((Asked.Unclear) asked).near();
      assertThat(offered).as(words).contains(calculation);
    }
  }

  @Test
  void everyPhraseLeadsToCalculationsThatExist() {
    assertThat(Phrases.meant()).hasSizeGreaterThan(150);
    Phrases.meant()
        .forEach(
            (words, names) -> {
              for (String name : names) {
                assertThat(Reckoner.find(name)).as(name).isInstanceOf(Search.Hit.class);
              }
              // Said alone, a phrase finds one of its calculations; with amounts they decide.
              assertThat(names).as(words + "").contains(first(String.join(" ", words)));
            });
  }

  private static String first(String line) {
    return switch (asked(line)) {
      case Asked.Meant meant -> meant.calculation().name();
      case Asked.Unclear unclear -> unclear.sentence();
    };
  }

  @Test
  void noLineMakesTheReaderThrowAndNothingTypedIsLost() {
    List<String> pieces =
        List.of(
            "strike",
            "boil",
            "at",
            "66 C",
            "1.050",
            "=",
            "-",
            "4,4 kg",
            "°",
            "½",
            "(",
            ")",
            "x=",
            "mash",
            "12-13",
            "NaN",
            "1e400",
            "%",
            "\u202e",
            "in",
            "abv",
            "5 ft 3 in",
            "ü",
            "'",
            "CaSO4",
            "//",
            "7 lb 3 oz",
            "malt",
            "carbonate",
            "1 000",
            "1'000",
            "to",
            "\"",
            "5\"");
    Cases.each(
        600,
        random -> {
          StringBuilder line = new StringBuilder();
          int count = random.nextInt(1, 9);
          for (int i = 0; i < count; i++) {
            line.append(pieces.get(random.nextInt(pieces.size())));
            line.append(random.nextInt(5) == 0 ? "" : " ");
          }
          switch (asked(line.toString())) {
            case Asked.Unclear unclear -> assertThat(unclear.sentence()).isNotBlank();
            case Asked.Meant meant -> {
              assertThat(meant.taken())
                  .allMatch(t -> line.toString().contains(beginning(t.typed())));
              meant.calculation().reckon(meant.typed(), ReadingUnits.US);
            }
          }
        });
  }

  private static String beginning(String typed) {
    return typed.substring(0, 1);
  }
}
