/// Files in and out: foreign text, and what was lost on the way.
///
/// It must not know the store, the wire or the screen. Front door: [gylebook.interchange.OwnFiles].
@NullMarked
package gylebook.interchange;

import org.jspecify.annotations.NullMarked;
