package gylebook.recipe;

import gylebook.rig.Rig; // FAULT ladder

final class RecipeSeesRig {}
