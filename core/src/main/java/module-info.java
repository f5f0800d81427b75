/// Pure computing: no disk, no wire, no clock. What is not required here cannot be imported.
module gylebook.core {
  requires static transitive org.jspecify;
  requires hipparchus.core;
  requires hipparchus.optim;

  exports gylebook.brewday;
  exports gylebook.estimate;
  exports gylebook.journal;
  exports gylebook.plan;
  exports gylebook.recipe;
  exports gylebook.reckon;
  exports gylebook.rig;
  exports gylebook.science;
  exports gylebook.simulate;
  exports gylebook.telling;
  exports gylebook.units;
}
