package gylebook.tidy;

import java.util.List;

/// One house rule. It sees one source file at a time.
interface Rule {
  /// The short name faults carry.
  String name();

  /// What the file breaks.
  List<Fault> faults(Sheet sheet);
}
