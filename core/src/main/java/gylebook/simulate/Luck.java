package gylebook.simulate;

import gylebook.units.AnyUnit;
import org.hipparchus.special.Erf;

/// The random draws: one standard normal number for each uncertain number of each member.
///
/// A draw depends on the seed, the member and the name of the number, and on nothing else. So
/// member 7 has the same luck in every what-if, at every ensemble size and thread count, and a new
/// uncertain number leaves the luck of the others alone.
@AnyUnit("draws are numbers of standard deviations")
public final class Luck {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final double SQRT2 = Math.sqrt(2);

  private Luck() {}

  /// Standard deviations from the middle, for one number of one member.
  ///
  /// Member -1 is the day without luck, good or bad: every number at its middle.
  public static double z(long seed, String name, int member) {
    return member < 0 ? 0 : z(stream(seed, name), member);
  }

  /// The stream of one name, so that a loop over members hashes the name once.
  static long stream(long seed, String name) {
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < name.length(); i++) {
      hash = (hash ^ name.charAt(i)) * 0x100000001b3L;
    }
    return mixed(hash ^ mixed(seed + GOLDEN));
  }

  static double z(long stream, int member) {
    long bits = mixed(stream + GOLDEN * (member + 1L));
    double uniform = ((bits >>> 11) + 0.5) * 0x1.0p-53;
    return SQRT2 * Erf.erfInv(2 * uniform - 1);
  }

  /// The finaliser of MurmurHash3 with the constants of SplitMix64: spreads every bit over all.
  private static long mixed(long bits) {
    long mixed = (bits ^ (bits >>> 30)) * 0xbf58476d1ce4e5b9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
    return mixed ^ (mixed >>> 31);
  }
}
