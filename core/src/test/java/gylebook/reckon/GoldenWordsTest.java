package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gylebook.testing.ReferenceRow;
import gylebook.testing.ReferenceRows;
import gylebook.units.ReadingUnits;
import java.util.List;
import org.junit.jupiter.api.Test;

/// Published values, asked for in words: the source of each stands in its row of the table.
///
/// The factor leads from our unit to the row's.
class GoldenWordsTest {
  private static final List<String> ROWS =
      List.of(
          "hot-side | AT-P-2000 | air pressure at 2000 m | station | 1000",
          "hot-side | AT-T-2000 | boiling point at 2000 m | boiling | 1",
          "hot-side | BPE-20 | boiling rise 20 P | rise | 1",
          "hot-side | CP-H2O-20 | water heat capacity 20 C | water | 1",
          "hot-side | CP-W-20-67 | wort heat capacity 20 P 66.6667 C | wort | 1",
          "hot-side | BX-NBS-1.080 | brix 1.080 | extract | 1",
          "hot-side | EV-1 | evaporation 2000 W, 75 %, loss 250 W | evaporation | 1",
          "hot-side | EX-FGDB | potential extract 5 kg, moisture 4 %, fine-dry 0.81 | extract | 1",
          "hot-side | FW-3.5 | first wort 3.5 kg/kg | first-wort | 1",
          "hot-side | HB-5-60 | spindle correction 5 P at 60 C | correction | 1",
          "hot-side | HI-95-10 | iso alpha 95 C 10 min | iso | 1",
          "hot-side | HS-0.31 | hop storage loss 0.31 | lost | 100",
          "hot-side | HY-1.040-60 | hydrometer 1.040 at 60 C | gravity | 1",
          "hot-side | LH-95000 | latent heat of the boil 95 kPa | boil | 0.001",
          "hot-side | MP-EX | mash ph 5 kg 20 L alkalinity 1 calcium 2.5 magnesium 0.4 | mash | 1",
          "hot-side | PL-ASBC-1.060 | 1.060 in plato | extract | 1",
          "hot-side | PL-INV-5 | gravity of 5 P | gravity | 1",
          "hot-side | PL-LIN-1.050 | plato short form 1.050 | extract | 1",
          "hot-side | RA-3 | residual alkalinity calcium 50 magnesium 10 bicarbonate "
              + "100 | german-degree | 1",
          "hot-side | SA-M-NaCl | molar mass of NaCl | molar | 1",
          "hot-side | SA-P-CaCl2.2H2O-Ca | salt ions CaCl2.2H2O 1 g/L | calcium | 1",
          "hot-side | SHR-15 | shrinkage 15 P | kept | 1",
          "hot-side | TI-1.050-10 | hop utilisation 1.050 10 min | tinseth | 1",
          "hot-side | VOL-MASH | mash volume 30 L 6 kg | mash | 1",
          "hot-side | HA-minus18 | hop age store -18 C 365 d | left | 1",
          "cold-side | AL-10 | alcohol by mass 5 % | mass | 100",
          "cold-side | CH-07 | immersion chilling time 23.9 kg 0.1 kg/s 12 C | immersion | 1",
          "cold-side | CH-10 | least chilling water 12 C | least-water | 1",
          "cold-side | CO-06 | carbonate 2.5 vol at 34 F | gauge | 0.1450377",
          "cold-side | EN-03 | food energy 5 % by mass 6 P 1.015 355 mL | glass | 1",
          "cold-side | FL-02 | ferment extract 12 P 2.5 P 48 h | extract | 1",
          "cold-side | FL-13 | ferment time left 5 % | time | 1",
          "cold-side | OX-02 | oxygen in water 10 C | water | 1",
          "cold-side | OX-06 | oxygen in wort 10 C 15 P | wort | 1",
          "cold-side | PU-05 | z value | tenfold | 1",
          "cold-side | SA-10 | breaker size 5500 W 240 V | least | 1",
          "cold-side | SA-15 | lift limit reach 40 cm height 90 cm travel 50 cm | limit | 1",
          "cold-side | SA-19 | drain 100 C | cold | 1",
          "cold-side | SA-22 | sanitiser dose 5.25 % 100 mg/L | dose | 1",
          "cold-side | SC-01a | alcohol 10 P 2.0 P | by-mass | 100",
          "cold-side | SC-02b | alcohol 12 P 2.5 P | real-extract | 1",
          "cold-side | ST-03 | equivalent age 14 d at 30 C, reference 20 C, ten-kelvin=3 | x | 1",
          "cold-side | VD-01 | diacetyl after rest 12 h | left | 1",
          "cold-side | YE-01 | cells to pitch 20 L 12 P | cells | 1e-9",
          "rig | A12 | boiling point at 5280 ft | boiling | 1",
          "rig | A09 | air pressure 5000 m | station | 1000",
          "rig | B19 | evaporation-open 200 F, room 60 F, humidity 50 % | open | 3600",
          "rig | B24 | mixing temperature 46 kg 69 C 7.5 kg 20 C | mixed | 1",
          "rig | B29 | radiation coefficient surface 64 C | coefficient | 1",
          "rig | C08 | hose delay 4 L/min | delay | 1",
          "rig | D10 | suction loss 8 L/min | loss | 1",
          "rig | E07 | pt100 class b 100 C | b-limit | 1",
          "rig | E13 | thermocouple t voltage 100 C | t-type | 1",
          "rig | E24 | probe response ratio | response | 1",
          "rig | E46 | two-point-calibration 66 C ice 0.3 C boil-reading=98.9 boil=99.6 | true | 1",
          "rig | F07 | kettle controller settings 0.02684 K/s | gain | 1",
          "rig | J05 | element power 5500 W 240 V on 230 V | power | 1",
          "rig | J08 | surface load 5500 W sheath 8 mm length 3.2 m | surface-load | 1e-4");

  private static ReferenceRow row(String file, String id) {
    return ReferenceRows.of(file + ".csv").stream()
        .filter(row -> row.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError(file + " has no row " + id));
  }

  private static double reckoned(String line, String result) {
    Asked asked = Question.read(line, ReadingUnits.METRIC);
    if (!(asked instanceof Asked.Meant meant)) {
      throw new AssertionError(line + ": " + asked);
    }
    Reckoning reckoning = meant.calculation().reckon(meant.typed(), ReadingUnits.METRIC);
    if (!(reckoning instanceof Reckoning.Answer answer)) {
      throw new AssertionError(line + ": " + meant + reckoning);
    }
    return answer.results().stream()
        .filter(amount -> answer.results().size() == 1 || amount.name().equals(result))
        .findFirst()
        .orElseThrow(() -> new AssertionError(line + " gives " + answer.results()))
        .value();
  }

  @Test
  void everyPublishedValueComesOutOfWords() {
    for (String line : ROWS) {
      String[] cells = line.split(" \\| ", -1);
      ReferenceRow row = row(cells[0], cells[1]);
      assertThat(Double.parseDouble(cells[4]) * reckoned(cells[2], cells[3]))
          .as(line + ": " + row.source())
          .isCloseTo(row.expectedNumber(), within(row.toleranceNumber()));
    }
  }
}
