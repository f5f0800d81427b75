package gylebook.reckon;

import gylebook.science.Reckoned;
import gylebook.science.Source;
import gylebook.science.Span;
import gylebook.science.Usually;
import gylebook.units.AnyUnit;
import gylebook.units.ReadingUnits;
import gylebook.units.Typed;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/// One function of the science room, offered by name: what it asks for, what it gives, where it is
/// from. Everything is read off the function itself, so there is no second description to go stale.
@AnyUnit("its inputs and results are in every unit")
public final class Calculation {
  private static final Pattern BARE = Pattern.compile("[-+0-9.,eE/ ]*");
  private final Method function;
  private final Reckoned offer;
  private final String name;
  private final String group;
  private final List<Named> names;
  private final List<Input> inputs;
  private final Ranges ranges;

  Calculation(Method function, Reckoned offer) {
    this.function = function;
    this.offer = offer;
    this.name = offer.name();
    this.group = inWords(function.getDeclaringClass());
    this.names =
        Arrays.stream(function.getParameters()).map(part -> Named.of(part.getName())).toList();
    this.inputs = inputs(function, names);
    this.ranges = new Ranges(function.getDeclaringClass());
  }

  /// Plain name: `boiling-point`.
  public String name() {
    return name;
  }

  /// The phenomenon it belongs to, in words: `boiling rise`.
  public String group() {
    return group;
  }

  private static String inWords(Class<?> phenomenon) {
    String type = phenomenon.getSimpleName();
    return type.replaceAll("(?<=[a-z])(?=[A-Z0-9])", " ").toLowerCase(Locale.ROOT);
  }

  /// One sentence: what it answers.
  public String says() {
    return offer.says();
  }

  /// The equation in plain characters.
  public String equation() {
    return offer.equation();
  }

  /// Where it holds.
  public String range() {
    return offer.range();
  }

  /// What it asks for, in the order of the equation.
  public List<Input> inputs() {
    return inputs;
  }

  /// What an input is called and how it is read, by its place.
  Named named(int place) {
    return names.get(place);
  }

  /// What it gives.
  public List<Output> outputs() {
    return Results.outputs(function.getName(), function.getReturnType());
  }

  /// Where it is from.
  public List<Origin> sources() {
    return Arrays.stream(function.getAnnotationsByType(Source.class))
        .map(source -> new Origin(source.key(), source.at(), source.trust().words()))
        .toList();
  }

  /// Reckons it from typed amounts; whatever is wrong is said in one sentence.
  public Reckoning reckon(Map<String, String> typed, ReadingUnits units) {
    Optional<String> stranger = stranger(typed);
    if (stranger.isPresent()) {
      return new Reckoning.Unanswered(stranger.get());
    }
    Object[] arguments = new Object[inputs.size()];
    List<Named> numbered = new ArrayList<>();
    List<Amount> amounts = new ArrayList<>();
    List<String> crossed = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      Input input = inputs.get(i);
      String text = given(input, typed);
      if (input.text()) {
        if (text == null) {
          return missing(input);
        }
        arguments[i] = text.strip();
        continue;
      }
      switch (number(input, names.get(i), text, units)) {
        case Figure.Known known -> {
          known.crossed().ifPresent(crossed::add);
          arguments[i] = fitting(known.amount().value(), function.getParameterTypes()[i]);
          numbered.add(names.get(i));
          amounts.add(names.get(i).amount(input.key(), known.amount().value(), units));
        }
        case Figure.Refused refused -> {
          return new Reckoning.Unanswered(refused.sentence());
        }
      }
    }
    return answer(arguments, numbered, amounts, crossed, units);
  }

  private Reckoning answer(
      Object[] arguments,
      List<Named> numbered,
      List<Amount> amounts,
      List<String> crossed,
      ReadingUnits units) {
    Object given;
    try {
      given = function.invoke(null, arguments);
    } catch (InvocationTargetException refused) {
      return new Reckoning.Unanswered(name() + " has no answer: " + reason(refused));
    } catch (IllegalAccessException hidden) {
      throw new IllegalStateException(function + " is hidden", hidden);
    }
    if (given == null) {
      return new Reckoning.Unanswered(name() + " has no answer for these values.");
    }
    Results results = new Results(function, given, units);
    for (Amount amount : results.amounts()) {
      if (!Double.isFinite(amount.value())) {
        return new Reckoning.Unanswered(tooFar(amount.name(), amounts));
      }
    }
    List<Named> all = new ArrayList<>(numbered);
    all.addAll(results.names());
    List<Amount> held = new ArrayList<>(amounts);
    held.addAll(results.amounts());
    List<String> cautions = new ArrayList<>(beyond(arguments, units));
    cautions.addAll(ranges.cautions(all, held, units));
    List<String> remarks = new ArrayList<>(crossed);
    remarks.addAll(results.remarks());
    return new Reckoning.Answer(amounts, results.amounts(), remarks, cautions, sources());
  }

  /// Why a result is no finite number: an input is too far from 1, up or down.
  private String tooFar(String result, List<Amount> amounts) {
    String words = name() + " has no answer: " + result + " comes out as no finite number";
    return amounts.stream()
        .filter(amount -> amount.value() != 0)
        .max(Comparator.comparingDouble(amount -> Math.abs(Math.log10(Math.abs(amount.value())))))
        .map(far -> words + ", for " + far.name() + " is " + far.value() + " " + far.unit())
        .map(said -> said.strip() + "; what is reckoned must stay below 1.8e308.")
        .orElse(words + ".");
  }

  /// What to be careful about in single inputs.
  private List<String> beyond(Object[] arguments, ReadingUnits units) {
    Parameter[] parts = function.getParameters();
    List<String> cautions = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      Span span = parts[i].getAnnotation(Span.class);
      if (span == null || !(arguments[i] instanceof Number given)) {
        continue;
      }
      double value = given.doubleValue();
      if (!(value >= span.least() && value <= span.most())) {
        cautions.add(
            inputs.get(i).words()
                + " is "
                + names.get(i).typed(value, units)
                + ", outside "
                + names.get(i).typed(span.least(), units)
                + " to "
                + names.get(i).typed(span.most(), units)
                + ": "
                + span.beyond()
                + ".");
      }
    }
    return cautions;
  }

  /// A number asked for: known, or refused with a sentence.
  private sealed interface Figure {
    /// @param crossed in a sentence what was done to an amount of another kind
    record Known(Amount amount, Optional<String> crossed) implements Figure {
      Known(Amount amount) {
        this(amount, Optional.empty());
      }
    }

    record Refused(String sentence) implements Figure {}
  }

  private Figure number(Input input, Named named, @Nullable String text, ReadingUnits units) {
    if (text == null) {
      return input.usual().isPresent()
          ? new Figure.Known(plain(input, input.usual().getAsDouble()))
          : new Figure.Refused(missing(input).sentence());
    }
    return switch (named.read(text)) {
      case Typed.Read read -> new Figure.Known(plain(input, named.number(read)));
      case Typed.Unclear unclear ->
          crossed(input, named, text, units)
              .orElseGet(() -> new Figure.Refused(input.key() + ": " + unclear.sentence()));
    };
  }

  /// Liquor in litres where its mass is asked for, an altitude where its pressure is; a bare number
  /// is neither.
  private static Optional<Figure> crossed(
      Input input, Named named, String text, ReadingUnits units) {
    String said = text.strip();
    if (BARE.matcher(said).matches()) {
      return Optional.empty();
    }
    return Bridge.cross(named, said, units)
        .filter(crossed -> named.read(crossed.value()) instanceof Typed.Read)
        .map(
            crossed ->
                new Figure.Known(
                    plain(input, named.number((Typed.Read) named.read(crossed.value()))),
                    Optional.of(
                        "%s is %s: %s.".formatted(input.key(), crossed.value(), crossed.how()))));
  }

  private static Amount plain(Input input, double value) {
    return new Amount(input.key(), value, input.unit(), "");
  }

  private static Object fitting(double value, Class<?> type) {
    return type == int.class ? (Object) (int) Math.rint(value) : (Object) value;
  }

  private Reckoning.Unanswered missing(Input input) {
    String unit = input.unit().isEmpty() ? "" : " in " + input.unit();
    return new Reckoning.Unanswered(
        name() + " needs " + input.key() + unit + "; write " + input.key() + "=...");
  }

  private @Nullable String given(Input input, Map<String, String> typed) {
    String byKey = typed.get(input.key());
    return byKey == null ? typed.get(input.javaName()) : byKey;
  }

  Optional<String> stranger(Map<String, String> typed) {
    for (String key : typed.keySet()) {
      if (inputs.stream().noneMatch(i -> i.key().equals(key) || i.javaName().equals(key))) {
        String keys = inputs.stream().map(Input::key).collect(Collectors.joining(", "));
        List<String> near = NearNames.of(key, inputs.stream().map(Input::key).toList());
        String maybe = near.isEmpty() ? "" : " Maybe you mean " + near.getFirst() + ".";
        return Optional.of(name() + " knows no '" + key + "'; it asks for " + keys + "." + maybe);
      }
    }
    return inputs.stream()
        .filter(i -> !i.key().equals(i.javaName()))
        .filter(i -> typed.containsKey(i.key()) && typed.containsKey(i.javaName()))
        .findFirst()
        .map(i -> i.key() + " is given twice, as '" + i.key() + "' and '" + i.javaName() + "'.");
  }

  private static String reason(InvocationTargetException refused) {
    Throwable cause = refused.getCause();
    if (cause instanceof Error fault) {
      throw fault;
    }
    String message = cause == null ? null : cause.getMessage();
    return message == null || message.isBlank() ? "the values do not fit together." : message;
  }

  private static List<Input> inputs(Method function, List<Named> names) {
    Map<String, Integer> stems = new HashMap<>();
    names.forEach(named -> stems.merge(named.stem(), 1, Integer::sum));
    List<Input> inputs = new ArrayList<>();
    Parameter[] parts = function.getParameters();
    for (int i = 0; i < parts.length; i++) {
      Named named = names.get(i);
      boolean alone = stems.getOrDefault(named.stem(), 0) == 1;
      Usually usual = parts[i].getAnnotation(Usually.class);
      inputs.add(
          new Input(
              alone ? named.stem() : named.whole(),
              parts[i].getName(),
              named.symbol(),
              usual == null ? OptionalDouble.empty() : OptionalDouble.of(usual.value()),
              parts[i].getType() == String.class));
    }
    return List.copyOf(inputs);
  }
}
