package gylebook.web;

import gylebook.recipe.Recipe;
import gylebook.rig.Rig;

/// One gyle as the page shows it.
///
/// @param gyleId its name in the address
/// @param recipe what is brewed
/// @param rig on what
public record Gyle(String gyleId, Recipe recipe, Rig rig) {}
