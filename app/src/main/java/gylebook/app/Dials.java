package gylebook.app;

import gylebook.brewday.TiedInstrument;
import gylebook.device.Decoded;
import gylebook.device.Gauge;
import gylebook.device.Heard;
import gylebook.device.Line;
import gylebook.device.Oddity;
import gylebook.device.Unfit;
import gylebook.units.Entered;
import gylebook.web.Instruments.Arrival;
import gylebook.web.Instruments.Count;
import gylebook.web.Instruments.Dial;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/// What the panel knows, as the page shows it.
final class Dials {
  private Dials() {}

  static Dial dial(Gauge gauge, Instant now) {
    boolean silent = gauge.silent(now);
    return new Dial(
        gauge.tie().instrument().id(),
        gauge.tie().instrument().place(),
        gauge.tie().reach().words(),
        gauge.line() instanceof Line.Up,
        gauge.line() instanceof Line.Down(Instant _, String why) ? why : "",
        gauge.lastValue().flatMap(Dials::value),
        ageSec(gauge.lastValue(), now),
        silent ? ageSec(gauge.last(), now) : OptionalLong.empty(),
        gauge.counts().heard(),
        counts(gauge.counts()),
        gauge.recent().stream().map(heard -> arrival(heard, now)).toList());
  }

  /// A tie that an older or newer build has written and this one cannot read.
  static Dial unreadable(TiedInstrument tied, Unfit unfit) {
    return new Dial(
        tied.name(),
        tied.place(),
        "is tied in a way that cannot be read",
        false,
        unfit.field() + " is '" + unfit.value() + "'. " + unfit.getMessage(),
        Optional.empty(),
        OptionalLong.empty(),
        OptionalLong.empty(),
        0,
        List.of(),
        List.of());
  }

  private static Optional<Entered> value(Heard heard) {
    return heard.decoded() instanceof Decoded.Value(Entered amount, Optional<Instant> _)
        ? Optional.of(amount)
        : Optional.empty();
  }

  private static OptionalLong ageSec(Optional<Heard> heard, Instant now) {
    return heard.stream().mapToLong(one -> one.age(now).toSeconds()).findFirst();
  }

  private static List<Count> counts(Gauge.Counts counts) {
    return Stream.of(
            new Count("garbled", counts.garbled()),
            new Count("power-on value of 85 °C", counts.powerOn()),
            new Count("sent twice", counts.repeated()),
            new Count("left out of a flood", counts.leftOut()),
            new Count("with its own clock off by more than a minute", counts.claimedOff()),
            new Count("after this computer's clock was set back", counts.clockBack()))
        .filter(count -> count.count() > 0)
        .toList();
  }

  private static Arrival arrival(Heard heard, Instant now) {
    List<String> remarks = new ArrayList<>();
    String sent =
        switch (heard.decoded()) {
          case Decoded.Value(Entered amount, Optional<Instant> _) -> amount.asTyped();
          case Decoded.Garbled(String text, String why) -> {
            remarks.add("garbled: what was sent " + why);
            yield text;
          }
        };
    heard.oddities().stream().map(Oddity::words).forEach(remarks::add);
    if (heard.leftOutCount() > 0) {
      remarks.add(
          heard.leftOutCount() + " before it left out: they came faster than five a second");
    }
    return new Arrival(heard.age(now).toSeconds(), sent, value(heard), remarks);
  }
}
