package gylebook.device;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.MqttClientBuilder;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.lifecycle.MqttClientDisconnectedContext;
import com.hivemq.client.mqtt.mqtt3.Mqtt3AsyncClient;
import com.hivemq.client.mqtt.mqtt3.message.auth.Mqtt3SimpleAuth;
import com.hivemq.client.mqtt.mqtt3.message.connect.Mqtt3Connect;
import com.hivemq.client.mqtt.mqtt3.message.publish.Mqtt3Publish;
import com.hivemq.client.mqtt.mqtt3.message.subscribe.Mqtt3Subscribe;
import com.hivemq.client.mqtt.mqtt3.message.subscribe.Mqtt3Subscription;
import com.hivemq.client.mqtt.mqtt5.Mqtt5AsyncClient;
import com.hivemq.client.mqtt.mqtt5.message.auth.Mqtt5SimpleAuth;
import com.hivemq.client.mqtt.mqtt5.message.connect.Mqtt5Connect;
import com.hivemq.client.mqtt.mqtt5.message.publish.Mqtt5Publish;
import com.hivemq.client.mqtt.mqtt5.message.subscribe.Mqtt5Subscribe;
import com.hivemq.client.mqtt.mqtt5.message.subscribe.Mqtt5Subscription;
import java.time.InstantSource;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/// The transport: everything a broker sends under some topic filters. Subscribes, and nothing else;
/// there is no way through here to publish, and no last will.
///
/// The set-up page may listen with wildcards to see what arrives.
public final class MqttSubscription implements Listening {
  private static final int KEEP_ALIVE_SEC = 20;

  /// Messages that wait at most. Beyond it the library drops those sent without a receipt (QoS 0).
  private static final int IN_FLIGHT_MOST = 1000;

  private static final int CLOSE_SEC = 2;
  private static final MqttQos RECEIPT = MqttQos.AT_LEAST_ONCE;

  private final MqttBroker broker;
  private final List<String> filters;
  private final Consumer<MqttMessage> ear;
  private final InstantSource clock;
  private final ExecutorService hearing;
  private final Supplier<CompletableFuture<?>> hangUp;
  private volatile Line line;
  private volatile boolean granted;
  private volatile boolean closed;

  /// Begins to listen at once.
  public MqttSubscription(
      MqttBroker broker,
      Collection<String> filters,
      InstantSource clock,
      Patience patience,
      Consumer<MqttMessage> ear) {
    this.broker = broker;
    this.filters = List.copyOf(filters);
    this.clock = clock;
    this.ear = ear;
    this.hearing = oneByOne("mqtt-" + broker.place());
    this.line = new Line.Down(clock.instant(), "not connected yet");
    MqttClientBuilder builder =
        MqttClient.builder()
            .identifier("gylebook-" + UUID.randomUUID().toString().substring(0, 8))
            .serverHost(broker.host())
            .serverPort(broker.port())
            .automaticReconnect()
            .initialDelay(patience.first().toMillis(), TimeUnit.MILLISECONDS)
            .maxDelay(patience.most().toMillis(), TimeUnit.MILLISECONDS)
            .applyAutomaticReconnect()
            .addConnectedListener(_ -> found())
            .addDisconnectedListener(this::lost);
    this.hangUp =
        switch (broker.version()) {
          case V5 -> listen(builder.useMqttVersion5().buildAsync());
          case V3_1_1 -> listen(builder.useMqttVersion3().buildAsync());
        };
  }

  /// One thread, in order; what still comes after the end is dropped without a word.
  private static ExecutorService oneByOne(String name) {
    return new ThreadPoolExecutor(
        1,
        1,
        0,
        TimeUnit.SECONDS,
        new LinkedBlockingQueue<>(),
        Thread.ofPlatform().daemon().name(name).factory(),
        new ThreadPoolExecutor.DiscardPolicy());
  }

  private Supplier<CompletableFuture<?>> listen(Mqtt5AsyncClient client) {
    Mqtt5Connect connect =
        Mqtt5Connect.builder()
            .cleanStart(true)
            .keepAlive(KEEP_ALIVE_SEC)
            .restrictions()
            .receiveMaximum(IN_FLIGHT_MOST)
            .applyRestrictions()
            .simpleAuth(
                login(
                    login ->
                        Mqtt5SimpleAuth.builder()
                            .username(login.user())
                            .password(login.passwordBytes())
                            .build()))
            .build();
    Mqtt5Subscribe wish =
        Mqtt5Subscribe.builder()
            .addSubscriptions(
                each(
                    filter -> Mqtt5Subscription.builder().topicFilter(filter).qos(RECEIPT).build()))
            .build();
    begin(client.connect(connect), () -> client.subscribe(wish, this::hear, hearing));
    return client::disconnect;
  }

  private Supplier<CompletableFuture<?>> listen(Mqtt3AsyncClient client) {
    Mqtt3Connect connect =
        Mqtt3Connect.builder()
            .cleanSession(true)
            .keepAlive(KEEP_ALIVE_SEC)
            .simpleAuth(
                login(
                    login ->
                        Mqtt3SimpleAuth.builder()
                            .username(login.user())
                            .password(login.passwordBytes())
                            .build()))
            .build();
    Mqtt3Subscribe wish =
        Mqtt3Subscribe.builder()
            .addSubscriptions(
                each(
                    filter -> Mqtt3Subscription.builder().topicFilter(filter).qos(RECEIPT).build()))
            .build();
    begin(client.connect(connect), () -> client.subscribe(wish, this::hear, hearing));
    return client::disconnect;
  }

  private <T> @Nullable T login(Function<MqttBroker.Login, T> proof) {
    return broker.login().map(proof).orElse(null);
  }

  private <T> Stream<T> each(Function<String, T> wish) {
    return filters.stream().map(wish);
  }

  private <T> void begin(
      CompletableFuture<?> connecting, Supplier<CompletableFuture<T>> subscribe) {
    var _ =
        connecting
            .thenCompose(_ -> subscribe.get())
            .whenComplete((_, failure) -> answered(failure));
  }

  private void hear(Mqtt5Publish message) {
    hear(message.getTopic(), message.getPayloadAsBytes(), message.isRetain());
  }

  private void hear(Mqtt3Publish message) {
    hear(message.getTopic(), message.getPayloadAsBytes(), message.isRetain());
  }

  private void hear(Object topic, byte[] bytes, boolean stored) {
    ear.accept(new MqttMessage(topic.toString(), bytes, stored));
  }

  private void answered(@Nullable Throwable failure) {
    granted = failure == null;
    line =
        failure == null
            ? new Line.Up(clock.instant())
            : new Line.Down(clock.instant(), reason(failure));
  }

  /// Connected, perhaps again; the client renews a subscription that was granted before.
  private void found() {
    if (closed) {
      var _ = hangUp.get();
    } else if (granted) {
      line = new Line.Up(clock.instant());
    }
  }

  private void lost(MqttClientDisconnectedContext context) {
    line = new Line.Down(clock.instant(), reason(context.getCause()));
    if (closed) {
      context.getReconnector().reconnect(false);
    }
  }

  private String reason(Throwable failure) {
    return broker.place() + ": " + Received.root(failure).getMessage();
  }

  @Override
  public Line line() {
    return line;
  }

  @Override
  public void close() {
    closed = true;
    // A broker that is gone needs no farewell; a client between two tries refuses one.
    hangUp.get().orTimeout(CLOSE_SEC, TimeUnit.SECONDS).exceptionally(_ -> null).join();
    hearing.shutdownNow();
  }
}
