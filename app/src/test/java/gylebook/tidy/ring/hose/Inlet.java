package gylebook.tidy.ring.hose;

import gylebook.tidy.ring.kettle.Outlet;
import java.util.List;

/// Leads back into the kettle.
public record Inlet(List<Outlet> next) {
  /// Keeps its own copy.
  public Inlet {
    next = List.copyOf(next);
  }
}
