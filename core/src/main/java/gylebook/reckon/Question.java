package gylebook.reckon;

import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import gylebook.units.TypedLine;
import gylebook.units.TypedLine.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Understands a line in plain words: `boiling point at 1200 m`, `strike 4.4 kg 66 C 15 L`.
///
/// The words find the calculation, the amounts find their inputs by the words beside them, their
/// units and their order. What was taken for what is part of the answer, so nothing is guessed in
/// silence; what is not understood is said in one sentence.
@AnyUnit("reads amounts of every unit")
public final class Question {
  private static final double LEFT = 0.5;
  private static final double UNPLACED = 0.2;
  private static final double MISSING = 0.12;
  private static final int TRIED_MOST = 12;
  private static final int SHOWN_MOST = 4;
  private static final int AMOUNTS_MOST = 9;
  private static final Vocabulary WORDS = new Vocabulary(Reckoner.all());
  private static final Set<String> SYMBOLS =
      Stream.concat(
              Said.UNITS.stream(),
              Reckoner.all().stream()
                  .flatMap(calculation -> calculation.inputs().stream())
                  .map(Input::unit)
                  .filter(unit -> !unit.isEmpty()))
          .collect(Collectors.toCollection(TreeSet::new));

  private final ReadingUnits units;
  private final List<String> words = new ArrayList<>();
  private final List<String> raw = new ArrayList<>();
  private final Map<String, String> asTyped = new LinkedHashMap<>();
  private final List<Fit.Amounted> amounts = new ArrayList<>();
  private final Map<String, String> given = new LinkedHashMap<>();
  private final List<String> remarks = new ArrayList<>();
  private final List<String> unused = new ArrayList<>();
  private final Optional<String> readings;
  private Optional<String> odd = Optional.empty();

  private Question(ReadingUnits units, Optional<String> readings) {
    this.units = units;
    this.readings = readings;
  }

  /// Reads a line.
  public static Asked read(String line, ReadingUnits units) {
    if (line.isBlank()) {
      return new Asked.Unclear(
          "Nothing is asked yet; write for example 'boiling point at 1200 m'.", List.of());
    }
    if (line.length() > TypedLine.LENGTH_MOST) {
      return new Asked.Unclear(
          "That is too long: "
              + line.length()
              + " characters, of which "
              + TypedLine.LENGTH_MOST
              + " are read.",
          List.of());
    }
    Question question = new Question(units, Said.readings(line));
    question.take(TypedLine.pieces(Said.plain(Said.withoutReadings(line)), SYMBOLS));
    return question.answer();
  }

  private void take(List<Piece> pieces) {
    Beside beside = new Beside(pieces);
    for (int i = 0; i < pieces.size(); i++) {
      boolean named = i + 2 < pieces.size() && pieces.get(i + 1) instanceof Piece.Equals;
      switch (pieces.get(i)) {
        case Piece.Word(String key) when named -> {
          String value = text(pieces.get(i + 2));
          if (given.put(key.toLowerCase(Locale.ROOT), value) != null) {
            odd = Optional.of(key + " is given twice.");
          }
          i += 2;
        }
        case Piece.Word(String text) -> {
          raw.add(text);
          List<String> split = Vocabulary.split(text);
          words.addAll(split);
          split.forEach(word -> asTyped.put(word, split.size() == 1 ? text : word));
        }
        case Piece.Figure(String text, boolean bare) ->
            amounts.add(new Fit.Amounted(text, bare, beside.before(i), beside.behind(i)));
        case Piece.Odd(String text) ->
            odd = Optional.of("'" + text + "' begins like an amount and is none.");
        case Piece.Equals _ ->
            odd = Optional.of("An equals sign stands between a name and its value: malt=4.4 kg.");
      }
    }
  }

  private static String text(Piece piece) {
    return switch (piece) {
      case Piece.Word(String text) -> text;
      case Piece.Figure(String text, _) -> text;
      case Piece.Odd(String text) -> text;
      case Piece.Equals _ -> "=";
    };
  }

  private Asked answer() {
    if (odd.isPresent()) {
      return new Asked.Unclear(odd.get(), List.of());
    }
    for (Fit.Amounted amount : amounts) {
      if (amount.bare() && amount.behind().stream().anyMatch(WORDS::strange)) {
        return new Asked.Unclear(amount.strangeUnit(), List.of());
      }
    }
    if (amounts.size() > AMOUNTS_MOST) {
      return new Asked.Unclear(
          "That holds " + amounts.size() + " amounts; no calculation takes more than nine.",
          List.of());
    }
    Optional<Calculation> plainly = byName();
    spell();
    List<Candidate> candidates = spread(candidates(plainly), plainly);
    boolean slight = plainly.isEmpty() && words.stream().allMatch(Vocabulary::slight);
    if (candidates.isEmpty() || (slight && !amounts.isEmpty())) {
      return unknown();
    }
    Candidate found = Candidate.meant(candidates);
    Candidate first = plainly.isPresent() ? found : found.orHearing(candidates);
    List<Calculation> others = first.others(candidates, SHOWN_MOST);
    long known = words.stream().filter(word -> !Vocabulary.idle(word)).count();
    boolean text = first.calculation().inputs().stream().anyMatch(Input::text);
    boolean done = !amounts.isEmpty() && first.fit().missing().isEmpty();
    boolean strange = unused.size() >= known + (done ? 1 : 0) && !text;
    return plainly.isEmpty() && (first.words() < Candidate.SURE || strange)
        ? torn(candidates)
        : meant(first, others);
  }

  /// A name of the catalogue stands in the line as it is.
  private Optional<Calculation> byName() {
    for (String word : raw) {
      if (word.contains("-") || raw.size() == 1) {
        Optional<Calculation> named = Reckoner.named(word.toLowerCase(Locale.ROOT));
        if (named.isPresent()) {
          return named;
        }
      }
    }
    return Optional.empty();
  }

  /// Reads misspelt words as the known ones they are near to, and says so.
  private void spell() {
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      if (Vocabulary.idle(word) || WORDS.knows(word)) {
        continue;
      }
      Optional<String> near = WORDS.near(word);
      Optional<List<String>> parts = near.isPresent() ? Optional.empty() : WORDS.parts(word);
      if (parts.isPresent()) {
        String apart = String.join(" ", parts.get());
        remarks.add("'" + typed(word) + "' was read as '" + apart + "'.");
        words.set(i, parts.get().getFirst());
        words.add(i + 1, parts.get().getLast());
      } else if (near.isPresent()) {
        remarks.add("'" + typed(word) + "' was read as '" + near.get() + "'.");
        words.set(i, near.get());
      } else {
        unused.add(word);
      }
    }
    words.removeAll(unused);
    if (words.stream().allMatch(Vocabulary::idle) && raw.stream().anyMatch(Said::isFormula)) {
      words.add("salt");
    }
  }

  private List<Candidate> candidates(Optional<Calculation> plainly) {
    List<Calculation> tried = plainly.map(List::of).orElseGet(Reckoner::all);
    record Weighed(Calculation calculation, double words) {}
    Vocabulary.Heard heard = Vocabulary.heard(words);
    return tried.stream()
        .map(each -> new Weighed(each, plainly.isPresent() ? 2 : WORDS.fit(each, heard)))
        .filter(each -> each.words() > 0)
        .sorted(Comparator.comparingDouble(each -> -each.words()))
        .limit(TRIED_MOST)
        .map(each -> fitted(each.calculation(), each.words()))
        .sorted(Comparator.comparingDouble(each -> -each.score()))
        .toList();
  }

  /// Where nothing takes all amounts, two may be meant as one: `5 g in 20 L` is a dose.
  private List<Candidate> spread(List<Candidate> plain, Optional<Calculation> plainly) {
    List<Fit.Amounted> typed = List.copyOf(amounts);
    List<Spread> spreads = Candidate.anyTakesAll(plain) ? List.of() : Spread.of(typed);
    for (Spread spread : spreads) {
      amounts.clear();
      amounts.addAll(spread.amounts());
      List<Candidate> joined = candidates(plainly);
      if (Candidate.anyTakesAll(joined)) {
        remarks.add(spread.says());
        return joined;
      }
    }
    amounts.clear();
    amounts.addAll(typed);
    return plain;
  }

  private Set<String> deaf(Calculation calculation) {
    return words.stream()
        .filter(word -> !Vocabulary.slight(word) && !WORDS.concerns(calculation, word))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Candidate fitted(Calculation calculation, double words) {
    Fit fit = new Fit(calculation, amounts, given.keySet(), units);
    long named = fit.missing().stream().filter(input -> given.containsKey(input.key())).count();
    boolean placed = readings.isEmpty() || calculation.inputs().stream().anyMatch(Input::text);
    double meant = placed ? words : words * UNPLACED;
    double score =
        meant
            - LEFT * (fit.left().size() + fit.forcedCount() + (placed ? 0 : 1))
            - MISSING * (fit.missing().size() - (double) named);
    return new Candidate(calculation, meant, score, fit, deaf(calculation));
  }

  private Asked unknown() {
    if (words.stream().allMatch(Vocabulary::slight)
        && unused.stream().allMatch(Vocabulary::slight)) {
      return new Asked.Unclear(
          "That is an amount without a question; say what to reckon from it, as in 'plato 1.048'.",
          List.of());
    }
    String what =
        (unused.isEmpty() ? words : unused)
            .stream()
                .filter(word -> !Vocabulary.idle(word))
                .map(this::typed)
                .collect(Collectors.joining(" "));
    return new Asked.Unclear(
        "'" + what + "' is nothing that can be reckoned here; the list shows what can.", List.of());
  }

  /// A word as it was typed, with its ending.
  private String typed(String word) {
    return asTyped.getOrDefault(word, word);
  }

  private static Asked torn(List<Candidate> candidates) {
    return new Asked.Unclear(
        candidates.size() == 1
            ? "These words are near to one calculation and do not fit it well;"
                + " take it or say it with other words."
            : "These words fit several calculations and none well;"
                + " choose one or say it with other words.",
        candidates.stream().limit(SHOWN_MOST + 2L).map(Candidate::calculation).toList());
  }

  private Asked meant(Candidate chosen, List<Calculation> others) {
    Calculation calculation = chosen.calculation();
    Fit fit = chosen.fit();
    List<Taken> taken = new ArrayList<>(fit.taken());
    texts(calculation).forEach(taken::add);
    Optional<String> fault = named(calculation, taken);
    if (fault.isPresent()) {
      return new Asked.Unclear(fault.get(), List.of(calculation));
    }
    if (!fit.left().isEmpty()) {
      Fit.Amounted left = fit.left().getFirst();
      String sentence = fit.tooHigh(left).orElseGet(() -> Wants.homeless(calculation, left));
      return new Asked.Unclear(sentence, near(chosen, others));
    }
    words.stream()
        .filter(word -> word.length() == 1 && !Vocabulary.idle(word))
        .filter(letter -> !WORDS.concerns(calculation, letter))
        .forEach(letter -> remarks.add("'" + typed(letter) + "' was not used."));
    Optional<String> unknown = fit.unknownName(unused);
    if (unknown.isPresent()) {
      String sentence =
          "'%s' in front of an amount is nothing that %s asks for; %s."
              .formatted(typed(unknown.get()), calculation.name(), Wants.asks(calculation));
      return new Asked.Unclear(sentence, near(chosen, others));
    }
    unused.forEach(word -> remarks.add("'" + typed(word) + "' was not used."));
    return new Asked.Meant(calculation, taken, remarks, others, Wants.missing(calculation, taken));
  }

  /// Inputs given by their names, as `malt=4.4 kg`.
  private Optional<String> named(Calculation calculation, List<Taken> taken) {
    for (Map.Entry<String, String> each : given.entrySet()) {
      Optional<Input> input =
          calculation.inputs().stream()
              .filter(
                  i ->
                      i.key().equals(each.getKey())
                          || i.javaName().toLowerCase(Locale.ROOT).equals(each.getKey()))
              .findFirst();
      if (input.isEmpty()) {
        return calculation.stranger(Map.of(each.getKey(), each.getValue()));
      }
      if (taken.stream().anyMatch(t -> t.input().equals(input.get()))) {
        return Optional.of(input.get().key() + " is given twice.");
      }
      taken.add(new Taken(input.get(), each.getValue(), each.getValue(), ""));
    }
    return Optional.empty();
  }

  /// A calculation that asks for words gets those that nothing else knew: a formula.
  private List<Taken> texts(Calculation calculation) {
    List<Taken> texts = new ArrayList<>();
    if (readings.isPresent()) {
      calculation.inputs().stream()
          .filter(input -> input.text() && !given.containsKey(input.key()))
          .findFirst()
          .ifPresent(input -> texts.add(new Taken(input, readings.get(), readings.get(), "")));
    }
    Set<String> free = new LinkedHashSet<>();
    for (String word : raw) {
      boolean spoken = Vocabulary.split(word).stream().allMatch(WORDS::knows);
      boolean misspelt =
          word.chars().allMatch(Character::isLowerCase) && WORDS.near(word).isPresent();
      if (!spoken && !misspelt && !Vocabulary.idle(word.toLowerCase(Locale.ROOT))) {
        free.add(word);
      }
    }
    for (Input input : calculation.inputs()) {
      if (texts.stream().anyMatch(taken -> taken.input().equals(input))) {
        continue;
      }
      Optional<String> salt =
          input.text() && free.isEmpty()
              ? Said.formula(String.join(" ", raw)).or(() -> Said.formula(String.join(" ", words)))
              : Optional.empty();
      salt.ifPresent(formula -> texts.add(new Taken(input, formula, formula, "")));
      if (input.text() && !free.isEmpty() && !given.containsKey(input.key())) {
        String word = free.iterator().next();
        free.remove(word);
        unused.removeAll(Vocabulary.split(word));
        remarks.removeIf(
            remark ->
                Vocabulary.split(word).stream()
                    .anyMatch(w -> remark.startsWith("'" + typed(w) + "' was read")));
        texts.add(new Taken(input, word, word, ""));
      }
    }
    return texts;
  }

  private static List<Calculation> near(Candidate chosen, List<Calculation> others) {
    List<Calculation> near = new ArrayList<>(List.of(chosen.calculation()));
    near.addAll(others);
    return near;
  }
}
