/// Files in and out: our own form, the open JSON and XML recipe standards, and what was guessed,
/// lost or kept on the way.
///
/// It must not know the store, the wire or the screen, and it works nothing out that a science room
/// can. Nothing half-read leaves it: a file is understood whole, or one sentence says why not.
/// Front doors: [gylebook.interchange.RecipeReader], [gylebook.interchange.RecipeWriter],
/// [gylebook.interchange.OwnFiles].
@NullMarked
package gylebook.interchange;

import org.jspecify.annotations.NullMarked;
