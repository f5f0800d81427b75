package gylebook.app;

import gylebook.brewday.AsRead;
import gylebook.brewday.Command;
import gylebook.brewday.Follower;
import gylebook.brewday.Gyle;
import gylebook.brewday.Sighting;
import gylebook.device.Decoded;
import gylebook.device.Heard;
import gylebook.estimate.Instrument;
import gylebook.journal.Event;
import gylebook.rig.Probe;
import gylebook.units.Entered;
import gylebook.web.Desk;
import gylebook.web.Papers;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/// Notes on a day under way what tied instruments say, once a minute each; what is odd about a
/// reading keeps it off the day, and stands on the instrument's page.
///
/// An instrument counts for a day when it is tied under the name that the rig gives it, and the
/// controller's output when it is tied as `duty` and is a share; for a day of practice, under the
/// names that its rehearsal gives them, and for no other day.
final class NoteTaker implements Consumer<Heard> {
  private static final Duration APART = Duration.ofSeconds(60);
  private static final String LAST_POINT = "cast";

  private final Desk desk;
  private final Papers papers;
  private final Map<String, Instant> lastAt = new ConcurrentHashMap<>();

  NoteTaker(Desk desk, Papers papers) {
    this.desk = desk;
    this.papers = papers;
  }

  @Override
  public void accept(Heard heard) {
    if (heard.decoded() instanceof Decoded.Value(Entered amount, _) && heard.oddities().isEmpty()) {
      boolean practised = desk.book().rehearses(heard.instrumentId());
      desk.book().gyles().stream()
          .filter(NoteTaker::underWay)
          .filter(gyle -> gyle.practice().isPresent() == practised)
          .forEach(gyle -> noted(gyle, heard, amount));
    }
  }

  private static boolean underWay(Gyle gyle) {
    return gyle.started().isPresent()
        && gyle.happened().stream()
            .noneMatch(
                note ->
                    note.event() instanceof Event.PointReached(String milestone)
                        && milestone.equals(LAST_POINT));
  }

  private void noted(Gyle gyle, Heard heard, Entered amount) {
    String key = gyle.gyleId() + " " + heard.instrumentId();
    Instant last = lastAt.get(key);
    Instant at = gyle.now(heard.at());
    if (last != null && Duration.between(last, at).compareTo(APART) < 0) {
      return;
    }
    // Whether the rig knows it is asked once a minute too: a rig's paper is not read for nothing.
    lastAt.put(key, at);
    seen(gyle, heard, amount)
        .map(taken -> desk.note(gyle.gyleId(), new Command.Note(taken), "", Optional.of(at)))
        .filter(Desk.Answer.NotSaved.class::isInstance)
        // The disk refused: the next reading is tried at once.
        .ifPresent(_ -> lastAt.remove(key));
  }

  private Optional<Event.ReadingTaken> seen(Gyle gyle, Heard heard, Entered amount) {
    Sighting duty = Sighting.DUTY;
    boolean output = gyle.tiedAs(duty.says()).equals(heard.instrumentId());
    if (output && amount.unit().quantity() == duty.quantity()) {
      return Optional.of(
          new Event.ReadingTaken(
              duty.says(), Probe.Place.KETTLE.name(), true, AsRead.whole(amount), ""));
    }
    return instrument(gyle, heard, amount).map(one -> taken(one, amount));
  }

  private static Event.ReadingTaken taken(Instrument instrument, Entered amount) {
    return new Event.ReadingTaken(
        instrument.name(), instrument.place().name(), true, AsRead.whole(amount), "");
  }

  private Optional<Instrument> instrument(Gyle gyle, Heard heard, Entered amount) {
    String rig = gyle.brewedBy().map(plan -> plan.rig()).orElse(gyle.rig().document());
    return Follower.instruments(papers.rig(rig)).stream()
        .filter(one -> gyle.tiedAs(one.name()).equals(heard.instrumentId()))
        .filter(one -> AsRead.quantity(one) == amount.unit().quantity())
        .findFirst();
  }
}
