package gylebook.simulate;

final class WrongResult {
  double warmC;

  double riseC(double wortC, double roomC) {
    return wortC - roomC; // FAULT dimension
  }

  double heatJ(double powerW, double timeMin) {
    return powerW * timeMin; // FAULT dimension
  }

  double riseK(double heatJ, double capacityJPerK) {
    return capacityJPerK / heatJ; // FAULT dimension
  }

  void keep(double wortF) {
    warmC = wortF; // FAULT dimension
  }

  double massKg(double maltG) {
    double maltKg = maltG / 1000; // FAULT dimension
    return maltKg;
  }

  void add(double stepSec, double powerW) {
    double heldJ = powerW * stepSec;
    heldJ += powerW; // FAULT dimension
  }
}
