package gylebook.science;

/// The one-wire thermometer chip: its 16-bit register, its fault values, its check byte.
public final class ChipThermometer {
  private static final double POWER_UP_C = 85.0;

  private ChipThermometer() {}

  /// Temperature that the register means: 16 bits, two's complement, 1/16 K each.
  ///
  /// Refused when it is no whole number of 0 to 65535.
  @Source(key = "one-wire-chip", at = "register table", trust = Trust.SECOND_HAND)
  @Reckoned(
      name = "chip-temperature",
      says = "What temperature does the one-wire chip's register mean?",
      equation = "t = two's complement of 16 bits / 16",
      range = "a whole number from 0 to 65535; refused otherwise")
  public static double temperatureC(double registerNumber) {
    Require.within("register", registerNumber, 0, 65535);
    if (registerNumber != Math.rint(registerNumber)) {
      throw new IllegalArgumentException(
          "register is " + registerNumber + "; it must be a whole number.");
    }
    double t = (short) (int) registerNumber / 16.0;
    return t;
  }

  /// Whether a reading is a fault and no temperature.
  ///
  /// -127 and 127.9 always are. 85.0 is what the chip says after power-up, but can be true: it is
  /// rejected unless the reading before lay within 5 K of it (the 5 K are an assumption). Pass NaN
  /// when there was no reading before.
  @Source(key = "one-wire-chip", at = "power-on value", trust = Trust.READ)
  public static boolean isFault(double readingC, double previousC) {
    if (!(readingC > -56 && readingC < 126)) {
      return true;
    }
    return readingC == POWER_UP_C && !(Math.abs(previousC - POWER_UP_C) <= 5);
  }

  /// Check byte over the bytes before it: `x^8 + x^5 + x^4 + 1`, lowest bit first.
  @Source(key = "one-wire-crc", at = "example", trust = Trust.SECOND_HAND)
  public static int checkByte(byte... bytes) {
    int check = 0;
    for (byte each : bytes) {
      int left = each & 0xFF;
      for (int bit = 0; bit < 8; bit++) {
        boolean differs = ((check ^ left) & 1) != 0;
        check = (check >> 1) ^ (differs ? 0x8C : 0);
        left >>= 1;
      }
    }
    return check;
  }
}
