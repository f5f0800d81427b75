package gylebook.journal;

import gylebook.rig.Rig; // FAULT ladder
import gylebook.recipe.Recipe; // FAULT ladder

final class JournalSeesRig {}
