/// The journal on disk: one file, append only, on stable storage before anything is acknowledged.
///
/// It knows SQL and how an event is spelled in the file, and must not know what an event means.
/// Front door: [gylebook.store.DiskJournal].
@NullMarked
package gylebook.store;

import org.jspecify.annotations.NullMarked;
