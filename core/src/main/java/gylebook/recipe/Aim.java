package gylebook.recipe;

import gylebook.units.Entered;
import java.util.Optional;

/// What has to come out. A figure that is absent is not aimed at: the lots stand as they are.
///
/// @param lengthL beer (or wort) wanted, at 20 C
/// @param into where that length is measured
/// @param strengthPlato strength of the wort in the fermenter
/// @param bitternessMgPerL iso-alpha in the finished beer
/// @param readyBy the day on which the beer is wanted, as typed; empty when it does not matter
/// @param doneBy when the brew day is to be done, as typed; empty when it does not matter
/// @param colourEbc colour of the beer; the grist stands, but it is said what would bring it there
public record Aim(
    Entered lengthL,
    Into into,
    Optional<Entered> strengthPlato,
    Optional<Entered> bitternessMgPerL,
    String readyBy,
    String doneBy,
    Optional<Entered> colourEbc) {

  /// A beer for which no end of the brew day is wanted.
  public Aim(
      Entered lengthL,
      Into into,
      Optional<Entered> strengthPlato,
      Optional<Entered> bitternessMgPerL,
      String readyBy) {
    this(lengthL, into, strengthPlato, bitternessMgPerL, readyBy, "", Optional.empty());
  }

  /// The same with another end of the brew day.
  public Aim withDoneBy(String newDoneBy) {
    return new Aim(lengthL, into, strengthPlato, bitternessMgPerL, readyBy, newDoneBy, colourEbc);
  }

  /// Where a length is measured.
  public enum Into {
    FERMENTER("in the fermenter"),
    KEG("in the keg");

    private final String words;

    Into(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }
}
