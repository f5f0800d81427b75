/// Pure computing: no disk, no wire, no clock. What is not required here cannot be imported.
module gylebook.core {
  requires static transitive org.jspecify;
  requires hipparchus.core;
  requires hipparchus.optim;

  exports gylebook.reckon;
  exports gylebook.science;
  exports gylebook.units;
}
