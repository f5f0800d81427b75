package gylebook.science;

import org.hipparchus.analysis.polynomials.PolynomialFunction;

/// Density of alcohol in water, and strength by mass from strength by volume.
///
/// One coefficient of the law is copied about with a wrong ending (C(2,3) as ...933 for ...993).
public final class EthanolWater {
  private static final PolynomialFunction MIXED_AT_20 =
      new PolynomialFunction(
          9.982012300e2,
          -1.929769495e2,
          3.891238958e2,
          -1.668103923e3,
          1.352215441e4,
          -8.829278388e4,
          3.062874042e5,
          -6.138381234e5,
          7.470172998e5,
          -5.478461354e5,
          2.234460334e5,
          -3.903285426e4);
  private static final PolynomialFunction WATER =
      new PolynomialFunction(
          0,
          -2.0618513e-1,
          -5.2682542e-3,
          3.6130013e-5,
          -3.8957702e-7,
          7.1693540e-9,
          -9.9739231e-11);
  private static final PolynomialFunction[] MIXED_BY_WARMTH = {
    new PolynomialFunction(
        0,
        1.693443461530087e-1,
        -1.046914743455169e1,
        7.196353469546523e1,
        -7.047478054272792e2,
        3.924090430035045e3,
        -1.210164659068747e4,
        2.248646550400788e4,
        -2.605562982188164e4,
        1.852373922069467e4,
        -7.420201433430137e3,
        1.285617841998974e3),
    new PolynomialFunction(
        0,
        -1.193013005057010e-2,
        2.517399633803461e-1,
        -2.170575700536993,
        1.353034988843029e1,
        -5.029988758547014e1,
        1.096355666577570e2,
        -1.422753946421155e2,
        1.080435942856230e2,
        -4.414153236817392e1,
        7.442971530188783),
    new PolynomialFunction(
        0,
        -6.802995733503803e-4,
        1.876837790289664e-2,
        -2.002561813734156e-1,
        1.022992966719220,
        -2.895696483903638,
        4.810060584300675,
        -4.672147440794683,
        2.458043105903461,
        -5.411227621436812e-1),
    new PolynomialFunction(
        0,
        4.075376675622027e-6,
        -8.763058573471110e-6,
        6.515031360099368e-6,
        -1.515784836987210e-6),
    new PolynomialFunction(0, -2.788074354782409e-8, 1.345612883493354e-8)
  };
  private static final double SCALE_C = 20;

  /// Water and pure alcohol at 20 C after the same law.
  static final double WATER_KG_PER_M3 = densityKgPerM3(0, SCALE_C);

  static final double ETHANOL_KG_PER_M3 = densityKgPerM3(1, SCALE_C);

  private EthanolWater() {}

  /// Density of a mixture of alcohol and water.
  ///
  /// `rho = A1 + sum A_k p^(k-1) + sum B_k (t-20)^k + sum C_ik p^k (t-20)^i`, 54 coefficients
  ///
  /// - Valid: any strength, -20 to 40 C; refused outside.
  /// - Source: the international alcoholometric tables; part of the coefficients read in the EU
  ///   directive, all of them in several independent open codes.
  @Reckoned(
      name = "alcohol-water-density",
      says = "How heavy a mixture of alcohol and water is.",
      equation = "rho = A1 + sum A_k p^(k-1) + sum B_k (t-20)^k + sum C_ik p^k (t-20)^i",
      range = "any strength, -20 to 40 C; refused outside")
  @Source(key = "oiml-r22", at = "general formula", trust = Trust.READ)
  public static double densityKgPerM3(double ethanolFrac, @Usually(20) double mixtureC) {
    Require.within("alcohol by mass as a share", ethanolFrac, 0, 1);
    Require.within("temperature of the mixture in C", mixtureC, -20, 40);
    double p = ethanolFrac;
    double warmer = mixtureC - SCALE_C;
    double rho = MIXED_AT_20.value(p);
    if (warmer == 0) {
      return rho;
    }
    double power = 1;
    for (PolynomialFunction coefficients : MIXED_BY_WARMTH) {
      power *= warmer;
      rho += power * coefficients.value(p);
    }
    return rho + WATER.value(warmer);
  }

  /// Specific gravity of a mixture against water of a temperature.
  ///
  /// `S = rho(p, t) / rho(0, t_reference)`: pure alcohol is 0.7907 at 20/20 C and 0.7938 at 60/60
  /// F; the two are often mixed up.
  ///
  /// - Valid: as the density.
  /// - Source: as the density, and a definition.
  @Reckoned(
      name = "alcohol-gravity",
      says = "The specific gravity of a mixture of alcohol and water.",
      equation = "S = rho(p, t) / rho(0, t_reference)",
      range = "any strength, -20 to 40 C; refused outside")
  @Source(key = "oiml-r22", at = "general formula", trust = Trust.READ)
  public static double mixtureSg(
      double ethanolFrac, @Usually(20) double mixtureC, @Usually(20) double referenceC) {
    double gravity = densityKgPerM3(ethanolFrac, mixtureC) / densityKgPerM3(0, referenceC);
    return gravity;
  }

  /// Strength by volume at 20 C from strength by mass.
  ///
  /// `q = p rho(p, 20) / rho(1, 20)`
  ///
  /// - Valid: 0 to 1; refused outside.
  /// - Source: the same law; this is its definition of strength by volume.
  @Reckoned(
      name = "alcohol-by-volume",
      says = "The strength by volume at 20 C of alcohol in water, from its strength by mass.",
      equation = "q = p rho(p, 20) / rho(1, 20)",
      range = "alcohol in water without extract; for beer use beer-alcohol-by-volume")
  @Source(key = "oiml-r22", at = "general formula", trust = Trust.READ)
  public static double volumeFrac(double byMassFrac) {
    return byMassFrac * densityKgPerM3(byMassFrac, SCALE_C) / ETHANOL_KG_PER_M3;
  }

  /// Strength by mass from strength by volume at 20 C: the above, solved for p.
  ///
  /// - Valid: 0 to 1; refused outside. 70 % by volume is 62.39 % by mass.
  /// - Source: the same law.
  @Reckoned(
      name = "alcohol-by-mass",
      says = "The strength by mass of alcohol in water, from its strength by volume at 20 C.",
      equation = "p rho(p, 20) / rho(1, 20) = q, solved for p",
      range = "alcohol in water without extract, 0 to 100 %; refused outside")
  @Source(key = "oiml-r22", at = "general formula", trust = Trust.READ)
  public static double massFrac(double byVolumeFrac) {
    double q = Require.within("alcohol by volume as a share", byVolumeFrac, 0, 1);
    return Root.between(0, 1, p -> volumeFrac(p) - q);
  }

  /// Share of alcohol in a mixture of which a cubic metre holds a mass of it.
  static double holdingFrac(double ethanolKgPerM3) {
    return Root.between(0, 1, p -> p * densityKgPerM3(p, SCALE_C) - ethanolKgPerM3);
  }
}
