package gylebook.reckon;

/// Where an equation or its constants come from: the key in the list of sources, the place in it,
/// and how we came to know it.
public record Origin(String key, String at, String trust) {
  /// The same in one line for a reader.
  public String words() {
    return (at.isEmpty() ? key : key + ", " + at) + " (" + trust + ")";
  }
}
