/// Plans and reckonings in sentences and reading units, the same for every face.
///
/// It must not know files, wires or screens. Front door: [gylebook.telling.Report],
/// [gylebook.telling.Shown].
@NullMarked
package gylebook.telling;

import org.jspecify.annotations.NullMarked;
