package gylebook.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/// The pages of the science as the program carries them: their order, their text as HTML, and which
/// of them speaks of a calculation.
final class ScienceText {
  private static final Pattern LISTED =
      Pattern.compile("(?m)^- \\[([^]]+)]\\(([a-z0-9-]+)\\.md\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^### `([a-z0-9-]+)`$");
  private static final Pattern PAGE_LINK = Pattern.compile("]\\(([a-z0-9-]+)\\.md\\)");
  private static final Pattern ENTRY = Pattern.compile("(?ms)^@\\w+\\{([^,\\s]+),(.*?)^}");
  private static final Pattern FIELD =
      Pattern.compile("(?s)(\\w+)\\s*=\\s*\\{(.*?)}\\s*,?\\s*(?=\\n|$)");
  private static final Pattern NAME = Pattern.compile("[a-z0-9-]+");

  private static final ScienceText TEXT = new ScienceText();

  private final Map<String, String> titles = new LinkedHashMap<>();
  private final Map<String, String> written = new HashMap<>();
  private final Map<String, List<String>> calculations = new LinkedHashMap<>();
  private final Map<String, String> pages = new HashMap<>();

  private ScienceText() {
    Matcher listed = LISTED.matcher(resource("README.md").orElseThrow());
    while (listed.find()) {
      String page = listed.group(2);
      String text = resource(page + ".md").orElseThrow();
      List<String> told =
          HEADING.matcher(text).results().map((MatchResult found) -> found.group(1)).toList();
      titles.put(page, listed.group(1));
      written.put(page, text);
      calculations.put(page, told);
      told.forEach(name -> pages.put(name, page));
    }
  }

  static ScienceText text() {
    return TEXT;
  }

  /// The pages in the order of their index: name and title.
  Map<String, String> titles() {
    return titles;
  }

  /// The calculations that a page tells of.
  List<String> calculations(String page) {
    return calculations.getOrDefault(page, List.of());
  }

  /// The page that tells of a calculation.
  Optional<String> pageOf(String calculation) {
    return Optional.ofNullable(pages.get(calculation));
  }

  String title(String page) {
    return titles.getOrDefault(page, page);
  }

  /// A page as HTML.
  Optional<String> html(String page) {
    return Optional.ofNullable(written.get(page)).map(ScienceText::rendered);
  }

  /// The list of sources as HTML, each with its key to be pointed at.
  static String sources() {
    StringBuilder html = new StringBuilder("<h1>Sources</h1><dl>");
    Matcher entry = ENTRY.matcher(resource("sources.bib").orElseThrow());
    while (entry.find()) {
      String key = Html.escaped(entry.group(1));
      html.append("<dt id=\"%s\">%s</dt><dd>".formatted(key, key));
      List<String> parts = new ArrayList<>();
      Matcher field = FIELD.matcher(entry.group(2));
      while (field.find()) {
        String text = field.group(2).replaceAll("[{}]", "").replaceAll("\\s+", " ").strip();
        parts.add(Html.escaped(field.group(1) + ": " + text));
      }
      html.append(String.join("<br>", parts)).append("</dd>");
    }
    return html.append("</dl>").toString();
  }

  /// A picture of the pages.
  static Optional<String> picture(String name) {
    return NAME.matcher(name).matches() ? resource("pictures/" + name + ".svg") : Optional.empty();
  }

  private static String rendered(String markdown) {
    String linked =
        PAGE_LINK
            .matcher(markdown.replaceAll("(?s)<!--.*?-->\\n?", ""))
            .replaceAll("](/science/$1)")
            .replace("](pictures/", "](/science/pictures/")
            .replace("](../sources.bib)", "](/science/sources)");
    String html =
        HtmlRenderer.builder()
            .escapeHtml(true)
            .sanitizeUrls(true)
            .build()
            .render(Parser.builder().build().parse(linked));
    return html.replaceAll(
        "<h3><code>([a-z0-9-]+)</code></h3>",
        "<h3 id=\"$1\"><a href=\"/reckon/$1\"><code>$1</code></a></h3>");
  }

  private static Optional<String> resource(String name) {
    try (InputStream stream = ScienceText.class.getResourceAsStream("/science/" + name)) {
      return stream == null
          ? Optional.empty()
          : Optional.of(
              new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n"));
    } catch (IOException failure) {
      throw new UncheckedIOException("cannot read " + name, failure);
    }
  }
}
