package gylebook.terminal;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt5.Mqtt5AsyncClient;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/// Publishes to a broker: the number alone under `gylebook/rehearsal/NAME`, and as SenML with the
/// instrument's own time under `.../senml`.
final class MqttOutlet implements Outlet {
  static final String PREFIX = "gylebook/rehearsal/";
  private static final int ANSWER_SEC = 10;

  private final String place;
  private final Mqtt5AsyncClient client;

  MqttOutlet(String host, int port) throws IOException {
    this.place = host + ":" + port;
    this.client =
        MqttClient.builder()
            .identifier("rehearsal-" + UUID.randomUUID().toString().substring(0, 8))
            .serverHost(host)
            .serverPort(port)
            .useMqttVersion5()
            .buildAsync();
    within(client.connect());
  }

  private void within(CompletableFuture<?> asked) throws IOException {
    try {
      asked.get(ANSWER_SEC, TimeUnit.SECONDS);
    } catch (ExecutionException failed) {
      throw new IOException("the broker at " + place + ": " + failed.getMessage(), failed);
    } catch (TimeoutException late) {
      throw new IOException("the broker at " + place + " does not answer", late);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped", stopped);
    }
  }

  static String topic(String instrument) {
    return PREFIX + Outlet.slug(instrument);
  }

  @Override
  public void send(Sent sent) throws IOException {
    publish(topic(sent.instrument()), sent.text());
    if (Double.isFinite(sent.number())) {
      String unit = sent.instrument().equals("duty") ? "%" : "Cel";
      String pack =
          String.format(
              Locale.ROOT,
              "[{\"bn\":\"rehearsal:\",\"n\":\"%s\",\"u\":\"%s\",\"t\":%d,\"v\":%.3f}]",
              Outlet.slug(sent.instrument()),
              unit,
              sent.claimed().getEpochSecond(),
              sent.number());
      publish(topic(sent.instrument()) + "/senml", pack);
    }
  }

  private void publish(String topic, String text) throws IOException {
    within(
        client
            .publishWith()
            .topic(topic)
            .qos(MqttQos.AT_LEAST_ONCE)
            .payload(text.getBytes(StandardCharsets.UTF_8))
            .send());
  }

  @Override
  public void silent(String instrument) {
    // Who publishes nothing is silent.
  }

  @Override
  public String words() {
    return "publishes to " + place + " under " + PREFIX;
  }

  @Override
  public void close() {
    client.disconnect().orTimeout(2, TimeUnit.SECONDS).exceptionally(_ -> null).join();
  }
}
