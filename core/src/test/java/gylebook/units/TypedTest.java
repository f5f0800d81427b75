package gylebook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.Cases;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {
  private static Entered read(String text, Unit usual) {
    return switch (Typed.parse(text, usual)) {
      case Typed.Read read -> read.entered();
      case Typed.Unclear unclear -> throw new AssertionError(text + ": " + unclear.sentence());
    };
  }

  private static Typed.Unclear unclear(String text, Unit usual) {
    return switch (Typed.parse(text, usual)) {
      case Typed.Read read -> throw new AssertionError(text + " was read as " + read.entered());
      case Typed.Unclear unclear -> unclear;
    };
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "MASS;4.5;4.5",
        "MASS;4,5 kg;4.5",
        "MASS;450 g;0.45",
        "MASS;10 lb 4 oz;4.649321793",
        "MASS;10lb4oz;4.649321793",
        "MASS;10 lbs, 4 oz;4.649321793",
        "MASS;1 1/2 lb;0.680388555",
        "MASS;1½ lb;0.680388555",
        "SMALL_MASS;½ oz;14.174761565625",
        "SMALL_MASS;30;30",
        "VOLUME;19 L;19",
        "VOLUME;19l;19",
        "VOLUME;19 litres;19",
        "VOLUME;5 gal;18.92705892",
        "VOLUME;5 US gal;18.92705892",
        "VOLUME;5 gal.;18.92705892",
        "VOLUME;5 imp gal;22.73045",
        "VOLUME;5 UK gal;22.73045",
        "VOLUME;5 igal;22.73045",
        "VOLUME;2 m³;2000",
        "VOLUME;0,125 L;0.125",
        "VOLUME;1.234,5 L;1234.5",
        "VOLUME;1,234.5 L;1234.5",
        "VOLUME;1 234 L;1234",
        "VOLUME;1 234 L;1234",
        "VOLUME;12'500 L;12500",
        "VOLUME;19 L;19",
        "TEMPERATURE;66;66",
        "TEMPERATURE;66c;66",
        "TEMPERATURE;66 °C;66",
        "TEMPERATURE;66º C;66",
        "TEMPERATURE;151F;66.1111111111",
        "TEMPERATURE;−5 °C;-5",
        "TEMPERATURE;- 5 °C;-5",
        "TEMPERATURE;339.15 K;66",
        "TEMPERATURE_DIFFERENCE;9 F;5",
        "TIME;90;5400",
        "TIME;90 min;5400",
        "TIME;1h30;5400",
        "TIME;1 h 30 min;5400",
        "TIME;2d12;216000",
        "TIME;1.5 h;5400",
        "TIME;1 week;604800",
        "PRESSURE;12 psi;82.737",
        "PRESSURE;0.8 bar;80",
        "POWER;2 kW;2000",
        "POWER;2.4KW;2400",
        "ENERGY;3 kwh;10800000",
        "LENGTH;35;0.35",
        "LENGTH;14\";0.3556",
        "LENGTH;4000ft;1219.2",
        "LENGTH;1 ft 2 in;0.3556",
        "FLOW;6 L/min;0.1",
        "FLOW;6 litres per minute;0.1",
        "FLOW;1 gpm;0.0630902",
        "GRAVITY;1.052;12.8616",
        "GRAVITY;1,052;12.8616",
        "GRAVITY;1052;12.8616",
        "GRAVITY;1 052;12.8616",
        "GRAVITY;52;12.8616",
        "GRAVITY;52 points;12.8616",
        "GRAVITY;1.052 SG;12.8616",
        "GRAVITY;SG 1.052;x",
        "GRAVITY;12.9 P;12.9",
        "GRAVITY;12.9°P;12.9",
        "GRAVITY;12,9 Plato;12.9",
        "GRAVITY;0.998;-0.519",
        "COLOUR;3 L;6.75",
        "COLOUR;10 SRM;19.685",
        "SHARE;75;0.75",
        "SHARE;75 %;0.75",
        "PH;5,4;5.4",
        "PH;pH 5.4;x",
        "CARBONATION;2.4 vols;2.4",
        "SPECIFIC_VOLUME;1.25 qt/lb;2.6079",
        "DIASTATIC_POWER;100 Lintner;334",
        "NUMBER;1e-10;1e-10",
        "NUMBER;+3;3",
        "NUMBER;١٢;12"
      })
  void readsWhatPeopleType(Quantity quantity, String text, String inside) {
    Unit usual = ReadingUnits.METRIC.unit(quantity);
    if (inside.equals("x")) {
      assertThat(unclear(text, usual).what()).isNotBlank();
      return;
    }
    double wanted = Double.parseDouble(inside);
    double leeway = Math.max(2e-5 * Math.abs(wanted), quantity == Quantity.GRAVITY ? 0.002 : 0);
    Entered entered = read(text, usual);
    assertThat(entered.inside()).as(text).isCloseTo(wanted, within(leeway));
    assertThat(entered.asTyped()).isEqualTo(text.strip());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      nullValues = "none",
      value = {
        "MASS;~~",
        "MASS;~   ~",
        "MASS;abc",
        "MASS;kg",
        "MASS;-3 kg",
        "MASS;NaN",
        "MASS;nan kg",
        "MASS;Infinity",
        "MASS;-∞",
        "MASS;0x10 kg",
        "MASS;1e400 kg",
        "MASS;1e9 kg",
        "MASS;1,052 kg",
        "MASS;1.2.3 kg",
        "MASS;1,2,3 kg",
        "MASS;1,2.3,4 kg",
        "MASS;12,34,567 kg",
        "MASS;1/0 kg",
        "MASS;5 L",
        "MASS;5 kg kg",
        "MASS;5 kg 3",
        "MASS;4 oz 10 lb",
        "MASS;10 lb 20 oz",
        "MASS;10 lb 4",
        "MASS;1.5 lb 4 oz",
        "MASS;3 5 kg",
        "MASS;5 kilometres",
        "MASS;5 kg!",
        "MASS;5 kg drop",
        "VOLUME;5 oz",
        "VOLUME;19 C",
        "VOLUME;9999999999999 L",
        "VOLUME;0.0.0",
        "TEMPERATURE;66 °C 3",
        "TEMPERATURE;1e3 C",
        "TEMPERATURE;-300 C",
        "TIME;1:30",
        "TIME;1h90",
        "TIME;-5 min",
        "GRAVITY;12.9",
        "GRAVITY;500",
        "GRAVITY;1.5 SG",
        "GRAVITY;1.05 kg",
        "GRAVITY;0",
        "GRAVITY;-3",
        "SHARE;175 %",
        "PH;15",
        "POWER;2 hp",
        "PRESSURE;-1 bar"
      })
  void whatIsUnclearIsSaidInAClearSentence(Quantity quantity, String text) {
    Typed.Unclear answer = unclear(text, ReadingUnits.METRIC.unit(quantity));
    assertThat(answer.what()).endsWith(".").hasSizeGreaterThan(15);
    assertThat(answer.value()).isEqualTo(text.strip());
    assertThat(answer.sentence()).startsWith(answer.what());
  }

  /// Factors by definition: a pound 0.45359237 kg, a US gallon 3.785411784 L, an imperial one
  /// 4.54609 L, an inch 0.0254 m, a pound-force 4.4482216152605 N; worked by hand.
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "MASS;1lb 4oz;0.5669904625",
        "MASS;1lb.4oz;0.5669904625",
        "MASS;1 lb,4 oz;0.5669904625",
        "MASS;1 lb. 4 oz.;0.5669904625",
        "MASS;1 lb and 4 oz;0.5669904625",
        "MASS;1 lb & ½ oz;0.46776713234375",
        "MASS;1-1/2 lb;0.680388555",
        "MASS;1-½ lb;0.680388555",
        "MASS;4.5 kilogrammes;4.5",
        "MASS;5\u200b kg\ufeff;5",
        "MASS;4,5\u00a0kg;4.5",
        "VOLUME;5impgal;22.73045",
        "VOLUME;5 impgal;22.73045",
        "VOLUME;5 imp. gal.;22.73045",
        "VOLUME;5 imp.gal;22.73045",
        "VOLUME;5 imperial gal;22.73045",
        "VOLUME;5 UK gallons;22.73045",
        "VOLUME;5ukgal;22.73045",
        "VOLUME;5 gal UK;22.73045",
        "VOLUME;5 gallons (imp);22.73045",
        "VOLUME;2 imp gal 4 pints;11.365225",
        "VOLUME;2 imp pints;1.1365225",
        "VOLUME;2 imperial quarts;2.273045",
        "VOLUME;12 imp fluid ounces;0.34095675",
        "VOLUME;5usgal;18.92705892",
        "VOLUME;5 U.S. gallons;18.92705892",
        "VOLUME;5 gallons US;18.92705892",
        "VOLUME;5-1/2 gal;20.819764812",
        "VOLUME;16 fl.oz;0.473176473",
        "VOLUME;2 tbs;0.029573529563",
        "VOLUME;23 ltrs;23",
        "VOLUME;23ℓ;23",
        "VOLUME;500 cm³;0.5",
        "TEMPERATURE;68 ℃;68",
        "TEMPERATURE;68 ℉;20",
        "TEMPERATURE;68oC;68",
        "TEMPERATURE;68 o C;68",
        "TEMPERATURE;68oF;20",
        "TEMPERATURE;68⁰C;68",
        "TEMPERATURE;68∘C;68",
        "TEMPERATURE;68 degC;68",
        "TEMPERATURE;68 deg. F;20",
        "TEMPERATURE;68 degrees;68",
        "TEMPERATURE;68 degrees C;68",
        "TEMPERATURE;68 degrees Fahrenheit;20",
        "TEMPERATURE;‑2 °C;-2",
        "GRAVITY;12.5 degrees Plato;12.5",
        "GRAVITY;1.052 specific gravity;12.8616",
        "TIME;1 h and 10 min;4200",
        "TIME;1 hour, 10 minutes;4200",
        "TIME;70min;4200",
        "PRESSURE;12 p.s.i.;82.737",
        "PRESSURE;12 lb/in²;82.737",
        "PRESSURE;0.8 bars;80",
        "PRESSURE;1013 mb;101.3",
        "FLOW;2impgal/min;0.1515363333",
        "FLOW;6 liters per minute;0.1",
        "FLOW;6 l/minute;0.1",
        "CARBONATION;2.4 vols CO2;2.4"
      })
  void readsHowBrewersSpell(Quantity quantity, String text, double inside) {
    double leeway = Math.max(2e-5 * Math.abs(inside), quantity == Quantity.GRAVITY ? 0.002 : 0);
    assertThat(read(text, ReadingUnits.METRIC.unit(quantity)).inside())
        .as(text)
        .isCloseTo(inside, within(leeway));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "MASS;4-5 kg;two amounts",
        "MASS;4 to 5 kg;two amounts",
        "MASS;4 kg - 5 kg;two amounts",
        "MASS;4-6/2 kg;two amounts",
        "MASS;1 lb ,4 oz;Write one number with one unit.",
        "TEMPERATURE;65–67 °C;two amounts",
        "TIME;60-70 min;two amounts",
        "TIME;60 up to 70 min;two amounts",
        "TIME;1:10;'1 h 10 min' or '1 min 10 s'",
        "TIME;1:10 h;'1 h 10 min'",
        "MASS;1:10;no unit of mass",
        "MASS;68 degrees;no unit of mass",
        "SHARE;3/4;75.0 % or '3/4 %'",
        "SHARE;½;50.0 % or '½ %'",
        "VOLUME;5 oz;a unit of mass"
      })
  void whatIsAskedBackIsSaidWithWhatToTry(Quantity quantity, String text, String said) {
    assertThat(unclear(text, ReadingUnits.METRIC.unit(quantity)).sentence()).contains(said);
  }

  /// A share by a fraction is a share where shares are not read in per cent, or where it says more.
  @Test
  void aFractionIsAShareWhereItCanBeNothingElse() {
    assertThat(read("3/4", Quantity.SHARE.inside()).inside()).isEqualTo(0.75);
    assertThat(read("1 1/2", Unit.known(Quantity.SHARE, "%")).inside()).isEqualTo(0.015);
    assertThat(read("3/4 %", Unit.known(Quantity.SHARE, "%")).inside()).isEqualTo(0.0075);
  }

  /// What was advised was refused: 'imp pints', 'imp fl oz' in the plural, gallons of a flow.
  @Test
  void whatAnImperialHouseholdIsAdvisedToWriteCanBeWritten() {
    Pattern quoted = Pattern.compile("'((?:US|imp) [^']+)'");
    for (Quantity quantity : List.of(Quantity.VOLUME, Quantity.FLOW)) {
      Unit usual = ReadingUnits.IMPERIAL.unit(quantity);
      List<String> words =
          quantity == Quantity.FLOW
              ? List.of("gal/min", "gpm", "gallons per hour", "gph")
              : List.of(
                  "gal", "gallons", "pt", "pints", "qts", "fl. oz.", "fluid ounces", "barrel");
      for (String word : words) {
        List<String> advised =
            quoted
                .matcher(unclear("2 " + word, usual).maybe())
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(advised).hasSize(2);
        for (String advice : advised) {
          Unit unit = read("2 " + advice, usual).unit();
          assertThat(unit.symbol()).startsWith(advice.substring(0, advice.indexOf(' ')));
        }
      }
    }
  }

  @Test
  void twoGallonsAndAPintAreAskedBackInAnImperialHousehold() {
    Unit gallon = ReadingUnits.IMPERIAL.unit(Quantity.VOLUME);
    assertThat(unclear("2 gal 3 pt", gallon).maybe()).contains("'imp gal'");
    // (2 + 3/8) * 4.54609 and (2 + 3/8) * 3.785411784
    assertThat(read("2 imp gal 3 pt", gallon).inside()).isCloseTo(10.79696375, within(1e-9));
    assertThat(read("2 US gal 3 pt", gallon).inside()).isCloseTo(8.990352987, within(1e-9));
  }

  @Test
  void aBareNumberTakesTheReadersUnit() {
    assertThat(read("12.9", Unit.known(Quantity.GRAVITY, "°P")).inside()).isEqualTo(12.9);
    assertThat(read("1.052", Unit.known(Quantity.GRAVITY, "°P")).unit().symbol()).isEqualTo("SG");
    assertThat(read("151", ReadingUnits.US.unit(Quantity.TEMPERATURE)).inside())
        .isCloseTo(66.111, within(0.001));
    assertThat(read("5", ReadingUnits.IMPERIAL.unit(Quantity.VOLUME)).inside())
        .isCloseTo(22.73045, within(1e-9));
  }

  @Test
  void aGravityThatMayBeEitherIsAskedBack() {
    assertThat(unclear("1.05", Unit.known(Quantity.GRAVITY, "°P")).maybe()).contains("1.052");
    assertThat(unclear("12", Unit.known(Quantity.GRAVITY, "SG")).maybe()).contains("P");
  }

  @Test
  void aGallonIsAskedBackInAnImperialHousehold() {
    Unit gallon = ReadingUnits.IMPERIAL.unit(Quantity.VOLUME);
    assertThat(unclear("5 gal", gallon).maybe()).contains("imp gal").contains("US gal");
    assertThat(read("5 US gal", gallon).unit().symbol()).isEqualTo("US gal");
  }

  @Test
  void aThousandThatMayBeADecimalIsAskedBack() {
    assertThat(unclear("1,250 g", Unit.known(Quantity.SMALL_MASS, "g")).maybe())
        .contains("1.250")
        .contains("1250");
  }

  @Test
  void theRefusalOfAForeignUnitNamesItsQuantity() {
    assertThat(unclear("19 L", Unit.known(Quantity.MASS, "kg")).what())
        .contains("volume")
        .contains("mass");
  }

  @Test
  void everySymbolThatIsShownCanBeTyped() {
    for (Unit unit : Unit.all()) {
      double inside = (unit.quantity().least() + Math.min(unit.quantity().most(), 10)) / 2;
      String text = "1";
      if (!unit.symbol().isEmpty()) {
        String number =
            unit.symbol().equals("points") ? "50" : unit.symbol().equals("K") ? "300" : "1";
        text = number + " " + unit.symbol();
      }
      assertThat(read(text, unit.quantity().inside()).unit()).as(text + inside).isEqualTo(unit);
    }
  }

  @Test
  void whatIsShownIsReadBackAsTheSame() {
    for (Unit unit : Unit.all()) {
      Cases.each(
          10,
          random -> {
            double share = 0.2 + 0.6 * random.nextDouble();
            double inside =
                unit.quantity() == Quantity.GRAVITY
                    ? 12 + share
                    : share * Math.min(14, unit.quantity().most());
            String shown = unit.shown(inside);
            assertThat(unit.shown(read(shown, unit).inside())).isEqualTo(shown);
          });
    }
  }

  @Test
  void neverThrowsWhateverIsTyped() {
    List<Quantity> quantities = List.of(Quantity.values());
    String letters =
        "0123456789.,'-+−½¾/ eEkKgGlLcCfFpPhmMsS°%#\"×٣\u2009\u202f\u00a0 \t\n(),:²³µNaInfty\ud83c\udf7a\ud83c";
    Cases.each(
        20_000,
        random -> {
          StringBuilder text = new StringBuilder();
          int length = random.nextInt(14);
          for (int i = 0; i < length; i++) {
            text.append(letters.charAt(random.nextInt(letters.length())));
          }
          Quantity quantity = quantities.get(random.nextInt(quantities.size()));
          switch (Typed.parse(text.toString(), quantity)) {
            case Typed.Read read ->
                assertThat(read.entered().inside())
                    .isFinite()
                    .isBetween(quantity.least() - 1, quantity.most() * (1 + 1e-6) + 1e-6);
            case Typed.Unclear unclear -> assertThat(unclear.what()).isNotBlank();
          }
        });
  }

  @ParameterizedTest
  @ValueSource(ints = {81, 1000, 200_000})
  void aVeryLongTextIsRefusedAtOnce(int length) {
    assertThat(unclear("1".repeat(length), Unit.known(Quantity.MASS, "kg")).what())
        .contains("too long");
  }
}
