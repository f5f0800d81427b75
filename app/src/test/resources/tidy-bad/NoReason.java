package gylebook.units;

@AnyUnit("") // FAULT unit-name
final class NoReason {
  double value;
}
