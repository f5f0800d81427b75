package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/// Which typed amount belongs to which input of one calculation.
///
/// What counts, in this order: that an amount finds a place at all; the words beside it; its unit;
/// that what must be given comes before what has a usual value; the order in which it was typed.
@AnyUnit("weighs amounts of every unit")
final class Fit {
  private static final double PLACED = 100;
  private static final double NAMED = 20;
  private static final double NAMED_BEHIND = 14;
  private static final double SHARED = 2;
  private static final double UNSHARED = 0.7;
  private static final double EXACT = 10;
  private static final double BARE = 6;
  private static final double CROSSED = 5;
  private static final double NEEDED = 3;
  private static final double LIKELY = 8;
  private static final double AIMED = 2;
  private static final double UNLIKELY = 2;
  private static final double TURNED = 0.6;
  private static final Set<String> COURSES = Set.of("from", "to", "start", "target", "end");
  private static final Set<String> BEGINS =
      Set.of("from", "start", "first", "hot", "earlier", "original");
  private static final Set<String> AIMS = Set.of("to", "target", "end", "wanted", "later", "limit");
  private static final Set<String> LASTING = Set.of("held", "boiled", "stored", "rest", "cooling");
  private static final Pattern GRAVITY =
      Pattern.compile("(0[.,]9|1[.,][01])\\d{2,}|(9[5-9]\\d|1[01]\\d\\d)");
  private static final Pattern SHORT = Pattern.compile("1[.,][01]\\d");
  private static final Pattern SPINDLE = Pattern.compile("(0[.,]99|1[.,][01])\\d+");
  private static final Pattern ALPHA = Pattern.compile("([1-9]|[12]\\d)([.,]\\d+)?");
  private static final Pattern MINUTES = Pattern.compile(".*\\d ?m");

  private final Calculation calculation;
  private final List<Amounted> amounts;
  private final ReadingUnits units;
  private final List<List<Optional<Place>>> places = new ArrayList<>();
  private double bestScore = -1;
  private int[] best = {};

  /// An amount with the words on both sides of it.
  record Amounted(String text, boolean bare, List<String> before, List<String> behind) {
    Amounted {
      before = List.copyOf(before);
      behind = List.copyOf(behind);
    }

    /// Whether one of some words stands beside it, on either side.
    boolean says(String... words) {
      return Stream.of(words).anyMatch(word -> before.contains(word) || behind.contains(word));
    }

    /// Whether a word is the next to it, on either side.
    boolean beside(String word) {
      return (!before.isEmpty() && before.getFirst().equals(word))
          || (!behind.isEmpty() && behind.getFirst().equals(word));
    }

    /// Passed over, another unit would be taken for the one that was meant.
    String strangeUnit() {
      return "'%s' behind %s is no unit that is known here.".formatted(behind.getLast(), text);
    }

    /// Without words in front that only say what is reckoned: `element cover 330 mm`.
    Amounted behindNameOf(Calculation calculation) {
      List<String> name = Vocabulary.split(calculation.name());
      List<String> left = before.stream().filter(word -> !name.contains(word)).toList();
      return new Amounted(text, bare, left, behind);
    }
  }

  /// One amount at one input: what goes in, and how well it suits.
  private record Place(String value, String how, double score) {}

  Fit(Calculation calculation, List<Amounted> amounts, Set<String> given, ReadingUnits units) {
    this.calculation = calculation;
    this.amounts = List.copyOf(amounts);
    this.units = units;
    for (Amounted amount : amounts) {
      List<Optional<Place>> row = new ArrayList<>();
      Amounted heard = places.isEmpty() ? amount.behindNameOf(calculation) : amount;
      for (int i = 0; i < calculation.inputs().size(); i++) {
        boolean free = !given.contains(calculation.inputs().get(i).key());
        boolean asked = places.isEmpty() && isAsked(amount, i);
        row.add(free && !asked ? place(amount, heard, i) : Optional.empty());
      }
      places.add(row);
    }
    int[] tried = new int[amounts.size()];
    search(tried, 0, 0);
  }

  /// What was taken for what, in the order of the inputs.
  List<Taken> taken() {
    List<Taken> taken = new ArrayList<>();
    for (int input = 0; input < calculation.inputs().size(); input++) {
      for (int i = 0; i < best.length; i++) {
        if (best[i] == input) {
          Place place = places.get(i).get(input).orElseThrow();
          Input asked = calculation.inputs().get(input);
          taken.add(new Taken(asked, amounts.get(i).text(), place.value(), place.how()));
        }
      }
    }
    return taken;
  }

  /// Amounts that found no place.
  List<Amounted> left() {
    List<Amounted> left = new ArrayList<>();
    for (int i = 0; i < best.length; i++) {
      if (best[i] < 0) {
        left.add(amounts.get(i));
      }
    }
    return left;
  }

  /// A word that nobody knows in front of an amount, where another of that unit was named: its name
  /// is not understood, so its place is not sure.
  Optional<String> unknownName(List<String> unknown) {
    for (int i = 0; i < best.length; i++) {
      List<String> before = amounts.get(i).before();
      if (best[i] < 0 || before.isEmpty() || !unknown.contains(before.getFirst())) {
        continue;
      }
      String unit = calculation.inputs().get(best[i]).unit();
      boolean others =
          IntStream.range(0, best.length)
              .filter(at -> best[at] >= 0)
              .filter(at -> calculation.inputs().get(best[at]).unit().equals(unit))
              .anyMatch(at -> sure(at) > 0);
      if (others && sure(i) == 0) {
        return Optional.of(before.getFirst());
      }
    }
    return Optional.empty();
  }

  private double sure(int at) {
    return named(amounts.get(at), calculation.named(best[at]));
  }

  /// Why an amount found no place where it is a height that has no air pressure.
  Optional<String> tooHigh(Amounted amount) {
    return IntStream.range(0, amount.bare() ? 0 : calculation.inputs().size())
        .mapToObj(i -> Bridge.tooHigh(calculation.named(i), amount.text()))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /// Numbers that look like a gravity and were taken for something else: `1.050` for degrees.
  int forcedCount() {
    int forced = 0;
    for (Taken each : taken()) {
      Named wanted = calculation.named(calculation.inputs().indexOf(each.input()));
      boolean spindle = SPINDLE.matcher(each.typed()).matches();
      boolean other = each.input().unit().equals("°C") || each.input().unit().equals("s");
      forced += spindle && other && !gravity(wanted) ? 1 : 0;
    }
    return forced;
  }

  /// Needed inputs that nothing was taken for.
  List<Input> missing() {
    List<Input> held = taken().stream().map(Taken::input).toList();
    return calculation.inputs().stream()
        .filter(input -> input.usual().isEmpty() && !input.text() && !held.contains(input))
        .toList();
  }

  private void search(int[] tried, int at, double score) {
    if (at == tried.length) {
      if (score > bestScore) {
        bestScore = score;
        best = tried.clone();
      }
      return;
    }
    // What is still to come can at most find a place each, named and exact.
    if (score + (tried.length - at) * (PLACED + NAMED + 4 * SHARED + EXACT + NEEDED + LIKELY)
        <= bestScore) {
      return;
    }
    for (int input = 0; input < calculation.inputs().size(); input++) {
      Optional<Place> place = places.get(at).get(input);
      if (place.isPresent() && free(tried, at, input)) {
        tried[at] = input;
        search(tried, at + 1, score + place.get().score() - turned(tried, at));
      }
    }
    tried[at] = -1;
    search(tried, at + 1, score);
  }

  private static boolean free(int[] tried, int at, int input) {
    for (int i = 0; i < at; i++) {
      if (tried[i] == input) {
        return false;
      }
    }
    return true;
  }

  /// Amounts before this one that stand at a later input; those with a usual value come last.
  private double turned(int[] tried, int at) {
    double turned = 0;
    for (int i = 0; i < at; i++) {
      if (tried[i] >= 0 && order(tried[i]) > order(tried[at])) {
        turned += TURNED;
      }
    }
    return turned;
  }

  /// The place of an input in the order of typing. What has a usual value comes last, unless it is
  /// an end of a course and so many amounts of its kind are given that it is given too.
  private int order(int input) {
    boolean needed = calculation.inputs().get(input).usual().isEmpty();
    return needed || whole(input) ? input : input + calculation.inputs().size();
  }

  private boolean whole(int input) {
    String unit = calculation.inputs().get(input).unit();
    if (!COURSES.contains(calculation.inputs().get(input).words())) {
      return false;
    }
    long asked = calculation.inputs().stream().filter(i -> i.unit().equals(unit)).count();
    long given =
        IntStream.range(0, amounts.size())
            .filter(at -> !amounts.get(at).bare() && places.get(at).get(input).isPresent())
            .count();
    return given >= asked;
  }

  /// Whether an amount right behind the name is what is reckoned, `draught line 2 m`, and the place
  /// is none that must be given.
  private boolean isAsked(Amounted amount, int at) {
    Input input = calculation.inputs().get(at);
    List<String> name = Vocabulary.split(calculation.name());
    boolean behindName = !amount.before().isEmpty() && name.contains(amount.before().getFirst());
    return behindName
        && calculation.inputs().stream().anyMatch(each -> each.usual().isEmpty())
        && !input.unit().isEmpty()
        && input.usual().isPresent()
        && !Vocabulary.split(input.words()).contains(amount.before().getFirst())
        && calculation.outputs().stream().anyMatch(out -> out.unit().equals(input.unit()));
  }

  /// @param typed the amount with all words beside it
  /// @param amount without those that only say what is reckoned
  private Optional<Place> place(Amounted typed, Amounted amount, int at) {
    Input input = calculation.inputs().get(at);
    if (input.text()) {
      return Optional.empty();
    }
    Named wanted = calculation.named(at);
    if (wanted.isDifference() && GRAVITY.matcher(amount.text()).matches()) {
      return Optional.empty();
    }
    double named = named(amount, wanted);
    if (Habit.never(typed, input, wanted, named > 0)) {
      return Optional.empty();
    }
    boolean aimed = wanted.symbol().equals("pH") && input.words().equals("target");
    double aim = aimed && Habit.mashPh(amount.text()) ? LIKELY : aimed ? AIMED : 0;
    double score =
        PLACED + named + course(amount, wanted) + (input.usual().isEmpty() ? NEEDED : aim);
    Optional<Bridge.Crossed> ions = Ions.cross(wanted, typed);
    if (ions.isPresent()) {
      return ions.map(c -> new Place(c.value(), c.how(), score + CROSSED));
    }
    if (wanted.read(amount.text()) instanceof Typed.Read) {
      return Optional.of(new Place(amount.text(), "", score + suits(amount, wanted)));
    }
    if (amount.bare() && gravity(wanted) && SHORT.matcher(amount.text()).matches()) {
      String whole = amount.text().replace(',', '.') + "0";
      return Optional.of(new Place(whole, "a specific gravity", score + BARE + LIKELY));
    }
    if (amount.bare() && named > 0 && percent(amount.text(), wanted)) {
      return Optional.of(new Place(amount.text() + " %", "per cent", score + CROSSED));
    }
    boolean gravity = GRAVITY.matcher(amount.text()).matches();
    if (amount.bare() && !gravity) {
      return Optional.empty();
    }
    return Bridge.cross(wanted, amount.text(), units)
        .map(crossed -> new Place(crossed.value(), crossed.how(), score + CROSSED));
  }

  /// `from 100 to 20`: where a course begins and ends is said in front of its amounts.
  private static double course(Amounted amount, Named wanted) {
    List<String> stem = wanted.unitName().map(name -> name.stem()).orElse(List.of());
    String last = stem.isEmpty() ? "" : stem.getLast();
    String nearest = amount.before().isEmpty() ? "" : amount.before().getFirst();
    boolean begins = nearest.equals("from") && BEGINS.contains(last);
    boolean ends = nearest.equals("to") && AIMS.contains(last);
    return begins || ends ? LIKELY : 0;
  }

  /// `6.5 aa` on a bag of hops is per cent.
  private static boolean percent(String text, Named wanted) {
    boolean alpha = wanted.unitName().filter(name -> name.stem().contains("alpha")).isPresent();
    return alpha && wanted.javaName().endsWith("Frac") && ALPHA.matcher(text).matches();
  }

  private static boolean gravity(Named wanted) {
    return wanted.symbol().equals("SG") || wanted.symbol().equals("°P");
  }

  private static double suits(Amounted amount, Named wanted) {
    boolean gravity = gravity(wanted);
    if (!amount.bare()) {
      boolean minutes = MINUTES.matcher(amount.text()).matches() && !wanted.symbol().equals("m");
      boolean degrees = wanted.symbol().equals("K") && !amount.text().endsWith("K");
      double habit = Bridge.saidInLitres(wanted) ? -1 : lasts(wanted) ? 1 : degrees ? -NEEDED : 0;
      return habit + (minutes ? EXACT / 2 : EXACT);
    }
    double score = BARE;
    if (GRAVITY.matcher(amount.text()).matches() == gravity) {
      score += gravity ? LIKELY : 0;
    } else {
      score -= gravity ? UNLIKELY : LIKELY;
    }
    return amount.before().contains("at") && wanted.symbol().equals("°C") ? score + LIKELY : score;
  }

  /// How long something lasts is what people mean by a time, before any property that is one.
  private static boolean lasts(Named wanted) {
    List<String> stem = wanted.unitName().map(name -> name.stem()).orElse(List.of());
    return !stem.isEmpty() && LASTING.contains(stem.getLast());
  }

  /// How well the words beside an amount are its name: `second doubt` is no `first doubt`.
  private static double named(Amounted amount, Named wanted) {
    List<String> stem = wanted.unitName().map(name -> name.stem()).orElse(List.of());
    double before = shared(amount.before(), stem, wanted);
    double behind = shared(amount.behind(), stem, wanted);
    return Math.max(before > 0 ? NAMED + before : 0, behind > 0 ? NAMED_BEHIND + behind : 0);
  }

  private static double shared(List<String> words, List<String> stem, Named wanted) {
    long in = stem.stream().filter(part -> holds(words, part)).count();
    boolean acidity = wanted.symbol().equals("pH") && words.contains("ph");
    return in > 0 ? in * SHARED - (stem.size() - in) * UNSHARED : acidity ? SHARED : 0;
  }

  private static boolean holds(List<String> words, String part) {
    return words.stream().anyMatch(word -> Phrases.same(word, Vocabulary.stem(part)));
  }
}
