package gylebook.recipe;

final class UpByFullName {
  gylebook.simulate.Simulator simulator; // FAULT ladder
}
