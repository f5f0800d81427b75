/// Everything that happened, as entries that are only ever added.
///
/// It knows what an entry is and what a book promises, and must not know recipes, rigs, physics or
/// disks: papers are kept as the text they were written in. Front door: [gylebook.journal.Journal].
@NullMarked
package gylebook.journal;

import org.jspecify.annotations.NullMarked;
