package gylebook.telling;

import gylebook.rig.Parameter;
import gylebook.units.AnyUnit;
import gylebook.units.Component;
import gylebook.units.ReadingUnits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// Sentences being written about a tree of records, values by their paths.
///
/// A sentence is given with its values in braces: `It is {kettle.diameterM|width inside} across.`;
/// behind the bar stands what the value is. `{+hops|hops}` offers one more line of a list.
@AnyUnit("values of every quantity")
final class Draft {
  private static final Pattern VALUE = Pattern.compile("\\{([^|}]+)\\|([^}]+)\\}");

  private final Object tree;
  private final ReadingUnits units;
  private final List<Section> sections = new ArrayList<>();
  private List<Sentence> sentences = new ArrayList<>();
  private final Map<String, List<String>> bases = new LinkedHashMap<>();
  private String heading = "";

  Draft(Object tree, ReadingUnits units) {
    this.tree = tree;
    this.units = units;
  }

  Draft section(String newHeading) {
    close();
    heading = newHeading;
    return this;
  }

  Draft say(String sentence) {
    List<Piece> pieces = new ArrayList<>();
    Matcher value = VALUE.matcher(sentence);
    int from = 0;
    while (value.find()) {
      words(pieces, sentence.substring(from, value.start()));
      value(pieces, value.group(1), value.group(2));
      from = value.end();
    }
    words(pieces, sentence.substring(from));
    sentences.add(new Sentence(pieces));
    return this;
  }

  /// Words of somebody's own inside a sentence that is given with braces.
  static String plain(String words) {
    return words.replace('{', '(').replace('}', ')');
  }

  List<Section> sections() {
    close();
    return List.copyOf(sections);
  }

  private void close() {
    if (!bases.isEmpty()) {
      String all =
          bases.entrySet().stream()
              .map(basis -> Grammar.joined(basis.getValue()) + " (" + basis.getKey() + ")")
              .collect(Collectors.joining(", "));
      sentences.add(
          new Sentence(List.of(new Piece.Words("Where these numbers are from: " + all + "."))));
      bases.clear();
    }
    if (!sentences.isEmpty()) {
      sections.add(new Section(heading, sentences));
      sentences = new ArrayList<>();
    }
  }

  private static void words(List<Piece> pieces, String words) {
    if (!words.isEmpty()) {
      pieces.add(new Piece.Words(words));
    }
  }

  private void value(List<Piece> pieces, String path, String hint) {
    if (path.startsWith("+")) {
      String list = path.substring(1);
      String example =
          "one more, like: " + Lines.EXAMPLES.getOrDefault(list, ThermometerLine.EXAMPLE);
      pieces.add(
          new Piece.Slot(list + Filling.ADD, "add " + hint, "", "words", List.of(), example));
      return;
    }
    pieces.add(Blank.of(tree, path, hint, units).slot());
    if (Component.at(tree, path) instanceof Parameter parameter) {
      String name = path.substring(path.lastIndexOf('.') + 1);
      pieces.add(new Piece.Words(Measured.behind(name, parameter, units)));
      if (!parameter.basis().isEmpty()) {
        bases.computeIfAbsent(parameter.basis(), _ -> new ArrayList<>()).add(hint);
      }
    }
  }
}
