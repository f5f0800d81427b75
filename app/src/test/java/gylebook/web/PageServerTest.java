package gylebook.web;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.plan.Demo;
import gylebook.rig.DemoRigs;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PageServerTest {
  private static PageServer server;

  @BeforeAll
  static void start() {
    server =
        PageServer.start(
            0,
            List.of(
                new Gyle("bitter", Demo.copperBitter(), DemoRigs.household()),
                new Gyle("wheat", Demo.wheatBeer(), DemoRigs.smallFlat())));
  }

  @AfterAll
  static void stop() {
    server.stop();
  }

  private static HttpResponse<String> got(String path) throws IOException, InterruptedException {
    try (HttpClient client = HttpClient.newHttpClient()) {
      URI uri = URI.create(server.address()).resolve(path);
      return client.send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
    }
  }

  @Test
  void theListNamesTheInventedGyles() throws IOException, InterruptedException {
    HttpResponse<String> answer = got("/");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body())
        .contains("October bitter")
        .contains("Window-sill wheat")
        .contains("invented");
  }

  @Test
  void aGyleReadsAsSentencesWithItsForecast() throws IOException, InterruptedException {
    String body = got("/gyles/bitter").body();
    assertThat(body)
        .contains("In words")
        .contains("Make 20.0 L of a dry, copper-coloured bitter")
        .contains("What could go wrong")
        .contains("<svg class=\"day\"")
        .contains("it never switches anything")
        .doesNotContain("NaN");
  }

  @Test
  void unitsAreTheReadersChoice() throws IOException, InterruptedException {
    assertThat(got("/gyles/bitter?units=us").body()).contains("US gal").doesNotContain("°C");
  }

  @Test
  void whatIsNotThereSaysSo() throws IOException, InterruptedException {
    assertThat(got("/gyles/stout").statusCode()).isEqualTo(404);
  }

  @Test
  void everyAnswerForbidsScriptsAndSniffing() throws IOException, InterruptedException {
    HttpResponse<String> answer = got("/");
    assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
        .contains("default-src 'none'");
    assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
  }

  @Test
  void aForeignNameForThisMachineGetsNothing() throws IOException {
    URI uri = URI.create(server.address());
    try (Socket socket = new Socket(uri.getHost(), uri.getPort());
        OutputStream out = socket.getOutputStream();
        InputStream in = socket.getInputStream()) {
      String request = "GET / HTTP/1.1\r\nHost: brewery.example\r\nConnection: close\r\n\r\n";
      out.write(request.getBytes(StandardCharsets.US_ASCII));
      out.flush();
      String answer = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 403").doesNotContain("October bitter");
    }
  }
}
