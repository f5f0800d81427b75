package gylebook.rig;

import java.util.List;

record Unnamed(double volume, List<String> names) { // FAULT unit-name
  static final double LIMIT = 3; // FAULT unit-name

  double mass() { // FAULT unit-name
    return 1;
  }

  void heat(double power) {} // FAULT unit-name

  void columns(double[] wort) {} // FAULT unit-name

  double lossPerJPerKg() { // FAULT unit-name
    return 2;
  }
}
