package gylebook.reckon;

import static gylebook.reckon.Lines.answer;
import static gylebook.reckon.Lines.asked;
import static gylebook.reckon.Lines.meant;
import static org.assertj.core.api.Assertions.assertThat;

import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Lines with wet hands: what once was taken for something that nobody means by it.
class HabitTest {
  private static final Set<String> STRENGTHS = Set.of("SG", "°P", "kg/L");

  private static String understood(Asked.Meant meant) {
    return meant.calculation().name()
        + " "
        + meant.taken().stream()
            .map(t -> t.input().key() + "=" + t.value())
            .collect(Collectors.joining("; "));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "chill 25 L to 20 C ground water 12 C 8 L/min | immersion-chilling-time"
            + " wort-kg=25.75 kg; target=20 C; water-kg-per-sec=0.133094 kg/s; water-c=12 C",
        "chilling water 100 to 20 with 10 C | "
            + "least-chilling-water start=100; target=20; water=10 C",
        "cooling water for drain 90 C to 60 C with 15 C | "
            + "drain-tempering hot=90 C; limit=60 C; cold=15 C",
        "heat kill 5 log 65 C | heat-kill-time dose=65 C; powers=5",
        "acid for mash 5,4 4,4 kg 15 L | mash-acid malt-kg=4,4 kg; liquor=15 L; target=5,4",
        "lactic acid to mash ph 5.4 with 5 kg malt and 15 L water | "
            + "mash-acid malt-kg=5 kg; liquor=15 L; target=5.4",
        "alc by weight from 5 % abv | alcohol-by-mass by-volume=5 %",
        "co2 in beer 4 C 12 psi | carbonation beer=4 C; gauge=12 psi",
        "co2 solubility 10 C 1 bar absolute | carbon-dioxide-in-beer beer=10 C; absolute=1 bar",
        "ice check 0.4 C reads 66 | ice-point-calibration reading=66; ice-reading=0.4 C",
        "ice 0.3 C boil 99.2 C reads 66.0 at 1000 m | two-point-calibration"
            + " reading=66.0; ice-reading=0.3 C; boil-reading=99.2 C; boil=96.6493 °C",
        "three thermometers 66 66.3 67.5 0.3 0.3 0.3 | three-thermometers first=66;"
            + " first-doubt=0.3; second=66.3; second-doubt=0.3; third=67.5; third-doubt=0.3",
        "thermocouple T 66 C | thermocouple-t-voltage junction=66 C",
        "lift a 40 lb bag 18 in away | lift-load load=40 lb; reach=18 in",
        "starter from 80 billion in 1.5 L 10 P | starter-cells start=80e9; starter=1.5 L; drop=10 P",
        "dms pils 60 minutes boil at 1500 m | "
            + "dimethyl-sulfide-after-stand boiled=60 minutes; boil=94.9842 °C",
        "strike water for 4,5 kg at 66,5 | strike malt-kg=4,5 kg; mash=66,5",
        "IBU 1oz 12%aa 60min 5gal 1.050 | bitterness-of-addition"
            + " hop=1oz; alpha=12 %; wort-l=5gal; boiled=60min; wort-sg=1.050",
        "fermentable wort mashed at 152F for half an hour | "
            + "attenuation-after-rest mash=152F; held=30 min",
        "co2 in a room of 3 x 4 x 2.5 m from 2 kg | room-gas-from-cylinder gas=2 kg; room-m3=30 m³",
        "sanitise plate chiller 85C 30min | hot-circuit coldest=85C; held=30min",
        "og 1.048 fg 1.010 | alcohol original=1.048; apparent=1.010",
        "how many cells to pitch 20 L 1.060 lager | "
            + "cells-to-pitch-by-habit wort=20 L; original=1.060",
        "hops stored 40 F for half a year | hop-alpha-left store=40 F; stored=6 months",
        "ibu 1 oz 6.5 aa 60 min 5 gal | "
            + "bitterness-of-addition hop=1 oz; alpha=6.5 %; wort-l=5 gal; boiled=60 min",
        "coil 50 ft 3/8 in | coil-ua length=50 ft; outer=3/8 in",
        "calcium cloride 3 g 20 L | salt-ions dose=0.15 g/L; salt-formula=CaCl2.2H2O",
        "CaCl2 4 g 20 L | salt-ions dose=0.2 g/L; salt-formula=CaCl2",
        "dry hops 5 g/L bitterness 30 ibu | bitterness-after-dry-hops iso=30; dry-hop=5 g/L",
        "alkalinity of 250 ppm bicarbonate | alkalinity carbonate=205 mg/L",
        "bitternes 20 g 8 % 20 L 30 min | "
            + "bitterness-of-addition hop=20 g; alpha=8 %; wort-l=20 L; boiled=30 min",
        "two probes 66.2 0.2 66.8 0.3 | "
            + "two-thermometers first=66.2; first-doubt=0.2; second=66.8; second-doubt=0.3",
        "pt 100 112 ohm | pt100-temperature probe=112 ohm",
        "probe lag 0:20 10:49.1 20:59.8 40:65.2 | "
            + "probe-lag-from-readings course=0:20 10:49.1 20:59.8 40:65.2",
        "force carb 2,6 vol 3 °C | carbonation-pressure beer=3 °C; wanted=2,6 vol",
        "pitching rate lager 23 L 1,048 | cells-to-pitch-by-habit wort=23 L; original=1,048",
        "whirlpool 30 min 80 C 50 g 10 % 20 L | "
            + "iso-alpha-of-addition hop=50 g; alpha=10 %; wort-l=20 L; held=30 min; wort-c=80 C",
        "hose loss 2 m 66 C 5 L/min | hose-loss length=2 m; flow=5 L/min; wort=66 C"
      })
  void aLineIsUnderstood(String line, String understood) {
    assertThat(understood(meant(line))).isEqualTo(understood);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "residual alkalinity alkalinity 180 ppm as CaCO3 calcium 60 magnesium 8 | "
            + "residual-alkalinity calcium=60; magnesium=8; bicarbonate=219.5 mg/L",
        "residual alkalinity alk 100 ppm ca 50 ppm mg 10 ppm | "
            + "residual-alkalinity calcium=50 ppm; magnesium=10 ppm; bicarbonate=121.9 mg/L",
        "residual alkalinity alkalinity 100 calcium 50 magnesium 10 | "
            + "residual-alkalinity calcium=50; magnesium=10; bicarbonate=121.9 mg/L",
        "alkalinity 8 dH | alkalinity carbonate=142.8 mg/L",
        "hardness 12 dH | alkalinity-from-degrees german-degree=12",
        "mash ph 5 kg 15 l alkalinity 100 ppm Ca 60 ppm Mg 8 ppm | mash-ph malt-kg=5 kg;"
            + " liquor=15 l; alkalinity=1.998 meq/L; calcium=2.994 meq/L; magnesium=0.6584 meq/L",
        "mash acid 5 kg 15 L residual 100 ppm target 5.4 | "
            + "mash-acid malt-kg=5 kg; liquor=15 L; residual=1.998 meq/L; target=5.4"
      })
  void aWaterReportIsTakenAsItIsPrinted(String line, String understood) {
    // 1 meq is 50.04 mg CaCO3, 61.02 mg HCO3, 20.04 mg Ca, 12.15 mg Mg (standard atomic weights);
    // a German degree is 17.848 mg/L CaCO3.
    assertThat(understood(meant(line))).isEqualTo(understood);
    assertThat(meant(line).taken()).anyMatch(taken -> !taken.how().isEmpty());
  }

  @Test
  void twoAmountsMayMakeOne() {
    assertThat(understood(meant("strike 11 lb 1.25 qt/lb 152 F")))
        .isEqualTo("strike liquor=12.989 kg; malt-kg=11 lb; mash=152 F");
    assertThat(meant("strike 11 lb 1.25 qt/lb 152 F").remarks())
        .containsExactly("'1.25 qt/lb' for '11 lb' was taken for 13.0124 L.");
    assertThat(meant("thin mash 15 L 3 kg at 66 C").remarks())
        .containsExactly("'15 L' and '3 kg' were taken for 5 L/kg.");
    assertThat(meant("over carbonation 1.014 to 1.010").remarks())
        .containsExactly("'1.014' down to '1.010' was taken for a drop of 1.01 °P.");
    // What falls in the hydrometer is no real drop, and malt in its liquor no dose.
    assertThat(asked("hop creep 1.012 to 1.009")).isInstanceOf(Asked.Unclear.class);
    assertThat(asked("mash ph 5 kg malt 15 L water alkalinity 100 calcium 60 magnesium 8"))
        .isInstanceOf(Asked.Unclear.class);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "lauter 5 kg 20 L 1.050 | lauter has no place for '1.050'",
        "fermentation heat 20 L 1.050 | fermentation-heat has no place for '1.050'",
        "starter 100e9 cells 2 L 1.040 | starter-cells has no place for '1.040'",
        "line length 12 psi 3/16 in | draught-line-length has no place for '3/16 in'",
        "line length for 15 psi 3/16 line 2 ft rise | draught-line-length has no place for '3/16'",
        "how much evaporates from 40 cm kettle at 80 C | evaporation-open has no place for '40 cm'",
        "ntc 2500 ohm beta 3950 | thermistor-temperature has no place for '3950'",
        "controller trial 66 C gain 5 integral 300 s | controller-trial has no place for '66 C'",
        "lift 20 kg 2 times per minute | lift-load has no place for '2'",
        "residual alkalinity foo 100 ppm ca 50 ppm mg 10 ppm | 'foo' in front of an amount is",
        "co2 solubility 10 C 1 bar 2 bar | has no place for",
        "efficiency 25 L 1.048 5 kg | measured-yield has no place for '5 kg'",
        "food energy alcohol 5 % 3 P 1.010 | food-energy has no place for '5 %'",
        "pump head 1 m 10 L/min | suction-head has no place for '10 L/min'",
        "co2 solubility 10 C 1 bar | write absolute 1 bar, or ask carbonation if a gauge shows it.",
        "4,5 g gips in 20 L | 'gips' is nothing that can be reckoned here"
      })
  void whatNobodyMeansIsAskedBack(String line, String said) {
    assertThat(asked(line))
        .isInstanceOfSatisfying(
            Asked.Unclear.class, unclear -> assertThat(unclear.sentence()).contains(said));
  }

  @Test
  void whatIsReadOtherwiseOrPassedOverIsSaid() {
    assertThat(meant("dryhop 4 oz 5 gal").remarks()).contains("'dryhop' was read as 'dry hop'.");
    assertThat(meant("dial thermometer range 0 to 120 C grade B").remarks())
        .containsExactly("'B' was not used.");
    assertThat(meant("how much calcium does 5 g gypsum in 25 litres give").remarks()).hasSize(1);
  }

  /// A gravity that finds no strength is never taken for something else, whatever is asked.
  @Test
  void aGravityIsNeverTakenForAnythingElse() {
    List<String> faults = new ArrayList<>();
    for (Calculation calculation : Reckoner.all()) {
      if (asked(calculation.name() + " 1.046") instanceof Asked.Meant found) {
        found.taken().stream()
            .filter(taken -> !STRENGTHS.contains(taken.input().unit()))
            .filter(taken -> !taken.input().words().endsWith("extract"))
            .forEach(taken -> faults.add(calculation.name() + ": " + taken));
      }
    }
    assertThat(faults).isEmpty();
  }

  /// `pH 5.4` goes where a pH is asked for or nowhere.
  @Test
  void anAcidityIsNeverTakenForAnythingElse() {
    List<String> faults = new ArrayList<>();
    for (Calculation calculation : Reckoner.all()) {
      if (asked(calculation.name() + " pH 5.4") instanceof Asked.Meant found) {
        found.taken().stream()
            .filter(taken -> !taken.input().unit().equals("pH"))
            .forEach(taken -> faults.add(calculation.name() + ": " + taken));
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void resultsOfOneNameAreToldApart() {
    int several = 0;
    for (Samples.Sample sample : Samples.all()) {
      Calculation calculation =
          Reckoner.named(sample.name()).orElseThrow(() -> new AssertionError(sample.name()));
      Map<String, String> typed = new HashMap<>();
      for (int i = 0; i < calculation.inputs().size(); i++) {
        typed.put(calculation.inputs().get(i).key(), sample.arguments().get(i).toString());
      }
      Reckoning came = calculation.reckon(typed, ReadingUnits.METRIC);
      assertThat(came).as(sample.name()).isInstanceOf(Reckoning.Answer.class);
      List<String> names =
          ((Reckoning.Answer) came).lines(calculation).stream().map(Reckoning.Line::name).toList();
      assertThat(names).as(sample.name()).doesNotHaveDuplicates();
      several += names.size() > 1 ? 1 : 0;
    }
    assertThat(several).isGreaterThan(50);
  }

  @Test
  void answersReadAsABrewerReads() {
    assertThat(words("boil off 27 L 12 P 4 L"))
        .isEqualTo("boiled strength: 14.0 °P (1.057), boiled volume: 23.0 L");
    assertThat(words("calories 1.050 1.010 330 ml")).contains("glass in kJ: 637.7 kJ");
    assertThat(words("boiling point at 1200 m")).isEqualTo("boiling point: 96.0 °C");
    assertThat(words("room for gas 1 kg")).endsWith(" m³");
    assertThat(words("hold at 66 C")).contains("evaporation power: ", "evaporation flow: ");
    assertThat(words("co2 room 20 lb cylinder 1000 ft3")).endsWith("175000 ppm");
    assertThat(words("gelatinisation 62 C")).endsWith(" per second");
    assertThat(words("is it done 1.050 20 C 120:1.011 168:1.011 clean"))
        .startsWith("left: less than 0.001 %");
    assertThat(answer("hop stand 20 min at 175 F").cautions().getFirst())
        .startsWith("wort temperature is 79.44 °C, outside 90 °C to 130 °C: ");
  }

  private static String words(String line) {
    return answer(line).lines(meant(line).calculation()).stream()
        .map(Reckoning.Line::words)
        .collect(Collectors.joining(", "));
  }

  @Test
  void whatIsMissingIsToldByACalculationThatExists() {
    assertThat(meant("counterflow wort 3 L/min 95 C water 6 L/min 12 C").missing())
        .isEqualTo("counterflow-chiller still needs ua (W/K). chiller-ua-measured tells ua.");
    Wants.TOLD_BY.forEach(
        (what, name) -> {
          Calculation telling = Reckoner.named(name).orElseThrow(() -> new AssertionError(name));
          String unit = what.substring(what.indexOf(' ') + 1);
          assertThat(telling.outputs()).extracting(Output::unit).contains(unit);
        });
  }
}
