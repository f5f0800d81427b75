package gylebook.terminal;

import com.digitalpetri.modbus.ExceptionCode;
import com.digitalpetri.modbus.FunctionCode;
import com.digitalpetri.modbus.exceptions.ModbusResponseException;
import com.digitalpetri.modbus.pdu.ReadHoldingRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadHoldingRegistersResponse;
import com.digitalpetri.modbus.pdu.ReadInputRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadInputRegistersResponse;
import com.digitalpetri.modbus.server.ModbusRequestContext;
import com.digitalpetri.modbus.server.ModbusServices;
import com.digitalpetri.modbus.server.ModbusTcpServer;
import com.digitalpetri.modbus.tcp.server.NettyTcpServerTransport;
import gylebook.units.AnyUnit;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicReferenceArray;

/// A controller on this machine: each instrument is a number of 32 bits in two registers, in both
/// tables. An instrument that is silent has its registers refused; garbage is no number.
@AnyUnit("registers hold whatever an instrument measures")
final class ModbusOutlet implements Outlet {
  private final int port;
  private final List<String> instruments;
  private final AtomicReferenceArray<Float> numbers;
  private final ModbusTcpServer server;

  ModbusOutlet(int port, List<String> instruments) throws IOException {
    this.port = port;
    this.instruments = List.copyOf(instruments);
    this.numbers = new AtomicReferenceArray<>(instruments.size());
    this.server =
        ModbusTcpServer.create(
            NettyTcpServerTransport.create(
                settings -> {
                  settings.bindAddress = "127.0.0.1";
                  settings.port = port;
                }),
            new Registers());
    try {
      server.start();
    } catch (ExecutionException failed) {
      throw new IOException("port " + port + ": " + failed.getCause(), failed);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped", stopped);
    }
  }

  /// Only reading is there; the library refuses everything else.
  private final class Registers implements ModbusServices {
    @Override
    public ReadHoldingRegistersResponse readHoldingRegisters(
        ModbusRequestContext context, int unitId, ReadHoldingRegistersRequest request)
        throws ModbusResponseException {
      return new ReadHoldingRegistersResponse(
          bytes(
              FunctionCode.READ_HOLDING_REGISTERS.getCode(),
              request.address(),
              request.quantity()));
    }

    @Override
    public ReadInputRegistersResponse readInputRegisters(
        ModbusRequestContext context, int unitId, ReadInputRegistersRequest request)
        throws ModbusResponseException {
      return new ReadInputRegistersResponse(
          bytes(
              FunctionCode.READ_INPUT_REGISTERS.getCode(), request.address(), request.quantity()));
    }
  }

  private byte[] bytes(int function, int address, int count) throws ModbusResponseException {
    int most = 2 * instruments.size();
    if (address + count > most) {
      throw new ModbusResponseException(function, ExceptionCode.ILLEGAL_DATA_ADDRESS.getCode());
    }
    ByteBuffer all = ByteBuffer.allocate(2 * most);
    for (int i = 0; i < instruments.size(); i++) {
      Float number = numbers.get(i);
      boolean asked = address < 2 * i + 2 && address + count > 2 * i;
      if (number == null && asked) {
        throw new ModbusResponseException(function, ExceptionCode.SLAVE_DEVICE_FAILURE.getCode());
      }
      all.putFloat(number == null ? Float.NaN : number);
    }
    byte[] bytes = new byte[2 * count];
    all.get(2 * address, bytes);
    return bytes;
  }

  /// The first register of an instrument.
  int address(String instrument) {
    return 2 * instruments.indexOf(instrument);
  }

  @Override
  public void send(Sent sent) {
    numbers.set(instruments.indexOf(sent.instrument()), (float) sent.number());
  }

  @Override
  public void silent(String instrument) {
    numbers.set(instruments.indexOf(instrument), null);
  }

  @Override
  public String words() {
    StringBuilder words =
        new StringBuilder("serves Modbus TCP at 127.0.0.1:" + port + ", numbers of 32 bits (ABCD)");
    instruments.forEach(one -> words.append("; " + one + " in register " + address(one)));
    return words.toString();
  }

  @Override
  public void close() {
    try {
      server.stop();
    } catch (ExecutionException _) {
      // It is gone already.
    } catch (InterruptedException _) {
      Thread.currentThread().interrupt();
    }
  }
}
