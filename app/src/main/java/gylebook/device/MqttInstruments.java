package gylebook.device;

import java.time.InstantSource;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/// Listens to instruments that publish to the user's broker.
public final class MqttInstruments implements Listening {
  private final List<MqttTopic> topics;
  private final Watch watch;
  private final MqttSubscription subscription;

  /// Begins to listen at once; a broker that is not there yet is tried again and again.
  public MqttInstruments(
      MqttBroker broker,
      List<MqttTopic> topics,
      InstantSource clock,
      Patience patience,
      Consumer<Heard> ear) {
    this.topics = List.copyOf(topics);
    this.watch = new Watch(clock, ear);
    Set<String> filters = topics.stream().map(MqttTopic::topic).collect(Collectors.toSet());
    this.subscription = new MqttSubscription(broker, filters, clock, patience, this::hear);
  }

  private void hear(MqttMessage message) {
    Set<Oddity> known = message.stored() ? Set.of(Oddity.STORED) : Set.of();
    for (MqttTopic topic : topics) {
      if (topic.topic().equals(message.topic())) {
        topic
            .payload()
            .decode(topic.instrument(), message.bytes(), watch.now())
            .forEach(decoded -> watch.hear(topic.instrument(), decoded, known));
      }
    }
  }

  @Override
  public Line line() {
    return subscription.line();
  }

  @Override
  public void close() {
    subscription.close();
  }
}
