package gylebook.science;

import gylebook.units.AnyUnit;
import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/// The values of an input for which a function was fitted or measured, or which are usual, in the
/// unit of the parameter's name. It still answers beyond; whoever asked is then told so.
///
/// A {@link Validity} speaks for a whole class; this speaks for one input of one function.
@AnyUnit("ends in the unit of the parameter it stands at")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.PARAMETER)
public @interface Span {
  /// The lower end.
  double least();

  /// The upper end.
  double most();

  /// What the answer is worth beyond, as the end of a sentence.
  String beyond();
}
