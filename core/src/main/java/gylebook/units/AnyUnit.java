package gylebook.units;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/// Marks the few types whose numbers carry no fixed unit (unit tables, parameters, solver vectors).
///
/// The house-rule test asks every other `double` to end in its unit and skips what is marked here.
@Documented
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.TYPE)
public @interface AnyUnit {
  /// Why this type cannot name one unit.
  String value();
}
