package gylebook.store;

import gylebook.units.AnyUnit;
import java.time.Instant;

final class ClockInTheStore {
  Instant noted = Instant.now();
  AnyUnit mark;
}
