package gylebook.simulate;

import gylebook.rig.Parameter;
import gylebook.units.AnyUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// Hands out the uncertain numbers of one member after another, and remembers their names.
///
/// The first member teaches the names; the others must ask for the same numbers in the same order,
/// which any straight-line reader of a rig does.
@AnyUnit("hands out parameters of every unit")
public final class Doubts {
  private final long seed;
  private final List<String> names = new ArrayList<>();
  private final List<Boolean> doubtful = new ArrayList<>();
  private long[] streams = new long[128];
  private double[] drawn = new double[128];
  private int member = -1;
  private int asked;
  private int doubtfulCount;
  private double @Nullable [][] given;
  private final List<Integer> places = new ArrayList<>();

  /// Draws from one seed.
  public Doubts(long seed) {
    this.seed = seed;
  }

  /// Turns to a member; -1 is the day at the middle of every number.
  public void turnTo(int newMember) {
    member = newMember;
    asked = 0;
  }

  /// Hands out these from now on instead of drawing: a row a doubtful number, a column a member.
  void give(double[][] draws) {
    given = draws;
  }

  /// The member's value of a parameter.
  public double of(String name, Parameter parameter) {
    return parameter.at(z(name, parameter.doubt() > 0));
  }

  /// The member's value around a middle, symmetric.
  public double around(String name, double middle, double doubt) {
    return middle + doubt * z(name, doubt > 0);
  }

  /// The member's value of a share: symmetric, but never outside 0 to 1.
  public double share(String name, double middle, double doubt) {
    return Math.clamp(around(name, middle, doubt), 0, 1);
  }

  /// The member's factor round 1 that stays positive.
  public double factor(String name, double logDoubt) {
    return Math.exp(logDoubt * z(name, logDoubt > 0));
  }

  private double z(String name, boolean hasDoubt) {
    int index = asked++;
    if (index == names.size()) {
      learn(name, hasDoubt);
    } else if (!names.get(index).equals(name)) {
      throw new IllegalStateException("asked for " + name + " where " + names.get(index) + " came");
    }
    double z = 0;
    if (member >= 0 && hasDoubt) {
      z = given == null ? Luck.z(streams[index], member) : given[places.get(index)][member];
    }
    drawn[index] = z;
    return z;
  }

  private void learn(String name, boolean hasDoubt) {
    if (names.size() == streams.length) {
      streams = Arrays.copyOf(streams, 2 * streams.length);
      drawn = Arrays.copyOf(drawn, 2 * drawn.length);
    }
    streams[names.size()] = Luck.stream(seed, name);
    names.add(name);
    places.add(doubtfulCount);
    doubtful.add(hasDoubt);
    doubtfulCount += hasDoubt ? 1 : 0;
  }

  /// The names of the numbers that have any doubt, in the order asked.
  public List<String> doubtfulNames() {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (doubtful.get(i)) {
        found.add(names.get(i));
      }
    }
    return found;
  }

  /// What the present member drew for the number of that place among the doubtful ones.
  double lastDrawn(int doubtfulIndex) {
    int seen = -1;
    for (int i = 0; i < names.size(); i++) {
      if (doubtful.get(i) && ++seen == doubtfulIndex) {
        return drawn[i];
      }
    }
    throw new IllegalArgumentException("no doubtful number " + doubtfulIndex);
  }
}
