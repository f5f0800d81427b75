package gylebook.estimate;

import gylebook.rig.Bounds;
import gylebook.rig.Origin;
import gylebook.rig.Parameter;
import gylebook.rig.Probe;
import gylebook.rig.Rig;
import gylebook.science.Source;
import gylebook.science.Trust;
import gylebook.units.AnyUnit;
import gylebook.units.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/// What a finished day says of the rig, number by number, and how it is carried to the next day.
///
/// What is of the day alone is left out: weather, tap water, malt, hops, how long somebody took; so
/// is what only a wish or a setting is. A number whose doubt hardly fell keeps what it had, and it
/// is said that the day could not tell.
@AnyUnit("numbers of every unit")
public final class Findings {
  /// A doubt that the day leaves at more than this share of itself says nothing: among so many
  /// twins chance alone takes a few hundredths off (seen on numbers that no reading depends on).
  static final double SEEN_RATIO = 0.8;

  /// What is carried from one day to the next is held a little less surely each time: hoses age, a
  /// bag is another, scale grows (an engineer's 1.02 to 1.05).
  static final double FORGETS_RATIO = 1.03;

  private static final String STEERS = "probe.";
  private static final String STAYS = "gauge.";
  private static final String BIAS = "biasK";
  private static final String LAG = "lagSec";

  private static final List<String> ROOMS =
      List.of("kettle.", "element.", "bag.", "loop.", "chiller.", "site.altitudeM", "working.");

  // Wishes and settings, and what another day has otherwise.
  private static final Set<String> NOT_THE_RIG =
      Set.of(
          "kettle.headroomM",
          "element.coverM",
          "element.breakerA",
          "element.mainsV",
          "loop.wantedNpshM",
          "working.doughInSec",
          "working.settleSec",
          "working.drainSec");

  private Findings() {}

  /// What a day says of each number of its rig.
  ///
  /// `doubt' = 1.03 doubt` where it was learnt, on this day or before
  ///
  /// @param rig that the day was planned for
  /// @param basis where it was learnt, in words
  @Source(key = "practice", at = "forgetting between brews, 1.02 to 1.05", trust = Trust.PRACTICE)
  public static List<Finding> of(Hindsight day, Rig rig, String basis) {
    List<Finding> findings = new ArrayList<>();
    for (String name : day.onDay().twins().doubts()) {
      String path = path(name, rig);
      if (!path.isEmpty()) {
        findings.add(finding(path, rig, day.number(name), basis));
      }
    }
    for (int i = 0; i < rig.probes().size(); i++) {
      Probe probe = rig.probes().get(i);
      if (!probe.steers() && probe.biasK().doubt() > 0) {
        findings.add(finding("probes." + i + "." + BIAS, rig, day.bias(probe.name()), basis));
      }
    }
    return List.copyOf(findings);
  }

  private static Finding finding(String path, Rig rig, Held inDoubts, String basis) {
    Parameter before = (Parameter) Component.at(rig, path);
    boolean seen = inDoubts.doubt() <= SEEN_RATIO;
    double keptDoubt = before.doubt() * (seen ? inDoubts.doubt() : 1);
    boolean learnt = seen || before.origin() == Origin.LEARNT;
    Parameter after =
        learnt
            ? new Parameter(
                seen ? before.at(inDoubts.mean()) : before.value(),
                keptDoubt * FORGETS_RATIO,
                before.spread(),
                Origin.LEARNT,
                seen ? basis : before.basis(),
                "")
            : before;
    return new Finding(path, before, after, inDoubts.doubt(), seen);
  }

  /// The place of a doubtful number in the rig; empty when it is none of the rig's own.
  private static String path(String name, Rig rig) {
    if (name.startsWith(STEERS)) {
      OptionalInt steers = index(rig, Probe::steers);
      return steers.isEmpty() ? "" : "probes." + steers.getAsInt() + name.substring(5);
    }
    if (name.startsWith(STAYS) && name.endsWith("." + LAG)) {
      String called = name.substring(STAYS.length(), name.length() - LAG.length() - 1);
      OptionalInt stays = index(rig, probe -> probe.name().equals(called));
      return stays.isEmpty() ? "" : "probes." + stays.getAsInt() + "." + LAG;
    }
    return ROOMS.stream().anyMatch(name::startsWith) && !NOT_THE_RIG.contains(name) ? name : "";
  }

  private static OptionalInt index(Rig rig, Predicate<Probe> which) {
    return IntStream.range(0, rig.probes().size())
        .filter(i -> which.test(rig.probes().get(i)))
        .findFirst();
  }

  /// A rig with what was learnt. A number that was changed since the day was planned stays as it
  /// is, and so does one that would come to lie where no rig's lies.
  public static Rig carried(Rig rig, List<Finding> findings) {
    Rig carried = rig;
    for (Finding finding : findings) {
      if (has(carried, finding)) {
        Rig next = Component.with(carried, finding.path(), finding.after());
        carried = Bounds.fault(next, carried).isEmpty() ? next : carried;
      }
    }
    return carried;
  }

  /// Whether a rig still has the number that a finding began with.
  private static boolean has(Rig rig, Finding finding) {
    boolean probe = finding.path().startsWith("probes.");
    int number = probe ? Integer.parseInt(finding.path().split("\\.", -1)[1]) : 0;
    return (!probe || number < rig.probes().size())
        && Component.at(rig, finding.path()).equals(finding.before());
  }
}
