package gylebook.simulate;

final class MixedSums {
  double totalKg(double waterKg, double volumeL) {
    return waterKg - volumeL; // FAULT dimension
  }

  double sumC(double wortC, double roomC) {
    return wortC + roomC; // FAULT dimension
  }

  boolean hotter(double wortC, double roomF) {
    return wortC > roomF; // FAULT dimension
  }

  double largerKg(double waterKg, double maltG) {
    return Math.max(waterKg, maltG); // FAULT dimension
  }
}
