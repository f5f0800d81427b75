package gylebook.telling;

import gylebook.recipe.Hop;
import gylebook.recipe.Recipe;
import gylebook.rig.Parameter;
import gylebook.units.AnyUnit;
import gylebook.units.Component;
import gylebook.units.Entered;
import gylebook.units.ReadingUnits;
import gylebook.units.Unit;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/// One value of a recipe or a rig as it is shown in its sentence and as it is filled.
///
/// Both sides are made from the value that stands at the path, so that every value shown can be
/// filled, and only with what its kind allows.
///
/// @param path where it stands
/// @param hint what it is
/// @param shown in the reader's units
/// @param typed as somebody typed it
/// @param kind `amount`, `choice` or `words`
/// @param choices of a choice
/// @param read makes a value of what is typed; the exception's sentence is the reader's
@AnyUnit("a value of any quantity")
record Blank(
    String path,
    String hint,
    String shown,
    String typed,
    String kind,
    List<String> choices,
    Function<String, Object> read) {

  /// What stands for a value that nobody gave.
  static final String NOT_SAID = "not said";

  private static final List<String> CLEARING = List.of("-", "none", NOT_SAID);

  private static final ClassValue<Optional<Method>> WORDS =
      new ClassValue<>() {
        @Override
        protected Optional<Method> computeValue(Class<?> type) {
          return Stream.of(type.getDeclaredMethods())
              .filter(method -> method.getName().equals("words") && method.getParameterCount() == 0)
              .findFirst();
        }
      };

  Blank {
    choices = List.copyOf(choices);
  }

  /// A reason why what was typed cannot stand.
  static final class Unfit extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String maybe;

    Unfit(String what, String maybe) {
      super(what);
      this.maybe = maybe;
    }

    String maybe() {
      return maybe;
    }
  }

  /// The blank of the value at a path.
  static Blank of(Object tree, String path, String hint, ReadingUnits units) {
    Object value = Component.at(tree, path);
    String name = path.substring(path.lastIndexOf('.') + 1);
    return switch (value) {
      case Entered entered when name.equals("amountNumber") ->
          anyAmount(path, hint, entered, units);
      case Entered entered -> amount(path, hint, entered, units);
      case Parameter parameter -> parameter(path, hint, name, parameter, units);
      case Optional<?> maybe -> optional(path, hint, name, maybe, units);
      case Double number -> number(path, hint, name, number, units);
      case String words when name.equals("readyBy") ->
          appointed(path, hint, words, Appointment::withDay);
      case String words when name.equals("doneBy") ->
          appointed(path, hint, words, Appointment::withHour);
      case String words -> words(path, hint, words);
      case Boolean yes -> yesOrNo(path, hint, yes);
      case Enum<?> one -> choice(path, hint, one);
      case Hop.When when -> when((Recipe) tree, path, hint, when, units);
      default -> throw new IllegalArgumentException(path + " holds " + value.getClass());
    };
  }

  Piece.Slot slot() {
    return new Piece.Slot(path, shown, typed, kind, choices, hint);
  }

  /// Whether what is typed is what stands there already, so that reading a value in other units and
  /// taking it back never moves it.
  boolean same(String text) {
    String stripped = text.strip();
    return stripped.equals(shown.strip()) || stripped.equals(typed.strip());
  }

  private static Blank amount(String path, String hint, Entered now, ReadingUnits units) {
    String shown = Amounts.shown(now, units);
    Unit usual = Amounts.over(shown, units.unit(now.unit().quantity()));
    return new Blank(
        path,
        hint,
        shown,
        now.asTyped(),
        "amount",
        List.of(),
        text -> Amounts.read(text, usual, path));
  }

  /// A mass, a volume or a count, whichever is typed; a bare number is what stands there now.
  private static Blank anyAmount(String path, String hint, Entered now, ReadingUnits units) {
    String shown = Amounts.shownSmall(now, units);
    Unit usual = Amounts.over(shown, Amounts.small(now.unit(), units));
    return new Blank(
        path,
        hint,
        shown,
        now.asTyped(),
        "amount",
        List.of(),
        text -> {
          Optional<Entered> other = Weighed.any(text.strip());
          return other.isPresent() ? other.get() : Amounts.count(text, usual, path);
        });
  }

  private static Blank optional(
      String path, String hint, String name, Optional<?> now, ReadingUnits units) {
    if (now.isPresent() && now.get() instanceof Parameter parameter) {
      Blank inner = parameter(path, hint, name, parameter, units);
      return inner.reading(
          text -> clears(text) ? Optional.empty() : Optional.of(inner.read().apply(text)));
    }
    Unit usual = Amounts.usual(name, insideUnit(name).quantity(), units);
    boolean measured = name.equals("stationKpa");
    String shown =
        now.map(Entered.class::cast)
            .map(said -> shownOptional(name, said, usual, units))
            .orElse(NOT_SAID);
    String typed = now.map(Entered.class::cast).map(Entered::asTyped).orElse(NOT_SAID);
    return new Blank(path, hint, shown, typed, "amount", List.of(), text -> null)
        .reading(
            text -> {
              if (clears(text)) {
                return Optional.empty();
              }
              // An empty field is more often a slip than a wish to aim at nothing.
              if (text.isBlank()) {
                throw new Unfit("Nothing is typed.", "Type an amount, or none to leave it open.");
              }
              return Optional.of(
                  measured
                      ? new Measured(name, Optional.of(usual), units).first(text)
                      : Amounts.read(text, usual, path));
            });
  }

  /// Water is driven off by the hour, and hops are as many months old as somebody said.
  private static String shownOptional(String name, Entered said, Unit usual, ReadingUnits units) {
    if (name.startsWith("aged")) {
      return said.unit().shown(said.inside());
    }
    return name.startsWith("evap") ? usual.shown(said.inside()) : units.shown(said);
  }

  private static boolean clears(String text) {
    return CLEARING.contains(text.strip());
  }

  private Blank reading(Function<String, Object> other) {
    return new Blank(path, hint, shown, typed, kind, choices, other);
  }

  private static Unit insideUnit(String name) {
    return Amounts.inside(name)
        .orElseThrow(() -> new IllegalArgumentException(name + " names no unit that is typed"));
  }

  private static Blank parameter(
      String path, String hint, String name, Parameter now, ReadingUnits units) {
    String shown = Amounts.shown(name, now.value(), units);
    String typed = now.asTyped().isEmpty() ? shown : now.asTyped();
    Measured measured = new Measured(name, over(name, shown, units), units);
    return new Blank(
        path, hint, shown, typed, "amount", List.of(), text -> measured.again(text, now));
  }

  private static Blank number(
      String path, String hint, String name, double now, ReadingUnits units) {
    String shown = Amounts.shown(name, now, units);
    return new Blank(
        path,
        hint,
        shown,
        shown,
        "amount",
        List.of(),
        text -> Amounts.number(text, name, over(name, shown, units)));
  }

  private static Optional<Unit> over(String name, String shown, ReadingUnits units) {
    return Amounts.inside(name)
        .map(inside -> Amounts.over(shown, Amounts.usual(name, inside.quantity(), units)));
  }

  private static Blank words(String path, String hint, String now) {
    String shown = now.isEmpty() ? NOT_SAID : now;
    return new Blank(
        path,
        hint,
        shown,
        shown,
        "words",
        List.of(),
        text -> text.strip().equals(NOT_SAID) ? "" : Amounts.clean(text));
  }

  /// A day or an hour, kept as typed; it is read to see that it can be.
  private static Blank appointed(
      String path, String hint, String now, Consumer<String> appointment) {
    return words(path, hint, now)
        .reading(
            text -> {
              if (clears(text)) {
                return "";
              }
              appointment.accept(text);
              return Amounts.clean(text);
            });
  }

  private static Blank yesOrNo(String path, String hint, boolean now) {
    return new Blank(
        path,
        hint,
        now ? "yes" : "no",
        now ? "yes" : "no",
        "choice",
        List.of("yes", "no"),
        text ->
            switch (text.strip()) {
              case "yes" -> true;
              case "no" -> false;
              default -> throw new Unfit("This is answered with yes or no.", "Type yes or no.");
            });
  }

  private static Blank choice(String path, String hint, Enum<?> now) {
    List<Enum<?>> all = List.of(now.getDeclaringClass().getEnumConstants());
    List<String> words = all.stream().map(Blank::spoken).toList();
    return new Blank(
        path,
        hint,
        spoken(now),
        spoken(now),
        "choice",
        words,
        text ->
            all.stream()
                .filter(one -> spoken(one).equals(text.strip()))
                .findFirst()
                .<Object>map(one -> one)
                .orElseThrow(
                    () ->
                        new Unfit(
                            "This is none of the choices.",
                            "Choose one of " + String.join(", ", words) + ".")));
  }

  /// The words an enum of recipe or rig gives for itself, else its name.
  static String spoken(Enum<?> one) {
    return WORDS
        .get(one.getDeclaringClass())
        .<String>map(
            method -> {
              try {
                return Objects.requireNonNull((String) method.invoke(one));
              } catch (ReflectiveOperationException failure) {
                throw new IllegalStateException("cannot ask " + one, failure);
              }
            })
        .orElse(one.name().toLowerCase(Locale.ROOT).replace('_', ' '));
  }

  private static Blank when(
      Recipe recipe, String path, String hint, Hop.When now, ReadingUnits units) {
    Moment moment = new Moment(recipe, units);
    return new Blank(
        path, hint, moment.words(now), moment.typed(now), "words", List.of(), moment::read);
  }
}
