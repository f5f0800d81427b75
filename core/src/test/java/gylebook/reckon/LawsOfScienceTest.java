package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/// What physics says of a function without naming a number: which way it goes, and that its inverse
/// leads back. The directions are school physics and the trade's own experience.
class LawsOfScienceTest {
  private static final int STEPS = 24;

  /// Calculation, direction and range of an input, what stays fixed, the result looked at.
  private static final List<String> WAYS =
      List.of(
          "saturation-pressure | + water 1..200 | |",
          "boiling-point | + pressure 20..200 | |",
          "wort-boiling-point | + extract 0..0.4 | |",
          "boiling-rise | + extract 0.01..0.5 | |",
          "boiling-rise-at-depth | + depth 0.1..2 | extract=0.12 |",
          "ideal-boiling-rise | + extract 0.01..0.5 | |",
          "air-pressure | - altitude 0..5000 | |",
          "altitude | - pressure 60..105 | |",
          "air-density | - air 0..100 | |",
          "air-viscosity | + air 0..100 | |",
          "air-conductivity | + air 0..100 | |",
          "latent-heat | - water 5..150 | |",
          "latent-heat-of-the-boil | - pressure 60..150 | |",
          "water-density | - water 5..105 | |",
          "water-viscosity | - water 5..95 | |",
          "wort-density | + extract 0..0.3 | wort=20 |",
          "wort-density | - wort 10..100 | extract=0.12 |",
          "wort-heat-capacity | - extract 0..0.3 | wort=20 |",
          "wort-viscosity | + extract 0..0.3 | wort=20 |",
          "wort-viscosity | - wort 10..80 | extract=0.12 |",
          "wort-volume | + wort-c 10..95 | wort-kg=20 extract=0.12 |",
          "extract-mass | + gravity 1.010..1.100 | wort=20 |",
          "malt-heat-capacity | + moisture 0..0.15 | |",
          "malt-wetting-heat | - moisture 0..0.1 | |",
          "malt-wetting-rise | - moisture 0.01..0.08 | |",
          "evaporation-open | + water 30..95 | |",
          "evaporation-heat | - humidity 0..1 | water=60 |",
          "evaporation-pool-form | + water 30..90 | |",
          "boil-off | + duty 0.2..1 | power=3000 |",
          "boil-evaporation | + element 500..5000 | |",
          "boil-evaporation | - loss 0..500 | element=2000 |",
          "boil-concentration | + water 0..8 | wort-l=25 wort-plato=10P | boiled",
          "holding-power-open | + held 30..98 | | total",
          "holding-power-lid | + held 30..98 | | total",
          "wall-loss | + area 0.1..2 | |",
          "wall-convection | + wall 25..95 | |",
          "tube-convection | + surface 25..95 | diameter=0.02 |",
          "top-convection | + top 25..95 | |",
          "radiation-coefficient | + surface 20..100 | |",
          "hose-drop | - flow 0.02..0.2 | |",
          "hose-drop | + length 0.5..5 | flow=0.05 |",
          "hose-outlet | + inlet 20..90 | length=2 flow=0.05 |",
          "hose-delay | - flow 0.02..0.2 | |",
          "hose-wall-resistance | + outer 0.014..0.03 | bore=0.0127 |",
          "bed-head | + flow 0.01..0.2 | |",
          "bed-head | - permeability 1e-11..1e-9 | flow=0.1 |",
          "bed-permeability | + grain 0.0001..0.002 | |",
          "bed-permeability | + pores 0.3..0.6 | grain=0.0005 |",
          "bed-pressure-ergun | + speed 0.0001..0.01 | grain=0.001 |",
          "bed-pressure-carman | - pores 0.3..0.6 | grain=0.001 speed=0.001 |",
          "level-fall-outside | + head 0.01..0.2 | |",
          "level-rise-inside | + head 0.01..0.2 | |",
          "element-cover | - head 0.01..0.2 | rest=0.33 cover=0.11 |",
          "overflow-flow | + head 0.001..0.1 | |",
          "overflow-crest | + rest 0.2..0.5 | cover=0.11 |",
          "suction-head | - wort 20..98 | level=0.4 |",
          "suction-loss | + flow 0.02..0.3 | |",
          "vortex-cover | + flow 0.05..0.3 | |",
          "iso-alpha-lost-by-ph | - wort-ph 4.5..5.2 | held=90 | most",
          "iso-alpha-lost-by-ph | + held 0..120 | wort-ph=4.8 | least",
          "bitterness-after-dry-hops | + iso 0..60 | dry-hop=5 | most",
          "bitterness-after-dry-hops | + humulinone 0.002..0.005 | iso=40 dry-hop=5 | least",
          "apatite-index | + calcium 5..300 | phosphate=5 | index",
          "apatite-index | + liquor 4.2..8 | calcium=60 phosphate=5 | index",
          "apatite-index | + water 5..95 | calcium=60 phosphate=5 | index",
          "strike | - liquor 8..40 | malt-kg=5 mash=66 |",
          "strike | + mash 50..78 | malt-kg=5 liquor=15 |",
          "strike | - malt-c 0..40 | malt-kg=5 liquor=15 mash=66 |",
          "mash-temperature | + liquor-c 50..90 | malt-kg=5 liquor-kg=15 |",
          "mash-volume | + malt 1..10 | liquor=15 |",
          "first-wort | - thickness 1..8 | |",
          "conversion | + first-wort 5..20 | thickness=3 |",
          "lauter | + rinse 0..20 | malt=5 liquor=15 held=0.8 | lauter",
          "rinse | + batch-count 1..10 | wort=15 held=5 batch-kg=10 |",
          "gelatinisation-rate | + mash 52..70 | |",
          "starch-converted | + held 1..60 | mash=66 |",
          "beta-amylase-decay | + mash 50..75 | |",
          "beta-amylase-left | - held 1..90 | mash=65 |",
          "attenuation-limit | - mash 68..78 | |",
          "attenuation-after-rest | + held 5..120 | mash=65 |",
          "hop-isomerisation-rate | + wort 70..130 | |",
          "iso-alpha-loss-rate | + wort 70..130 | |",
          "iso-alpha-formed | + held 1..90 | wort=100 |",
          "iso-alpha-of-addition | + held 1..90 | hop=30 alpha=0.05 wort-l=20 |",
          "iso-alpha-of-addition | - kettle-loss 0..0.5 | hop=30 alpha=0.05 wort-l=20 |",
          "iso-alpha-in-even-cooling | + cooling 5..60 | start=98 end=70 |",
          "iso-alpha-in-free-cooling | + start 70..98 | time-constant=60 cooling=30 |",
          "hop-utilisation | - wort 1.030..1.110 | |",
          "bitterness-of-addition | - wort-l 10..40 | hop=30 alpha=0.05 |",
          "hop-alpha-left | - stored 1..700 | store=4 |",
          "hop-alpha-left | - store -18..30 | stored=300 |",
          "dimethyl-sulfide-after-boil | - boiled 40..120 | precursor=0.3 | free",
          "dimethyl-sulfide-after-stand | - evaporation 0.02..0.2 | precursor=0.3 | stood-free",
          "dimethyl-sulfide-after-stand | - lid-leak 0..1 | precursor=0.3 | stood-free",
          "dimethyl-sulfide-after-stand | + stand-min 0..90 | precursor=0.3 | stood-free",
          "dimethyl-sulfide-after-stand | + stand-c 60..98 | precursor=0.3 | stood-free",
          "mash-thickness | - liquor 2..8 | mash=66 | least-limit",
          "mash-thickness | - liquor 2..8 | mash=66 | middle-limit",
          "mash-thickness | - mash 62..80 | liquor=5 | middle-limit",
          "malt-offset | + measured 0.6..0.9 | mash=66 | next",
          "malt-offset | - measured-doubt 0.002..0.1 | mash=66 measured=0.85 | next",
          "refractometer-warmth | + prism 7..30 | shown=12 | true",
          "starter-in-steps | + first 0.3..2 | start=5e10 second=3 | second",
          "controller-margins | - gain 0.01..2 | integral=320 rate=0.027 | gain",
          "controller-margins | + integral 40..2000 | gain=0.3 rate=0.027 | delay",
          "controller-pump-off | + off 0..8 | gain=0.3 integral=320 power=5500 heat=118000 | hottest",
          "precursor-half-life | - wort-c 80..105 | |",
          "residual-alkalinity | - calcium 0..200 | magnesium=10 bicarbonate=100 | residual",
          "mash-ph | - calcium 0..5 | malt-kg=5 liquor=20 alkalinity=2 magnesium=0.5 |",
          "mash-acid | - target 5..5.8 | malt-kg=5 liquor=20 residual=1 |",
          "lactic-acid-strength | + target 3..7 | |",
          "phosphoric-acid-strength | + target 3..9 | |",
          "liquor-ph-with-lactic-acid | - lactic 0..3 | calcium=50 magnesium=10 "
              + "sodium=20 sulfate=80"
              + " alkalinity=100 sample=7.8 |",
          "counterflow-chiller | - ua 50..2000 | wort-kg-per-sec=0.05 wort-c=95 "
              + "water-kg-per-sec=0.1"
              + " water-c=15 | wort",
          "chiller-ua | + hot-kg-per-sec 0.02..0.5 | cold-kg-per-sec=0.1 hot-k-per-w=3e-4"
              + " cold-k-per-w=3e-4 |",
          "immersion-chilling-time | + wort-kg 5..40 | water-kg-per-sec=0.1 water-c=12 |",
          "alcohol | + original 8..20 | apparent=3P | by-volume",
          "alcohol | - apparent 0..6 | original=12P | by-volume",
          "attenuation-apparent | - apparent 0..6 | original=12P |",
          "food-energy | + alcohol-by-mass 0.02..0.08 | real-extract=4P beer=1.010 | glass",
          "alcohol-water-density | - ethanol 0..1 | |",
          "carbonation | - beer 0..25 | gauge=80 |",
          "carbonation | + gauge 20..250 | beer=4 |",
          "carbonation-pressure | + beer 0..25 | |",
          "carbonation-pressure-german | + wanted 1.5..4 | beer=4 |",
          "priming-sugar | + wanted 1.5..4 | beer=20 | sucrose",
          "residual-carbonation | - warmest 0..30 | |",
          "bottle-pressure | + beer 0..40 | held=2.5 |",
          "keg-pressure-warmed | + later 5..40 | beer=18 gas=0.9 fill-c=4 fill-kpa=80 |",
          "over-carbonation | + apparent-drop 0.1..2 | |",
          "carbonation-time | - transfer 1e-6..1e-5 | | reached",
          "draught-line-gradient | - bore 3..10 | |",
          "draught-line-length | + keg 40..150 | gradient=40 |",
          "oxygen-in-water | - liquid 1..35 | |",
          "oxygen-in-wort | - original 0..20 | liquid=18 |",
          "purge-oxygen | - purge 1..15 | gauge=100 |",
          "cells-to-pitch | + original 5..25 | wort=20 |",
          "yeast-viability-stored | - held 1..200 | |",
          "yeast-death-rate | + storage 0..30 | |",
          "yeast-viability-packaged | - held 1..200 | |",
          "yeast-viability-packaged | - storage 0..30 | held=20 |",
          "yeast-viability-dried | - held 1..1000 | |",
          "starter-cells-by-mass | + drop 1..10 | start=1e10 starter=2 |",
          "oxygen-in-wort-disputed | - original 0..20 | liquid=18 | least",
          "ferment-midpoint | - rate 0.5e6..2e6 | |",
          "diacetyl-in-ferment | - held 60..400 | original=12P final=2.5P | forced",
          "diacetyl-in-ferment | + leak 0.2..5 | original=12P final=2.5P held=96 | forced",
          "fermentation-above-room | - loss 0.5..10 | power=7 |",
          "coil-ua | + length 3..20 | | stirred-most",
          "skill-of-forecast | - score 0..5 | plain=2.5 |",
          "ferment-extract | - held 1..300 | original=12P final=2.5P |",
          "ferment-ahead | - held 20..200 | original=12P readings=24:9.1;48:4.7 | extract",
          "ferment-ahead | + held 20..200 | original=12P readings=24:9.1;48:4.7 |"
              + " little-left-chance",
          "ferment-fit-bare | + doubt 0.05..2 | original=12P readings=24:9.1;48:4.7 | final-doubt",
          "ferment-fit | + doubt 0.05..2 | original=12P readings=24:9.1;48:4.7 | final-doubt",
          "ferment-rate | + ferment 5..30 | |",
          "ferment-time | - ferment 8..28 | |",
          "fermentation-heat | + wort 5..50 | real-drop=7 |",
          "fermentation-peak-power | + rate 0.02..0.3 | wort=20 apparent-drop=9 |",
          "diacetyl-rest | - beer 5..25 | |",
          "diacetyl-after-rest | - rest 20..200 | |",
          "diacetyl-precursor-rate | + beer 1..30 | |",
          "pasteurisation-units | + dose 55..75 | held=10 |",
          "heat-kill-time | - dose 55..80 | |",
          "equivalent-age | + storage 0..40 | held=30 |",
          "seconds-to-burn | - liquid 50..75 | |",
          "seconds-to-third-degree-burn | - liquid 50..70 | |",
          "seconds-to-destroy-skin | - skin 45..70 | |",
          "lift-limit | - reach 0.26..0.62 | |",
          "lift-limit | - travel 0.3..1.7 | |",
          "lift-limit | - height 0.8..1.7 | |",
          "lift-limit | - twist-degree 0..130 | |",
          "lift-index | + load 1..40 | limit=10 |",
          "room-for-gas | - limit 500..40000 | gas=0.75 |",
          "room-gas-given-off | + rate 0.02..0.3 | wort=21 apparent-drop=9.5 | peak",
          "room-gas-from-fermentation | - room-m3 5..100 | wort=20 real-drop=8 |",
          "drain-tempering | + hot 65..100 | |",
          "element-power | + mains 100..250 | plate-w=3000 plate-v=230 |",
          "element-resistance | - plate-w 500..5500 | plate-v=230 |",
          "surface-load | - length 0.5..4 | power=3000 |",
          "stream-rise | - flow 0.02..0.5 | power=2000 |",
          "sheath-superheat | + load 1000..100000 | |",
          "sag-loss | - voltage 0.8..1 | |",
          "heater-current | - mains 100..250 | power=3000 |",
          "cable-drop | + length 1..50 | heater=13 section=2.5e-6 |",
          "relay-dissipation | + heater 1..30 | |",
          "probe-reading | + elapsed 0..100 | start=20 place=66 |",
          "probe-ramp-error | + lag 1..60 | ramp=0.02 |",
          "probe-response-time | + lag 1..60 | |",
          "stem-error-tube | - immersed 0.01..0.2 | |",
          "stem-error-solid | - immersed 0.01..0.2 | |",
          "stem-reading | - share 0..1 | fluid=66 |",
          "pt100-resistance | + probe -50..200 | |",
          "pt100-class-b | + probe 1..200 | |",
          "thermistor-resistance | - thermistor 0..110 | |",
          "thermocouple-k-voltage | + junction 0..300 | |",
          "thermocouple-t-voltage | + junction 0..300 | |",
          "two-point-calibration | + reading 0..100 | ice-reading=0.3 boil-reading=98.9 |",
          "ice-point-calibration | - ice-reading -2..2 | reading=66 |",
          "doubt-combined | + first 0.1..2 | second=0.3 |",
          "heating-time | - power 500..5000 | mass=20 to=66 |",
          "heating-rate | - water-kg 5..50 | power=3000 |",
          "mixing-temperature | + first-c 10..90 | first-kg=10 second-kg=5 second-c=20 |",
          "dilution | - water 0..10 | wort=20 extract=14P | extract",
          "dilution-water | - wanted 8..13 | wort=20 extract=14P |",
          "cold-volume | - hot-c 20..100 | hot-l=20 extract=0.12 |",
          "kettle-level | + volume 0..40 | diameter=0.36 |",
          "kettle-volume | + dip 0..0.4 | diameter=0.36 |",
          "kettle-growth | + wort 20..100 | read=20 |",
          "relay-period | + delay 5..60 | lag=100 |",
          "relay-amplitude | + delay 5..60 | gain=2 lag=100 |",
          "ultimate-gain | - delay 5..60 | gain=2 lag=100 |",
          "ultimate-period | + delay 5..60 | lag=100 |",
          "kettle-controller-settings | - rate 0.01..0.1 | | gain",
          "duty-ripple | + window 1..30 | power=3000 heat=100000 |");

  /// A calculation over a range of an input, its inverse and the input that takes the result.
  private static final List<String> BACK =
      List.of(
          "plato | gravity | 1.001..1.120 | | gravity | extract | |",
          "brix | gravity | 1.001..1.120 | | gravity-from-brix | extract | |",
          "air-pressure | altitude | 0..6000 | | altitude | pressure | |",
          "saturation-pressure | water | 10..180 | | boiling-point | pressure | |",
          "alcohol-by-mass | by-volume | 0.005..0.9 | | alcohol-by-volume | by-mass | |",
          "ebc-from-srm | beer | 1..60 | | srm-from-ebc | beer | |",
          "ebc-from-lovibond | malt | 3..500 | | lovibond-from-ebc | malt | |",
          "pt100-resistance | probe | -100..300 | | pt100-temperature | probe | |",
          "thermistor-resistance | thermistor | 0..110 | | thermistor-temperature | thermistor | |",
          "thermocouple-k-voltage | junction | 1..400 | | thermocouple-k-temperature | "
              + "junction | |",
          "thermocouple-t-voltage | junction | 1..300 | | thermocouple-t-temperature | "
              + "junction | |",
          "cold-volume | hot-l | 5..50 | extract=0.12 | hot-volume | cold-l | extract=0.12 |",
          "wort-density | extract | 0.01..0.3 | wort=40 | extract-from-density | wort-kg-per-l"
              + " | wort-c=40 |",
          "probe-response-time | lag | 1..90 | reached=0.8 | probe-lag | elapsed | reached=0.8 |",
          "strike | mash | 50..76 | liquor=15 malt-kg=5 | mash-temperature | liquor-c"
              + " | liquor-kg=15 malt-kg=5 |",
          "carbonation-pressure | wanted | 1.5..4 | beer=4 | carbonation | gauge | beer=4 |",
          "overflow-head | flow | 0.01..0.2 | | overflow-flow | head | |",
          "chiller-effectiveness-counterflow | transfer | 0.2..4 | capacity=0.7"
              + " | transfer-units-counterflow | effectiveness | capacity=0.7 |",
          "hydrometer-reading | extract | 0.02..0.25 | sample=40 | hydrometer | indicated"
              + " | sample=40 | share",
          "bed-head | permeability | 1e-11..1e-9 | flow=0.1 | bed-permeability-measured | head"
              + " | flow=0.1 |",
          "dilution-water | wanted | 8..13 | wort=20 extract=14P | dilution | water"
              + " | wort=20 extract=14P |",
          "alcohol-from-real-extract | original | 8..20 | real-extract=4P | original-extract"
              + " | alcohol-by-mass | real-extract=4P |");

  private static Calculation known(String name) {
    return switch (Reckoner.find(name.strip())) {
      case Search.Hit hit -> hit.calculation();
      case Search.Miss miss -> throw new AssertionError(miss.sentence());
    };
  }

  private static double reckoned(
      Calculation calculation, String output, Map<String, String> typed) {
    return switch (calculation.reckon(typed, ReadingUnits.METRIC)) {
      case Reckoning.Unanswered refused -> throw new AssertionError(typed + refused.sentence());
      case Reckoning.Answer answer ->
          answer.results().stream()
              .filter(each -> output.isEmpty() || each.name().equals(output))
              .findFirst()
              .orElseThrow(() -> new AssertionError(output + " is not in " + answer.results()))
              .value();
    };
  }

  /// `a=1 b=2` as a calculation takes them.
  private static Map<String, String> fixed(String words) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String each : words.strip().split("\\s+", -1)) {
      int at = each.indexOf('=');
      if (at > 0) {
        typed.put(each.substring(0, at), each.substring(at + 1));
      }
    }
    return typed;
  }

  /// A number for an input, with its unit where a bare one may be read as another.
  private static String written(Calculation calculation, String key, double value) {
    Input input =
        calculation.inputs().stream()
            .filter(each -> each.key().equals(key))
            .findFirst()
            .orElseThrow(() -> new AssertionError(calculation.name() + " has no " + key));
    String unit = input.unit().equals("°P") || input.unit().equals("SG") ? input.unit() : "";
    return value + " " + unit;
  }

  @Test
  void eachGoesTheWayThatPhysicsSays() {
    for (String line : WAYS) {
      String[] cells = cells(line, 4);
      itGoesItsWay(cells[0], cells[1], cells[2], cells[3]);
    }
  }

  private static void itGoesItsWay(String name, String way, String given, String output) {
    Calculation calculation = known(name);
    String[] words = way.split(" ", -1);
    String key = words[1];
    String[] ends = words[2].split("\\.\\.", -1);
    double from = Double.parseDouble(ends[0]);
    double to = Double.parseDouble(ends[1]);
    int sign = way.startsWith("+") ? 1 : -1;
    List<Double> values = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double at = from + (to - from) * i / STEPS;
      boolean counted = key.endsWith("count") || key.equals("purge");
      at = counted ? Math.rint(at) : at;
      Map<String, String> typed = fixed(given);
      typed.put(key, written(calculation, key, at));
      double value = reckoned(calculation, output, typed);
      if (!values.isEmpty() && !(counted && values.getLast() == value)) {
        assertThat(sign * (value - values.getLast())).as(name + " at " + at).isPositive();
      }
      values.add(value);
    }
    assertThat(values.getLast()).isNotEqualTo(values.getFirst());
  }

  @Test
  void thereAndBackIsWhereItBegan() {
    BACK.forEach(line -> thereAndBack(cells(line, 8)));
  }

  private static String[] cells(String line, int count) {
    String[] cells = (line + " | | ").split("\\|", -1);
    String[] stripped = new String[count];
    for (int i = 0; i < count; i++) {
      stripped[i] = cells[i].strip();
    }
    return stripped;
  }

  private static void thereAndBack(String[] cells) {
    String there = cells[0];
    String key = cells[1];
    String given = cells[3];
    String itsKey = cells[5];
    String itsGiven = cells[6];
    String kind = cells[7];
    Calculation out = known(there);
    Calculation home = known(cells[4]);
    String[] ends = cells[2].split("\\.\\.", -1);
    double from = Double.parseDouble(ends[0]);
    double to = Double.parseDouble(ends[1]);
    for (int i = 0; i <= STEPS; i++) {
      double at = from + (to - from) * i / STEPS;
      Map<String, String> typed = fixed(given);
      typed.put(key, written(out, key, at));
      double middle = reckoned(out, "", typed);
      Map<String, String> returned = fixed(itsGiven);
      returned.put(itsKey, written(home, itsKey, middle));
      String result = kind.isEmpty() ? "" : "extract";
      double end = reckoned(home, result, returned) / (kind.isEmpty() ? 1 : 100);
      assertThat(end).as(there + " at " + at).isCloseTo(at, within(2e-3 * Math.max(0.05, at)));
    }
  }
}
