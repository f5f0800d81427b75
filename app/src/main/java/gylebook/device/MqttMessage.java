package gylebook.device;

/// One message of a broker, as it came; for a driver to decode and for the set-up page to show.
public final class MqttMessage {
  private final String topic;
  private final byte[] bytes;
  private final boolean stored;

  MqttMessage(String topic, byte[] bytes, boolean stored) {
    this.topic = topic;
    this.bytes = bytes.clone();
    this.stored = stored;
  }

  /// Where it was published.
  public String topic() {
    return topic;
  }

  /// What was published.
  byte[] bytes() {
    return bytes.clone();
  }

  /// Whether the broker kept it from earlier, so that its age is not known.
  public boolean stored() {
    return stored;
  }

  /// The text, or the bytes in hexadecimal where they are no text.
  public String shown() {
    return Received.text(bytes).map(Received::shown).orElseGet(() -> Received.shownBytes(bytes));
  }
}
