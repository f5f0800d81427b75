package gylebook.simulate;

final class WrongArgument {
  record Water(double massKg, double waterC) {}

  Water make(double volumeL, double waterF) {
    return new Water(volumeL, 20); // FAULT dimension
  }

  double heatW(double lossWPerK, double differenceK) {
    return lossWPerK * differenceK;
  }

  void use(double wortC) {
    heatW(3, wortC); // FAULT dimension

  }
}
