package gylebook.science;

/// How long hot liquid may touch skin before it burns.
public final class Scald {
  /// 120, 130, 140 and 150 F.
  private static final double[] AT_C = {48.889, 54.444, 60.0, 65.556};

  /// The table says "over 5 min" and "under 5 s" for the first and the third.
  private static final double[] BURNS_SEC = {300, 30, 5, 1.5};

  /// 120, 130, 140 and 150 F in the commission's document.
  private static final double[] OFFICIAL_SEC = {300, 30, 6, 2};

  private static final double F_PER_K = 1.8;
  private static final double ZERO_F = 32;
  private static final double FIRST_F = 120;
  private static final double STEP_F = 10;

  private Scald() {}

  /// Time to a serious burn of adult skin; children's burn sooner.
  ///
  /// A published table for hot tap water (over 5 min at 120 F, 30 s at 130 F, under 5 s at 140 F,
  /// 1.5 s at 150 F), its logarithm joined by straight lines. Hotter or cooler than the table it
  /// goes on along the last line, which is an extrapolation: near the boil count it as at once. Wet
  /// cloth holds the heat and makes it worse. Refused below 0 and above 130 C.
  @Source(key = "scald-table", at = "time to a burn", trust = Trust.READ)
  @Reckoned(
      name = "seconds-to-burn",
      says = "How soon does hot liquid burn the skin?",
      equation = "a table from 49 to 66 C, straight lines of ln t",
      range = "48.9 to 65.6 C; outside an extrapolation, near the boil at once")
  public static double burnSec(
      @Span(
              least = 48.9,
              most = 65.6,
              beyond = "the official times end there; near the boil it burns at once")
          double liquidC) {
    Require.within("liquid temperature", liquidC, 0, 130);
    int line = 0;
    while (line < AT_C.length - 2 && liquidC > AT_C[line + 1]) {
      line++;
    }
    double along = (liquidC - AT_C[line]) / (AT_C[line + 1] - AT_C[line]);
    double low = Math.log(BURNS_SEC[line]);
    return Math.exp(low + along * (Math.log(BURNS_SEC[line + 1]) - low));
  }

  /// Time in which deep skin that is held at a temperature is destroyed.
  ///
  /// `t = exp(75000/T)/3.1e98`, T of the skin's deep layer, not of the water
  ///
  /// - Valid: 44 to 60 C of skin; refused outside 37 to 70 C. Skin under hot water lags behind it,
  ///   so this is sooner than the tables by water; it is the second opinion, not the kinder one.
  /// - Trap: the activation goes round as 628 kJ/mol. With today's gas constant that is 75534 K,
  ///   and the skin would stand 44 C for a whole day; 75000 K belongs to 3.1e98.
  /// - Source: Henriques 1947, second-hand.
  @Source(key = "henriques1947", at = "the burn integral", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "seconds-to-destroy-skin",
      says = "How soon skin that is itself held at a temperature is destroyed.",
      equation = "t = exp(75000/T)/3.1e98, T of the deep skin in K",
      range = "44 to 60 C of skin, not of water; refused outside 37 to 70 C")
  public static double deepSkinSec(
      @Span(least = 44, most = 60, beyond = "the law was found between these temperatures of skin")
          double skinC) {
    Require.within("temperature of the deep skin in C", skinC, 37, 70);
    return Math.exp(75_000 / (skinC + CarbonDioxide.ZERO_KELVIN)) / 3.1e98;
  }

  /// Time to a third-degree burn of adult skin by the official document.
  ///
  /// 300, 30, 6 and 2 s at 120, 130, 140 and 150 F, straight lines of ln t
  ///
  /// - Valid: 120 to 150 F; outside an extrapolation, near the boil count it as at once. Refused
  ///   below 0 and above 130 C. Children burn sooner.
  /// - Source: US Consumer Product Safety Commission, document 5098, a copy. Another table says 5
  ///   and 1.5 s at 140 and 150 F: see `seconds-to-burn`.
  @Source(key = "cpsc-5098", at = "adults", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "seconds-to-third-degree-burn",
      says = "How soon hot water burns adult skin to the third degree.",
      equation = "a table from 120 to 150 F, straight lines of ln t",
      range = "49 to 66 C; outside an extrapolation, near the boil at once; children sooner")
  public static double thirdDegreeSec(
      @Span(
              least = 49,
              most = 66,
              beyond = "the official times end there; near the boil it burns at once")
          double liquidC) {
    Require.within("liquid temperature", liquidC, 0, 130);
    double tens = (liquidC * F_PER_K + ZERO_F - FIRST_F) / STEP_F;
    int line = (int) Math.clamp(Math.floor(tens), 0, OFFICIAL_SEC.length - 2);
    double low = Math.log(OFFICIAL_SEC[line]);
    return Math.exp(low + (tens - line) * (Math.log(OFFICIAL_SEC[line + 1]) - low));
  }
}
