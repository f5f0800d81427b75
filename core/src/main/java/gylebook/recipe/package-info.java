/// What the brewer wants to drink and what goes into it: no physics, and no rig.
///
/// Amounts are kept as typed ([gylebook.units.Entered]); figures of an analysis are plain numbers.
/// Front door: [gylebook.recipe.Recipe].
@NullMarked
package gylebook.recipe;

import org.jspecify.annotations.NullMarked;
