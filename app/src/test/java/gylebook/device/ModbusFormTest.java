package gylebook.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.digitalpetri.modbus.Crc16;
import gylebook.device.ModbusForm.Fit;
import gylebook.device.ModbusForm.Kind;
import gylebook.device.ModbusForm.Order;
import gylebook.units.Quantity;
import gylebook.units.Unit;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// 66.3 is 0x4284999A as a number of 32 bits (IEEE 754).
final class ModbusFormTest {
  private static byte[] bytes(String hex) {
    return HexFormat.of().parseHex(hex);
  }

  @ParameterizedTest
  @CsvSource({"ABCD,4284999a", "CDAB,999a4284", "BADC,84429a99", "DCBA,9a998442"})
  void aFloatIsReadInEachOfTheFourByteOrders(Order order, String hex) {
    assertThat(new ModbusForm(Kind.FLOAT32, order).number(bytes(hex))).isEqualTo(66.3f);
  }

  @ParameterizedTest
  @CsvSource({
    "INT16,ABCD,0297,663",
    "INT16,DCBA,9702,663",
    "INT16,ABCD,ff9c,-100",
    "UINT16,ABCD,ff9c,65436",
    "INT32,ABCD,fffe1dc0,-123456",
    "INT32,CDAB,1dc0fffe,-123456",
    "UINT32,ABCD,fffe1dc0,4294843840",
  })
  void wholeNumbersAreReadWithTheirSign(Kind kind, Order order, String hex, double wanted) {
    assertThat(new ModbusForm(kind, order).number(bytes(hex))).isEqualTo(wanted);
  }

  @ParameterizedTest
  @CsvSource({"ABCD,4284999a", "CDAB,999a4284", "BADC,84429a99", "DCBA,9a998442"})
  void theByteOrderIsFoundFromTheNumberTheControllerShows(Order order, String hex) {
    assertThat(ModbusForm.fitting(bytes(hex), "66.3"))
        .containsExactly(new Fit(new ModbusForm(Kind.FLOAT32, order), 1));
    assertThat(ModbusForm.fitting(bytes(hex), "66,3")).hasSize(1);
    assertThat(ModbusForm.fitting(bytes(hex), "21.5")).isEmpty();
  }

  @Test
  void theFactorIsFoundWithIt() {
    assertThat(ModbusForm.fitting(bytes("0297"), "66.3"))
        .containsExactly(new Fit(new ModbusForm(Kind.INT16, Order.ABCD), 0.1));
    assertThat(ModbusForm.fitting(bytes("9702"), "66.3"))
        .containsExactly(new Fit(new ModbusForm(Kind.INT16, Order.BADC), 0.1));
    assertThat(ModbusForm.fitting(bytes("ff9c"), "6543.6"))
        .containsExactly(new Fit(new ModbusForm(Kind.UINT16, Order.ABCD), 0.1));
  }

  @Test
  void severalFitsAreAllGivenSoThatOneAsksAgain() {
    assertThat(ModbusForm.fitting(bytes("00000000"), "0")).hasSizeGreaterThan(3);
  }

  /// Every tenth of a degree a kettle can have, in every order.
  @Test
  void theRightOrderIsAlwaysAmongTheFits() {
    int[][] places = {{0, 1, 2, 3}, {2, 3, 0, 1}, {1, 0, 3, 2}, {3, 2, 1, 0}};
    for (int tenths = -200; tenths < 1500; tenths++) {
      float number = tenths / 10f;
      byte[] sorted = bytes(HexFormat.of().toHexDigits(Float.floatToIntBits(number)));
      String shown = BigDecimal.valueOf(tenths, 1).toString();
      for (int[] order : places) {
        byte[] sent = new byte[4];
        for (int i = 0; i < 4; i++) {
          sent[i] = sorted[order[i]];
        }
        assertThat(ModbusForm.fitting(sent, shown))
            .as(HexFormat.of().formatHex(sent) + " shown as " + shown)
            .anyMatch(fit -> fit.form().number(sent) * fit.factor() == number);
      }
    }
  }

  @Test
  void notANumberAndTooFewBytesAreGarbled() {
    Instrument probe = new Instrument("probe", "suction", Unit.known(Quantity.TEMPERATURE, "°C"));
    ModbusRegister register =
        new ModbusRegister(
            probe, 1, ModbusRegister.Table.HOLDING, 0, ModbusForm.plain(Kind.FLOAT32), 1);
    assertThat(ModbusForm.decode(register, bytes("7fc00000")))
        .isEqualTo(new Decoded.Garbled("7f c0 00 00", "is no number, the controller says"));
    assertThat(ModbusForm.decode(register, bytes("4284"))).isInstanceOf(Decoded.Garbled.class);
    assertThat(ModbusForm.decode(register, bytes("47c35000")))
        .as("100000 degrees")
        .isInstanceOf(Decoded.Garbled.class);
  }

  @Test
  void aRegisterNoControllerHasIsRefused() {
    Instrument probe = new Instrument("probe", "suction", Unit.known(Quantity.TEMPERATURE, "°C"));
    ModbusForm two = ModbusForm.plain(Kind.FLOAT32);
    assertThatThrownBy(
            () -> new ModbusRegister(probe, 1, ModbusRegister.Table.INPUT, 65_535, two, 1))
        .hasMessageContaining("address is 65535");
    assertThatThrownBy(() -> new ModbusRegister(probe, 1, ModbusRegister.Table.INPUT, 0, two, 0))
        .hasMessageContaining("factor is 0.0");
  }

  /// The reference rows of the serial line: a maker's manual has 74 17 after its example, and the
  /// polynomial 0xA001 from 0xFFFF, low byte first, makes 51 84 of the other. The library reckons
  /// it for us; a library that no longer did would be heard of here.
  @ParameterizedTest
  @CsvSource({"0103006b0003,7417", "010306029402940258,5184"})
  void theCheckSumOfTheSerialLineIsThePublishedOne(String frame, String wanted) {
    Crc16 sum = new Crc16();
    sum.update(ByteBuffer.wrap(HexFormat.of().parseHex(frame)));
    int value = sum.getValue();
    assertThat("%02x%02x".formatted(value & 0xFF, value >> 8 & 0xFF)).isEqualTo(wanted);
  }
}
