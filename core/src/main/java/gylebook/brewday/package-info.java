/// A brew as the fold of its entries: commands in, verdicts out.
///
/// It knows what may happen to a gyle and in which order, and follows a day under way by what was
/// noted of it. It must not know disks, clocks, screens or the form of files. Front doors:
/// [gylebook.brewday.Book]; [gylebook.brewday.Follower] for the day.
@NullMarked
package gylebook.brewday;

import org.jspecify.annotations.NullMarked;
