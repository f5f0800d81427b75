package gylebook.plan;

import gylebook.units.AnyUnit;
import java.util.List;

/// One number of the forecast, with its band and its reasons.
///
/// @param key its name in code and files, ending in its unit: `strikeC`
/// @param says what it is, in a brewer's words
/// @param band what it may come to, in the unit of the key
/// @param why how it is reckoned and what moves it
@AnyUnit("the key names the unit of the band")
public record Figure(String key, String says, Band band, Why why) {

  /// Why a number is what it is.
  ///
  /// @param equation in plain characters
  /// @param inputs what went in, in words
  /// @param sources keys of docs/sources.bib
  /// @param movers what moves it most, strongest first
  public record Why(
      String equation, List<String> inputs, List<String> sources, List<Mover> movers) {

    /// Copies the lists.
    public Why {
      inputs = List.copyOf(inputs);
      sources = List.copyOf(sources);
      movers = List.copyOf(movers);
    }
  }

  /// One uncertain number and its part in the spread of a figure.
  ///
  /// @param path the number: `kettle.evaporationFactor`, `grist.0.extractFrac`
  /// @param says the same in words
  /// @param shareFrac its part of the variance
  /// @param slope change of the figure for one standard deviation of the number
  public record Mover(String path, String says, double shareFrac, double slope) {}
}
