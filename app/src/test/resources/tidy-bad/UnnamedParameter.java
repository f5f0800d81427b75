package gylebook.rig;

record UnnamedParameter(Parameter mass, Entered liquor) { // FAULT unit-name FAULT unit-name
  interface Parameter {}

  interface Entered {}
}
