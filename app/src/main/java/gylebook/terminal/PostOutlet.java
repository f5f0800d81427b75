package gylebook.terminal;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// Posts to a running Gylebook, each instrument as a board of its own with its token; and ties
/// instruments there, as the page of the instruments would.
final class PostOutlet implements Outlet {
  private static final JsonMapper JSON = new JsonMapper();
  private static final System.Logger LOG = System.getLogger(PostOutlet.class.getName());
  private static final Pattern SEQ = Pattern.compile("data-seq=\"(\\d+)\"");

  private final String address;
  private final HttpClient client = HttpClient.newHttpClient();
  private final Map<String, String> tokens;
  private final UnaryOperator<String> tiedAs;
  private final List<String> tied = new ArrayList<>();

  /// @param tokens of the instruments that are tied there already
  /// @param tiedAs the name under which an instrument is tied there
  PostOutlet(String address, Map<String, String> tokens, UnaryOperator<String> tiedAs) {
    this.address = address.replaceFirst("/+$", "");
    this.tokens = new LinkedHashMap<>(tokens);
    this.tiedAs = tiedAs;
  }

  /// Ties an instrument in the running program.
  ///
  /// @param reach the fields of its form that say how it is reached
  void tie(String instrument, Map<String, String> reach) throws IOException {
    Map<String, String> form = new HashMap<>(reach);
    form.put("name", tiedAs.apply(instrument));
    form.put("place", "rehearsal");
    form.put("measures", instrument.equals("duty") ? "SHARE %" : "TEMPERATURE \u00b0C");
    JsonNode said = JSON.readTree(change("tie", form));
    tied.add(instrument);
    Optional.of(said.path("token").asString(""))
        .filter(token -> !token.isEmpty())
        .ifPresent(token -> tokens.put(instrument, token));
  }

  private String change(String how, Map<String, String> what) throws IOException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address + "/api/instruments/" + how))
            .header("Origin", address)
            .header("Gyle-Seen", seen())
            .POST(BodyPublishers.ofString(JSON.writeValueAsString(what)));
    return answer(request, 200).body();
  }

  /// The last entry on the house's page, as the page of the instruments has it.
  private String seen() throws IOException {
    HttpRequest.Builder page = HttpRequest.newBuilder(URI.create(address + "/instruments"));
    Matcher seq = SEQ.matcher(answer(page, 200).body());
    if (!seq.find()) {
      throw new IOException("what answers at " + address + " is no Gylebook");
    }
    return seq.group(1);
  }

  private HttpResponse<String> answer(HttpRequest.Builder request, int wanted) throws IOException {
    try {
      HttpResponse<String> answer = client.send(request.build(), BodyHandlers.ofString());
      if (answer.statusCode() != wanted) {
        throw new IOException(address + " answered " + answer.statusCode() + ": " + answer.body());
      }
      return answer;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped", stopped);
    }
  }

  @Override
  public void send(Sent sent) throws IOException {
    String token = tokens.get(sent.instrument());
    if (token != null) {
      HttpRequest.Builder request =
          HttpRequest.newBuilder(URI.create(address + "/api/readings"))
              .header("Authorization", "Bearer " + token)
              .POST(BodyPublishers.ofString(sent.text()));
      // Garbage is answered as garbage: that is what it was sent for.
      answer(request, Double.isFinite(sent.number()) ? 204 : 400);
    }
  }

  @Override
  public void silent(String instrument) {
    // Who posts nothing is silent.
  }

  @Override
  public String words() {
    return tokens.isEmpty()
        ? "posts nothing to " + address + ": no token was given"
        : "posts " + String.join(", ", tokens.keySet()) + " to " + address;
  }

  /// Looses what was tied for the rehearsal.
  @Override
  public void close() {
    for (String instrument : tied) {
      try {
        change("loose", Map.of("name", tiedAs.apply(instrument)));
      } catch (IOException gone) {
        LOG.log(Level.DEBUG, tiedAs.apply(instrument) + " stays tied", gone);
      }
    }
    client.close();
  }
}
