package gylebook.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// A book that ends with the program; for looking round and for tests.
public final class MemoryJournal implements Journal {
  private final List<Entry> entries = new ArrayList<>();
  private final Map<String, List<Entry>> once = new HashMap<>();

  /// An empty book.
  public MemoryJournal() {}

  @Override
  public synchronized List<Entry> append(Addition addition) {
    List<Entry> before = once.get(addition.once());
    if (before != null) {
      return before;
    }
    long lastSeq = lastSeq(addition.gyleId());
    if (lastSeq != addition.afterSeq()) {
      throw new Overtaken(addition.gyleId(), addition.afterSeq(), lastSeq);
    }
    List<Entry> added = new ArrayList<>();
    for (Event event : addition.events()) {
      long seq = entries.size() + added.size() + 1L;
      added.add(new Entry(seq, addition.gyleId(), addition.at(), addition.noted(), event));
    }
    entries.addAll(added);
    if (!addition.once().isEmpty()) {
      once.put(addition.once(), List.copyOf(added));
    }
    return List.copyOf(added);
  }

  @Override
  public synchronized List<Entry> entries(long afterSeq) {
    return entries.stream().filter(entry -> entry.seq() > afterSeq).toList();
  }

  @Override
  public synchronized boolean has(String name) {
    return once.containsKey(name);
  }

  private long lastSeq(String gyleId) {
    return entries.stream()
        .filter(entry -> entry.gyleId().equals(gyleId))
        .mapToLong(Entry::seq)
        .max()
        .orElse(0);
  }
}
