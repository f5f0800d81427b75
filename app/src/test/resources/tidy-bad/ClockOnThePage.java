package gylebook.web;

import static java.time.Instant.now;

import java.time.Instant;

final class ClockOnThePage {
  Instant at = now(); // FAULT ban
}
