package gylebook.brewday;

import gylebook.estimate.Finding;
import gylebook.estimate.Held;
import gylebook.estimate.Supposition;
import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Optional;

/// A finished day, seen from its end.
///
/// @param readings how many readings counted; of one instrument at most one a minute
/// @param otherwise where something was probably not as it was told
/// @param findings what the day says of each number of the rig
/// @param told what it was, beside what was planned and what was held on the day
@AnyUnit("holds several quantities; each key names its unit")
public record LookedBack(
    int readings, List<Otherwise> otherwise, List<Finding> findings, List<Told> told) {

  /// Copies the lists.
  public LookedBack {
    otherwise = List.copyOf(otherwise);
    findings = List.copyOf(findings);
    told = List.copyOf(told);
  }

  /// Whether the rig may learn from this day: it went as it was told, and something was read.
  public boolean teaches() {
    return otherwise.isEmpty() && findings.stream().anyMatch(Finding::seen);
  }

  /// Something that was probably not as it was told.
  ///
  /// @param key the point that was worked towards
  /// @param says that point in words
  /// @param what it probably was
  public record Otherwise(String key, String says, Supposition what) {}

  /// One thing that came out.
  ///
  /// @param key of the outcome; its unit stands at its end
  /// @param planned what the plan said; absent where it said nothing
  /// @param onDay as it was held when the day ended
  /// @param again as it is held now
  public record Told(String key, Optional<Double> planned, Held onDay, Held again) {}
}
