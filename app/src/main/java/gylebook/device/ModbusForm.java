package gylebook.device;

import gylebook.units.AnyUnit;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// How a number stands in registers: its kind, and for two registers the order of its bytes.
///
/// The standard fixes the order inside a register and not that of two; makers do as they like, so
/// all four orders are there. Pure.
@AnyUnit("reads bare numbers out of bytes")
public record ModbusForm(Kind kind, Order order) {
  /// What kind of number it is.
  public enum Kind {
    INT16(1),
    UINT16(1),
    INT32(2),
    UINT32(2),
    FLOAT32(2);

    private final int registers;

    Kind(int registers) {
      this.registers = registers;
    }
  }

  /// Which byte of the number (A the most significant) comes first, second, third, fourth. A number
  /// of one register is ABCD when its high byte comes first, as the standard says, else BADC.
  public enum Order {
    ABCD,
    CDAB,
    BADC,
    DCBA;

    private int place(int index) {
      return name().charAt(index) - 'A';
    }
  }

  /// A form with the factor that leads to what the controller shows.
  public record Fit(ModbusForm form, double factor) {}

  private static final List<Double> USUAL_FACTORS = List.of(1.0, 0.1, 0.01, 0.001);

  /// One register, high byte first, as the standard has it.
  public static ModbusForm plain(Kind kind) {
    return new ModbusForm(kind, Order.ABCD);
  }

  /// How many registers it takes.
  public int registers() {
    return kind.registers;
  }

  /// The number in these bytes; they must be as many as the registers hold.
  public double number(byte[] bytes) {
    if (bytes.length != 2 * registers()) {
      throw new IllegalArgumentException(
          "bytes are " + bytes.length + "; " + kind + " has " + 2 * registers() + ".");
    }
    byte[] sorted = new byte[bytes.length];
    for (int i = 0; i < bytes.length; i++) {
      sorted[order.place(i) % bytes.length] = bytes[i];
    }
    ByteBuffer number = ByteBuffer.wrap(sorted);
    return switch (kind) {
      case INT16 -> number.getShort();
      case UINT16 -> Short.toUnsignedInt(number.getShort());
      case INT32 -> number.getInt();
      case UINT32 -> Integer.toUnsignedLong(number.getInt());
      case FLOAT32 -> number.getFloat();
    };
  }

  /// What registers say of an instrument.
  static Decoded decode(ModbusRegister register, byte[] bytes) {
    String sent = Received.shownBytes(bytes);
    if (bytes.length != 2 * register.form().registers()) {
      return Decoded.garbled(sent, "is not as long as the number asked for");
    }
    double number = register.form().number(bytes) * register.factor();
    return Double.isFinite(number)
        ? register.instrument().value(number, register.instrument().unit(), sent, Optional.empty())
        : Decoded.garbled(sent, "is no number, the controller says");
  }

  /// Every reading of two or four bytes that gives the number the controller shows just now, within
  /// one of its last digit. One left: that is it. Several: ask again when the number has changed.
  /// None: another register.
  ///
  /// Unsigned numbers are left out where the signed one fits as well, and an order where the bytes
  /// are the same in an order already there.
  public static List<Fit> fitting(byte[] bytes, String shown) {
    BigDecimal wanted = new BigDecimal(shown.strip().replace(',', '.'));
    double slack = Math.pow(10, -wanted.scale()) * (1 + 1e-9);
    List<Fit> fits = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (Order order : bytes.length == 2 ? List.of(Order.ABCD, Order.BADC) : orders()) {
        ModbusForm form = new ModbusForm(kind, order);
        if (bytes.length == 2 * form.registers()) {
          double number = form.number(bytes);
          for (double factor : kind == Kind.FLOAT32 ? List.of(1.0) : USUAL_FACTORS) {
            boolean near = Math.abs(number * factor - wanted.doubleValue()) <= slack;
            if (near && fits.stream().noneMatch(fit -> same(fit, bytes, number, factor))) {
              fits.add(new Fit(form, factor));
            }
          }
        }
      }
    }
    return List.copyOf(fits);
  }

  private static List<Order> orders() {
    return List.of(Order.values());
  }

  private static boolean same(Fit fit, byte[] bytes, double number, double factor) {
    boolean unsignedToo = fit.form().kind() == Kind.INT16 || fit.form().kind() == Kind.INT32;
    return unsignedToo && fit.factor() == factor && fit.form().number(bytes) == number;
  }
}
