package gylebook.simulate;

import gylebook.units.AnyUnit;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/// Everything here is allowed and must raise no alarm.
final class Kettle {
  private static final double CP_WATER_J_PER_KG_K = 4186;
  private static final double G_PER_KG = 1000;
  private static final double ZERO_C_KELVIN = 273.15;
  private static final double N10 = 0.65e3;
  private static final double[] TABLE = {1, 2, 3};

  private double wortC = 20;
  private double heldJ;

  @AnyUnit("a solver's vector mixes units")
  record Vector(double[] values, double weight) {}

  /// Ten components are a record's own business.
  record Many(int a, int b, int c, int d, int e, int f, int g, int h, double massKg, double ratio) {}

  double lossW(double lossWPerK, double roomC) {
    return lossWPerK * (wortC - roomC);
  }

  void heat(double stepSec, double dutyFrac, double powerW, double waterKg) {
    double netW = dutyFrac * powerW - lossW(1.5, 20);
    heldJ += netW * stepSec;
    double riseK = heldJ / (waterKg * CP_WATER_J_PER_KG_K);
    wortC = wortC + riseK;
    wortC += riseK;
  }

  double meanC(double roomC) {
    return (wortC + roomC) / 2;
  }

  double wortKelvin() {
    return wortC + ZERO_C_KELVIN;
  }

  double hopsG(double hopsKg, double extraG) {
    return Math.max(hopsKg * G_PER_KG, 0) + extraG;
  }

  double headPa(double densityKgPerM3, double gravityMPerSec2, double heightM) {
    return densityKgPerM3 * gravityMPerSec2 * heightM;
  }

  double speedMPerSec(double gravityMPerSec2, double heightM) {
    return Math.sqrt(2 * gravityMPerSec2 * heightM);
  }

  double areaM2(double radiusM) {
    return Math.PI * Math.pow(radiusM, 2);
  }

  double columnKg(double[] waterKg, int member) {
    return waterKg[member] + (member > 0 ? waterKg[0] : 0);
  }

  OptionalDouble coverM(double depthM) {
    double k = N10 * TABLE[0];
    return depthM > k ? OptionalDouble.of(depthM) : OptionalDouble.empty();
  }

  String say(long seed) {
    DoubleUnaryOperator half = x -> x / 2;
    return String.format(Locale.ROOT, "%.1f C, %s", half.applyAsDouble(wortC), new Random(seed));
  }
}
