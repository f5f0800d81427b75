package gylebook.device;

/// An instrument behind a broker: the one topic it publishes to and the form of what it writes.
public record MqttTopic(Instrument instrument, String topic, Payload payload) {
  /// Refuses a topic with wildcards: one instrument has one topic.
  public MqttTopic {
    if (topic.isEmpty() || topic.contains("+") || topic.contains("#")) {
      throw new IllegalArgumentException(
          "topic is '" + topic + "'; it must be one topic, without + and #.");
    }
  }
}
