package gylebook.web;

import gylebook.brewday.FixedPlan;
import gylebook.brewday.Follower;
import gylebook.brewday.Gyle;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/// The follower of each day that is under way; planned once a day, whoever asks for it.
final class Followers {
  private final Papers papers;
  private final Map<String, Beside> besideByGyle = new ConcurrentHashMap<>();

  /// A follower and the beginning of the day it follows.
  private record Beside(long startedSeq, Optional<Follower> follower) {}

  Followers(Papers papers) {
    this.papers = papers;
  }

  /// That of a gyle; empty before its day, and when its plan cannot be met any more.
  Optional<Follower> of(Gyle gyle) {
    if (gyle.started().isEmpty() || gyle.brewedBy().isEmpty()) {
      return Optional.empty();
    }
    long seq = gyle.started().get().seq();
    Instant began = gyle.started().get().at();
    FixedPlan plan = gyle.brewedBy().get();
    return besideByGyle
        .compute(
            gyle.gyleId(),
            (_, known) ->
                known != null && known.startedSeq() == seq
                    ? known
                    : new Beside(
                        seq,
                        Follower.of(
                            papers.recipe(plan.recipe()),
                            papers.rig(plan.rig()),
                            plan.days(),
                            plan.seed(),
                            began)))
        .follower();
  }
}
