package gylebook.tidy;

import gylebook.testing.Checkout;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// The sources of the house and the rules they keep.
final class House {
  private static final Pattern BIB_KEY =
      Pattern.compile("(?m)^\\s*@\\w+\\s*\\{\\s*([^,\\s]+)\\s*,");

  private House() {}

  /// Rules for what is built.
  static List<Rule> rules() {
    return List.of(
        new LadderRule(),
        new NamingRule(),
        new DimensionRule(),
        new BanRule(),
        new LocaleRule(),
        new SizeRule(),
        new CommentRule(),
        new TypeNameRule(),
        new RoomRule(),
        new SourceRule(Set.copyOf(bibKeys())));
  }

  /// Read once, because looking up every name takes seconds.
  static List<Sheet> mainSheets() {
    return Built.SHEETS;
  }

  private static final class Built {
    static final List<Sheet> SHEETS =
        Sheet.read(
            existing(
                Checkout.root().resolve("core/src/main/java"),
                Checkout.root().resolve("app/src/main/java")),
            Checkout.root(),
            Sheet.Reading.RESOLVED);
  }

  static List<Sheet> testSheets() {
    Path root = Checkout.root();
    return Sheet.read(
        existing(root.resolve("core/src/test/java"), root.resolve("app/src/test/java")),
        root,
        Sheet.Reading.GRAMMAR);
  }

  private static List<Path> existing(Path... folders) {
    return List.of(folders).stream().filter(Files::isDirectory).toList();
  }

  /// The keys of `docs/sources.bib`, in their order, twice if they stand there twice.
  static List<String> bibKeys() {
    try {
      Matcher key = BIB_KEY.matcher(Files.readString(Checkout.root().resolve("docs/sources.bib")));
      return key.results().map(found -> found.group(1)).collect(Collectors.toList());
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  static List<Fault> faults(Rule rule, List<Sheet> sheets) {
    List<Fault> faults = new ArrayList<>();
    sheets.forEach(sheet -> faults.addAll(rule.faults(sheet)));
    return faults;
  }
}
