package gylebook.rig;

/// What cools the wort. Its conductance follows both flows: `1/UA = a/hot^0.8 + b/cold^0.8`.
///
/// @param kind how it works
/// @param hotKPerW `a`, in K/W (kg/s)^0.8
/// @param coldKPerW `b`, in the same
/// @param wortLPerSec flow of wort through it (or past it)
/// @param waterLPerSec flow of cold water
/// @param heldL wort that stays in it
public record Chiller(
    Kind kind,
    Parameter hotKPerW,
    Parameter coldKPerW,
    Parameter wortLPerSec,
    Parameter waterLPerSec,
    Parameter heldL) {

  /// How a chiller works.
  public enum Kind {
    COUNTERFLOW("counterflow, one pass"),
    PLATE("plates, one pass"),
    IMMERSION("coil in the kettle"),
    NONE("none: it cools by itself");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /// The same in words for the page.
    public String words() {
      return words;
    }
  }
}
