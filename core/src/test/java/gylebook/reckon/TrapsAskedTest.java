package gylebook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.units.ReadingUnits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Whoever walks into a trap of the sources by asking for it is told; who asks rightly is not.
class TrapsAskedTest {
  private static Reckoning.Answer answer(String line) {
    if (Question.read(line, ReadingUnits.METRIC) instanceof Asked.Meant meant
        && meant.calculation().reckon(meant.typed(), ReadingUnits.METRIC)
            instanceof Reckoning.Answer answer) {
      return answer;
    }
    throw new AssertionError(line + ": " + Question.read(line, ReadingUnits.METRIC));
  }

  /// The free energy for the heat; a lager model when it is warm; a line through beers half-way;
  /// oxygen by more salting out than anybody found; a compiled constant for cold beer; a sheath of
  /// 44 W/in2; a chart beyond its numbers; ageing by the rates of a hot test; beer that still
  /// drops.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fermentation-heat wort=21kg real-drop=7.65P heat=1.217e6 | 0.55 to 0.65 MJ",
        "lager-model-latent-yeast 20 C 100 h | break down above 16 C",
        "beer-refractometer-line wort=12P beer=9P | half-way",
        "oxygen-in-wort 20 C 15 P salting=0.03 | 0.0105 to 0.0205",
        "carbon-dioxide-in-water-compiled 4 C | falls short",
        "surface load 5500 W sheath 8 mm length 3.2 m | thick mash scorches",
        "carbonation-pressure 22 C | no numbers there",
        "equivalent-age 10 d at 50 C | another chemistry",
        "over-carbonation 0.5 P | do not package",
        "alcohol-regression 22 P 4 P | beyond the brews",
        "yeast-viability-packaged storage=20C held=10d | fridge",
        "dried-yeast 1e11 held=30e9 | 6 to 18",
        "draught-line-drop 2 m hose=2.5 | 1.0 to 1.9",
        "ferment-midpoint 3e6 | held there"
      })
  void aTrapIsCautioned(String line, String words) {
    assertThat(String.join(" ", answer(line).cautions())).as(line).contains(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fermentation-heat wort=21kg real-drop=7.65P",
        "lager-model-latent-yeast 12 C 100 h",
        "beer-refractometer-line wort=12P beer=5.5P",
        "oxygen-in-wort 20 C 15 P",
        "carbon-dioxide-in-water-compiled 20 C",
        "surface load 3000 W sheath 8 mm length 3.2 m",
        "carbonation-pressure 4 C",
        "equivalent-age 10 d at 20 C",
        "over-carbonation 0.2 P",
        "alcohol-regression 12 P 2.5 P",
        "yeast-viability-packaged storage=4C held=10d",
        "dried-yeast 1e11",
        "draught-line-drop 2 m hose=1.7",
        "ferment-midpoint 1e6"
      })
  void whoAsksRightlyIsNot(String line) {
    assertThat(answer(line).cautions()).as(line).isEmpty();
  }
}
