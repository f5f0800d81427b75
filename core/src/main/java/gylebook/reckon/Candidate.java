package gylebook.reckon;

import gylebook.units.AnyUnit;
import java.util.List;
import java.util.Set;

/// A calculation that a line may mean, and how well words and amounts suit it.
///
/// @param words how well the words fit
/// @param score that, less what finds no place and what is missing
/// @param deafTo words that are known and that it has nothing to do with
@AnyUnit("weighs words and amounts of every unit")
record Candidate(Calculation calculation, double words, double score, Fit fit, Set<String> deafTo) {
  /// Words that fit less than this choose nothing.
  static final double SURE = 0.28;

  private static final double NEAR = 0.5;
  private static final double FAR = 0.3;

  /// The one that is meant. First come those that take all amounts and are about as plainly meant
  /// as any; then those less plainly meant that miss nothing; then those that brewers say so.
  static Candidate meant(List<Candidate> all) {
    double most = most(all);
    return all.stream()
        .filter(each -> each.leavesNothing() && each.words() >= NEAR * most)
        .findFirst()
        .or(() -> all.stream().filter(each -> each.whole(most)).findFirst())
        .or(() -> all.stream().filter(each -> each.takesAll(most) && each.words > 1).findFirst())
        .orElse(all.getFirst());
  }

  /// The same, or one that counts all the words that it counts and more: hops are no yeast.
  Candidate orHearing(List<Candidate> all) {
    double most = most(all);
    return all.stream()
        .filter(each -> each.whole(most) && each.deafTo.size() < deafTo.size())
        .filter(each -> deafTo.containsAll(each.deafTo))
        .findFirst()
        .orElse(this);
  }

  /// Others that may have been meant as well.
  List<Calculation> others(List<Candidate> all, int most) {
    return all.stream()
        .filter(each -> !each.equals(this) && each.words >= NEAR * words)
        .limit(most)
        .map(Candidate::calculation)
        .toList();
  }

  /// Whether one that is plainly meant takes all amounts.
  static boolean anyTakesAll(List<Candidate> all) {
    double most = most(all);
    return all.stream().anyMatch(each -> each.leavesNothing() && each.words >= NEAR * most);
  }

  private static double most(List<Candidate> all) {
    return all.stream().mapToDouble(Candidate::words).max().orElse(0);
  }

  private boolean leavesNothing() {
    return fit.left().isEmpty();
  }

  private boolean takesAll(double most) {
    return leavesNothing() && words >= FAR * most && words > SURE;
  }

  private boolean whole(double most) {
    return takesAll(most) && fit.missing().isEmpty();
  }
}
