package gylebook.interchange;

import gylebook.units.AnyUnit;
import gylebook.units.Entered;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/// One record of a foreign XML file: what is asked for is used up, the rest can be kept.
@AnyUnit("amounts of a file; the standard fixes the unit of each tag")
final class XmlThing {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

  /// As some programs write, where a comma is the mark of decimals.
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+");

  private static final int DIGITS_MOST = 12;

  private final XmlTag tag;
  private final String path;
  private final Ledger ledger;

  /// By identity: two hops of the same figures are two hops.
  private final Set<XmlTag> used = Collections.newSetFromMap(new IdentityHashMap<>());

  private final IdentityHashMap<XmlTag, XmlThing> inner = new IdentityHashMap<>();

  XmlThing(XmlTag tag, String path, Ledger ledger) {
    this.tag = tag;
    this.path = path;
    this.ledger = ledger;
  }

  String path() {
    return path;
  }

  Ledger ledger() {
    return ledger;
  }

  void says(String key, String sentence) {
    ledger.says(key.isEmpty() ? path : Ledger.path(path, key), sentence);
  }

  /// A number as the standard writes it; empty when it is none.
  static OptionalDouble number(String text) {
    String digits = text.strip();
    if (digits.length() > 40 || !NUMBER.matcher(digits).matches()) {
      return OptionalDouble.empty();
    }
    double value = Double.parseDouble(digits);
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  boolean has(String key) {
    return tag.children().stream().anyMatch(child -> child.name().equals(key));
  }

  private Optional<XmlTag> take(String key) {
    Optional<XmlTag> first =
        tag.children().stream().filter(child -> child.name().equals(key)).findFirst();
    first.ifPresent(used::add);
    return first;
  }

  /// A text; empty when absent.
  String words(String key) {
    return take(key).map(XmlTag::text).orElse("");
  }

  /// Keeps a tag that says nothing about the beer, without a word.
  void noted(String key) {
    String text = words(key);
    if (!text.isEmpty()) {
      ledger.note(Ledger.path(path, key), text);
    }
  }

  Optional<XmlThing> thing(String key) {
    return take(key).map(found -> within(found, key));
  }

  private XmlThing within(XmlTag found, String name) {
    return inner.computeIfAbsent(found, tag -> new XmlThing(tag, Ledger.path(path, name), ledger));
  }

  /// The records of a set, numbered from 1 in their paths; what else is in the set is kept.
  List<XmlThing> things(String set, String record) {
    Optional<XmlThing> found = thing(set);
    if (found.isEmpty()) {
      return List.of();
    }
    XmlThing records = found.get();
    List<XmlThing> things = new ArrayList<>();
    for (XmlTag child : records.tag.children()) {
      if (child.name().equals(record)) {
        records.used.add(child);
        things.add(within(child, record + " " + (things.size() + 1)));
      }
    }
    return things;
  }

  OptionalDouble number(String key, boolean wanted) {
    String text = words(key);
    if (text.isEmpty()) {
      if (wanted) {
        says(key, "Is not there, though the standard asks for it; taken as 0.");
      }
      return wanted ? OptionalDouble.of(0) : OptionalDouble.empty();
    }
    OptionalDouble value = number(text);
    if (value.isEmpty() && DECIMAL_COMMA.matcher(text).matches()) {
      value = number(text.replace(',', '.'));
      says(key, "Is written with a comma; read as " + text.replace(',', '.') + ".");
    }
    if (value.isEmpty()) {
      throw new Refusal(
          "'" + Ledger.path(path, key) + "' has to be a number with a decimal point.",
          text,
          "Maybe correct it in the program that wrote the file.");
    }
    return value;
  }

  /// An amount in the tag's fixed unit, as a person would type it in another.
  Optional<Entered> amount(String key, Unit fixed, Unit typed) {
    OptionalDouble value = number(key, false);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(entered(key, value.getAsDouble(), fixed, typed));
  }

  private Entered entered(String key, double value, Unit fixed, Unit typed) {
    Quantity quantity = fixed.quantity();
    double inside = Double.NaN;
    try {
      inside = fixed.toInside(value);
    } catch (IllegalArgumentException outside) {
      says(key, "Is outside what its unit can say.");
    }
    if (!(inside >= quantity.least() && inside <= quantity.most())) {
      throw new Refusal(
          "'" + Ledger.path(path, key) + "' is no " + quantity.words() + " that a brewery knows.",
          String.valueOf(value),
          "It has to lie between "
              + quantity.least()
              + " and "
              + quantity.most()
              + " "
              + quantity.inside().symbol()
              + ".");
    }
    double shown = fixed.equals(typed) ? value : typed.fromInside(inside);
    return ForeignUnits.entered(shown, digits(shown), typed);
  }

  /// A number without the dust of its arithmetic.
  static String digits(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(DIGITS_MOST));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /// TRUE or FALSE; empty when absent.
  Optional<Boolean> flag(String key) {
    String text = words(key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String capitals = text.toUpperCase(Locale.ROOT);
    if (!text.equals("TRUE") && !text.equals("FALSE")) {
      says(
          key,
          "Should be TRUE or FALSE; '"
              + Refusal.shortened(text)
              + "' is taken as "
              + (capitals.equals("TRUE") ? "TRUE." : "FALSE."));
    }
    return Optional.of(capitals.equals("TRUE"));
  }

  /// Refuses a record of another version of the standard.
  void version() {
    String version = words("VERSION");
    if (version.isEmpty()) {
      says("VERSION", "Is not there; read as version 1.");
    } else if (number(version).orElse(0) != 1) {
      throw new Refusal(
          "'"
              + path
              + "' says version "
              + Refusal.shortened(version)
              + " of the open XML standard; only version 1 is read.",
          version,
          "Maybe export it again as version 1 or in the open JSON standard.");
    }
  }

  /// Keeps what nobody asked for, here and in what was opened below.
  void keepRest() {
    inOrder().forEach(XmlThing::keepRest);
    for (XmlTag child : tag.children()) {
      if (!used.contains(child) && !(child.text().isEmpty() && child.children().isEmpty())) {
        String place = Ledger.path(path, child.name());
        if (used.stream().anyMatch(first -> first.name().equals(child.name()))) {
          ledger.says(
              place,
              "Stands more than once; the first is read, '%s' is kept and not used."
                  .formatted(Refusal.shortened(whole(child))));
          ledger.note(place, whole(child));
        } else {
          ledger.keep(place, whole(child));
        }
      }
    }
  }

  /// What was opened below, by path: the remarks come in the same order each time.
  private List<XmlThing> inOrder() {
    List<XmlThing> things = new ArrayList<>();
    things.addAll(inner.values());
    things.sort(Comparator.comparing(XmlThing::path));
    return things;
  }

  private static String whole(XmlTag child) {
    return child.children().isEmpty() ? child.text() : child.written();
  }
}
