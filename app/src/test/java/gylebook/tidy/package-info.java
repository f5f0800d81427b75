/// The house rules, checked on the source by the compiler's own trees.
@NullMarked
package gylebook.tidy;

import org.jspecify.annotations.NullMarked;
