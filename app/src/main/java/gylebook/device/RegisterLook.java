package gylebook.device;

import gylebook.device.ModbusForm.Fit;
import gylebook.device.ModbusForm.Kind;
import gylebook.device.ModbusForm.Order;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/// What may stand in a register: every kind of number in every byte order, beside one another, for
/// the brewer to compare with the number that the controller shows.
final class RegisterLook {
  private RegisterLook() {}

  static List<Seen> seen(Fields fields) throws IOException, Unfit {
    byte[] four = read(fields);
    byte[] two = Arrays.copyOf(four, 2);
    List<Fit> fits = new ArrayList<>();
    Optional<String> shown = fields.given("shown");
    if (shown.isPresent()) {
      // A number of one register stands in the first two bytes of what was read.
      fits.addAll(fitting(two, shown.get()));
      fits.addAll(four.length == 4 ? fitting(four, shown.get()) : List.of());
    }
    List<Seen> seen = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (Order order : Order.values()) {
        ModbusForm form = new ModbusForm(kind, order);
        byte[] bytes = form.registers() == 1 ? two : four;
        boolean sameAgain = form.registers() == 1 && order.ordinal() % 2 == 1;
        if (bytes.length == 2 * form.registers() && !sameAgain) {
          seen.add(seen(form, bytes, fits));
        }
      }
    }
    return seen;
  }

  /// Two registers, or one where the controller has no second.
  private static byte[] read(Fields fields) throws IOException, Unfit {
    ModbusPlace place = TieForm.modbusPlace(fields);
    try {
      return ModbusInstruments.once(place, TieForm.register(fields, Kind.FLOAT32));
    } catch (ModbusPort.Unusable _) {
      return ModbusInstruments.once(place, TieForm.register(fields, Kind.INT16));
    }
  }

  private static List<Fit> fitting(byte[] bytes, String shown) throws Unfit {
    try {
      return ModbusForm.fitting(bytes, shown);
    } catch (NumberFormatException _) {
      throw new Unfit("shown", shown, "It must be the number that the controller shows.");
    }
  }

  private static Seen seen(ModbusForm form, byte[] bytes, List<Fit> fits) {
    Optional<Fit> fit = fits.stream().filter(one -> one.form().equals(form)).findFirst();
    double number = form.number(bytes);
    double factor = fit.map(Fit::factor).orElse(1.0);
    Map<String, String> fill =
        Map.of(
            "numberKind", Fields.name(form.kind()),
            "order", Fields.name(form.order()),
            "factor", text(factor));
    String says =
        fit.isPresent() && factor != 1 ? text(number) + " × " + text(factor) : text(number);
    return new Seen(words(form.kind()), form.order().name(), says, fit.isPresent(), fill);
  }

  private static String words(Kind kind) {
    return switch (kind) {
      case INT16 -> "whole number, 1 register";
      case UINT16 -> "whole number without sign, 1 register";
      case INT32 -> "whole number, 2 registers";
      case UINT32 -> "whole number without sign, 2 registers";
      case FLOAT32 -> "number with a point, 2 registers";
    };
  }

  private static String text(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e10
        ? String.valueOf((long) number)
        : String.format(Locale.ROOT, "%.6g", number);
  }
}
