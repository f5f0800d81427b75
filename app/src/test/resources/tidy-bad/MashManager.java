package gylebook.simulate;

final class MashManager { // FAULT type-name
  record BrewInfo() {} // FAULT type-name

  interface KettleImpl {} // FAULT type-name
}
