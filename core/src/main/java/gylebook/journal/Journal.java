package gylebook.journal;

import java.util.List;

/// The book. Entries are only ever added.
///
/// When [#append] returns, the entries survive a kill and a power cut. When it throws, none of them
/// is in the book.
public interface Journal {
  /// The place of entries that belong to no gyle.
  String HOUSE = "house";

  /// The place of what was forecast, whichever gyle it is about; no gyle's name has a space.
  String FORECASTS = "forecasts given";

  /// Adds all of it or nothing.
  ///
  /// @return the new entries; those of the first time when an addition of this name was there
  ///   before
  /// @throws Overtaken when the gyle has entries that the sender had not seen
  /// @throws JournalUnavailable when it cannot be written
  List<Entry> append(Addition addition);

  /// Every entry of the book after that number, in order.
  ///
  /// @param afterSeq 0 for the whole book
  /// @throws JournalUnavailable when it cannot be read
  List<Entry> entries(long afterSeq);

  /// Whether an addition of that name is in the book, so that it need not be decided again; none
  /// bears the empty name.
  ///
  /// @throws JournalUnavailable when it cannot be read
  boolean has(String once);
}
