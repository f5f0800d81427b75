package gylebook.science;

/// How long hot liquid may touch skin before it burns.
public final class Scald {
  /// 120, 130, 140 and 150 F.
  private static final double[] AT_C = {48.889, 54.444, 60.0, 65.556};

  /// The table says "over 5 min" and "under 5 s" for the first and the third.
  private static final double[] BURNS_SEC = {300, 30, 5, 1.5};

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
  public static double burnSec(double liquidC) {
    Require.within("liquid temperature", liquidC, 0, 130);
    int line = 0;
    while (line < AT_C.length - 2 && liquidC > AT_C[line + 1]) {
      line++;
    }
    double along = (liquidC - AT_C[line]) / (AT_C[line + 1] - AT_C[line]);
    double low = Math.log(BURNS_SEC[line]);
    return Math.exp(low + along * (Math.log(BURNS_SEC[line + 1]) - low));
  }
}
