package gylebook.brewday;

import gylebook.journal.Entry;
import gylebook.journal.Event;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Every forecast of the book as it was given, gyle by gyle, oldest first.
///
/// @param lastSeq the last entry that holds one
/// @param byGyle those of each gyle
public record ForecastsGiven(long lastSeq, Map<String, List<Kept>> byGyle) {
  /// Nothing was forecast yet.
  public static final ForecastsGiven NONE = new ForecastsGiven(0, Map.of());

  /// Copies what it is given.
  public ForecastsGiven {
    byGyle = Map.copyOf(byGyle);
  }

  /// One of them.
  ///
  /// @param seq the entry that holds it
  /// @param noted when it was written down
  /// @param afterSeq the plan or the point it was given after
  /// @param document its numbers
  public record Kept(long seq, Instant noted, long afterSeq, String document) {}

  ForecastsGiven with(Entry entry, Event.ForecastGiven given) {
    Map<String, List<Kept>> more = new LinkedHashMap<>(byGyle);
    List<Kept> longer = new ArrayList<>(of(given.gyleId()));
    longer.add(new Kept(entry.seq(), entry.noted(), given.afterSeq(), given.document()));
    more.put(given.gyleId(), List.copyOf(longer));
    return new ForecastsGiven(entry.seq(), more);
  }

  /// Those of one gyle, whatever was struck since.
  public List<Kept> of(String gyleId) {
    return byGyle.getOrDefault(gyleId, List.of());
  }

  /// The one that was given after an entry.
  public Optional<Kept> after(String gyleId, long afterSeq) {
    return of(gyleId).stream().filter(kept -> kept.afterSeq() == afterSeq).findFirst();
  }
}
