package gylebook.science;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/// Offers a function as a single calculation: in the terminal, and wherever a number says why.
///
/// Inputs and result take their words and their unit from the names in the code: `wortC` is asked
/// for as `wort` and is a temperature. So a function offered here needs no second description.
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Reckoned {
  /// Plain name, lower case with hyphens: `boiling-point`.
  String name();

  /// One sentence: what it answers.
  String says();

  /// The equation in plain characters: `Q = UA (T - Troom)`.
  String equation();

  /// Where it holds, and what it does outside: `0 to 100 C; refused outside`.
  String range();
}
