/// Where everything meets: the program's start, its settings and the wall clock.
///
/// It knows every room and hands each what it needs. It must not know how a number is computed or
/// how a page looks. Front door: [Gylebook].
@NullMarked
package gylebook.app;

import org.jspecify.annotations.NullMarked;
