package gylebook.device;

/// An instrument and the way to it: what a brewer sets up. [TieForm] writes and reads it.
public record Tie(Instrument instrument, Reach reach) {
  /// Refuses an instrument to which this way cannot lead.
  public Tie {
    reach.fit(instrument);
  }

  /// What shares one line: instruments with the same key are served by one driver.
  Object line() {
    return switch (reach) {
      case Reach.Broker to -> to.broker();
      case Reach.Controller to -> to.place();
      case Reach.Printed to -> to.place();
      case Reach.Chip _ -> Reach.Chip.class;
      case Reach.Post _ -> Reach.Post.class;
      case Reach.Table _ -> this;
    };
  }
}
