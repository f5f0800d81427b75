package gylebook.science;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/// Where an equation or its constants come from. The page shows it under "why this number".
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(Source.All.class)
public @interface Source {
  /// The entry in `docs/sources.bib`.
  String key();

  /// The place in it: equation, table, page.
  String at() default "";

  /// How we came to know it.
  Trust trust();

  /// Holds several sources of one function.
  @Documented
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  @interface All {
    /// The sources.
    Source[] value();
  }
}
