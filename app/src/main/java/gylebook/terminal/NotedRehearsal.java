package gylebook.terminal;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// A rehearsal that a running Gylebook plays and notes on a practice day of its book: this terminal
/// is one of those who look on and act.
final class NotedRehearsal {
  private static final JsonMapper JSON = new JsonMapper();
  private static final long LOOKS_EACH_MS = 500;

  private final String address;
  private final HttpClient client = HttpClient.newHttpClient();
  private final PrintWriter out;
  private int told;

  NotedRehearsal(String address, PrintWriter out) {
    this.address = address.replaceFirst("/+$", "");
    this.out = out;
  }

  /// Begins it and plays until it is over.
  ///
  /// @param asked as the page of the rehearsal asks it
  /// @param keys lines as they are typed
  void play(Map<String, String> asked, BlockingQueue<String> keys) throws IOException {
    JsonNode begun = JSON.readTree(post("/api/rehearsal", asked));
    out.println("It is noted at " + address + begun.path("kettle").asString(""));
    out.flush();
    try {
      while (underWay()) {
        String line = keys.poll(LOOKS_EACH_MS, TimeUnit.MILLISECONDS);
        if (line != null) {
          act(line);
        }
      }
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
    } finally {
      client.close();
    }
  }

  /// Prints what it said since, and whether it goes on.
  private boolean underWay() throws IOException {
    URI said = URI.create(address + "/api/rehearsal/said");
    JsonNode now = JSON.readTree(answer(HttpRequest.newBuilder(said)));
    for (; told < now.path("said").size(); told++) {
      out.println(now.path("said").get(told).asString(""));
    }
    out.flush();
    return now.path("underWay").asBoolean(false);
  }

  /// What makes no sense is said; the rehearsal goes on.
  private void act(String line) {
    try {
      post("/api/rehearsal/act", Map.of("line", line));
    } catch (IOException refused) {
      out.println(refused.getMessage());
    }
  }

  private String post(String path, Map<String, String> what) throws IOException {
    return answer(
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Origin", address)
            .POST(BodyPublishers.ofString(JSON.writeValueAsString(what))));
  }

  private String answer(HttpRequest.Builder request) throws IOException {
    try {
      HttpResponse<String> answer = client.send(request.build(), BodyHandlers.ofString());
      if (answer.statusCode() == 422) {
        JsonNode why = JSON.readTree(answer.body());
        String maybe = why.path("maybe").asString("");
        throw new IOException((why.path("what").asString("") + " " + maybe).strip());
      }
      if (answer.statusCode() != 200) {
        throw new IOException(address + " answered " + answer.statusCode() + ".");
      }
      return answer.body();
    } catch (ConnectException gone) {
      throw new IOException(
          "Nothing answers at " + address + "; start Gylebook there first.", gone);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped", stopped);
    }
  }
}
