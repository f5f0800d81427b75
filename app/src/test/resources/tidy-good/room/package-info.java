/// A room of its own.
///
/// It knows kettles. It must not know pages. Front door: [Kettle].
@NullMarked
package gylebook.simulate;

import org.jspecify.annotations.NullMarked;
