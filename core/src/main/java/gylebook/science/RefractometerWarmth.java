package gylebook.science;

/// A refractometer scaled for 20 C, read at another temperature.
///
/// Warm wort bends light less, so it reads too weak, whatever its strength: that is another
/// correction than the hydrometer's. Most hand-held instruments compensate by themselves, and then
/// nothing must be added; a drop takes the prism's temperature within half a minute, not the
/// wort's.
public final class RefractometerWarmth {
  private static final double LINE_PER_K = 0.06817;
  private static final double BEND_PER_K2 = 8.860e-4;
  private static final double LINE_PER_K_PLATO = 3.300e-4;
  private static final double BEND_PER_K2_PLATO = -2.350e-5;
  private static final double SCALE_C = 20;
  private static final double MIDDLE_PLATO = 10;

  /// Where the table was read, and the warm side that goes on from it.
  public static final Validity RANGE =
      new Validity(
          "prism temperature in C",
          7,
          30,
          "the correction follows a table read from 7 to 17 C; it goes on as a parabola");

  /// The strengths of the table's columns, widened down to a small beer's wort.
  public static final Validity STRENGTH_RANGE =
      new Validity("shown in P", 5, 25, "the table was read for 10 to 20 % of sugar");

  private RefractometerWarmth() {}

  /// What the reading means.
  ///
  /// @param correctionPlato to be added
  /// @param truePlato the reading at 20 C
  public record Read(double correctionPlato, double truePlato) {}

  /// The strength that a reading at another temperature means.
  ///
  /// `c = (0.06817 + 0.00033 (B - 10)) d + (0.000886 - 0.0000235 (B - 10)) d^2`, `d = t - 20`
  ///
  /// - Valid: 7 to 30 C and 5 to 25 P; 33 cells of the table within 0.006. From 17 to 30 C it goes
  ///   on and agrees with the table as remembered (+0.38 at 25 C, +0.79 at 30 C for 10 P) within
  ///   0.02. Refused outside 0 to 45 C and 0 to 40 P.
  ///
  /// @param shownPlato what it shows (Brix)
  @Source(key = "oiv-refractometer", at = "table I, 7 to 17 C, 10 to 20 %", trust = Trust.READ)
  @Reckoned(
      name = "refractometer-warmth",
      says = "What does a refractometer without compensation mean at another temperature?",
      equation = "c = (0.06817 + 0.00033 (B-10)) d + (0.000886 - 0.0000235 (B-10)) d^2, d = t - 20",
      range = "7 to 30 C, 5 to 25 P; only for instruments that do not compensate by themselves")
  public static Read read(double shownPlato, double prismC) {
    Require.within("shown in P", shownPlato, 0, 40);
    Require.within("prism temperature in C", prismC, 0, 45);
    double d = prismC - SCALE_C;
    double beyond = shownPlato - MIDDLE_PLATO;
    double correction =
        (LINE_PER_K + LINE_PER_K_PLATO * beyond) * d
            + (BEND_PER_K2 + BEND_PER_K2_PLATO * beyond) * d * d;
    return new Read(correction, shownPlato + correction);
  }
}
