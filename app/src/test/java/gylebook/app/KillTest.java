package gylebook.app;

import static org.assertj.core.api.Assertions.assertThat;

import gylebook.testing.Program;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// The whole program is killed while it is written to, again and again; whatever it acknowledged is
/// there after the next start. 50 times under `-Plong`, `-Dkills=200` for a longer campaign,
/// `-Dcase.seed=N` to see one again.
class KillTest {
  private static final JsonMapper JSON = new JsonMapper();

  @TempDir Path folder;

  @Test
  void whatWasAcknowledgedIsThereAfterAKill() throws IOException, InterruptedException {
    int kills = Integer.getInteger("kills", Boolean.getBoolean("long") ? 50 : 3);
    long seed = Long.getLong("case.seed", 20260314L);
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    Path book = folder.resolve("book.sqlite");
    int acknowledged = 20;
    List<Integer> notes = new ArrayList<>();
    for (int kill = 0; kill <= kills; kill++) {
      Program running = Program.on(book);
      try (HttpClient client = HttpClient.newHttpClient()) {
        int stands = length(client, running.address());
        assertThat(stands)
            .as("seed %d, after kill %d: the last acknowledged or the one on its way", seed, kill)
            .isBetween(acknowledged, acknowledged + 1);
        acknowledged = stands;
        int writes = 1 + random.nextInt(8);
        for (int i = 0; i < writes; i++) {
          fill(client, running.address(), acknowledged + 1);
          acknowledged++;
        }
        notes.add(writes);
        // One more is on its way when the program dies.
        int next = acknowledged + 1;
        Thread onItsWay =
            Thread.ofVirtual()
                .start(
                    () -> {
                      try {
                        fill(client, running.address(), next);
                      } catch (IOException | InterruptedException | AssertionError _) {
                        // It was not acknowledged, so nothing is promised.
                      }
                    });
        running.kill();
        onItsWay.join();
      }
    }
    System.getLogger("kills")
        .log(System.Logger.Level.INFO, "seed {0}: {1} kills, notes {2}", "" + seed, kills, notes);
  }

  private static int length(HttpClient client, String address)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address).resolve("/gyles/bitter/recipe.json")).build();
    JsonNode recipe =
        JSON.readTree(client.send(request, HttpResponse.BodyHandlers.ofString()).body());
    String typed = recipe.findValue("lengthL").toString();
    return Integer.parseInt(typed.replaceAll("^\\D*(\\d+).*$", "$1"));
  }

  private static void fill(HttpClient client, String address, int litres)
      throws IOException, InterruptedException {
    URI root = URI.create(address);
    String page =
        client
            .send(
                HttpRequest.newBuilder(root.resolve("/gyles/bitter")).build(),
                HttpResponse.BodyHandlers.ofString())
            .body();
    String seen = page.replaceAll("(?s).*data-seq=\"(\\d+)\".*", "$1");
    HttpResponse<String> answer =
        client.send(
            HttpRequest.newBuilder(root.resolve("/api/gyles/bitter/fill"))
                .header("Origin", address.replaceFirst("/$", ""))
                .header("Gyle-Seen", seen)
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        "{\"of\":\"recipe\",\"slot\":\"aim.lengthL\",\"typed\":\"%d L\"}"
                            .formatted(litres)))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    assertThat(answer.statusCode()).isEqualTo(200);
  }
}
