package gylebook.device;

import com.digitalpetri.modbus.client.ModbusClient;
import com.digitalpetri.modbus.client.ModbusRtuClient;
import com.digitalpetri.modbus.client.ModbusTcpClient;
import com.digitalpetri.modbus.exceptions.ModbusCrcException;
import com.digitalpetri.modbus.exceptions.ModbusException;
import com.digitalpetri.modbus.exceptions.ModbusExecutionException;
import com.digitalpetri.modbus.exceptions.ModbusResponseException;
import com.digitalpetri.modbus.exceptions.ModbusTimeoutException;
import com.digitalpetri.modbus.pdu.ReadHoldingRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadInputRegistersRequest;
import com.digitalpetri.modbus.serial.client.SerialPortClientTransport;
import com.digitalpetri.modbus.tcp.client.NettyTcpClientTransport;
import java.io.IOException;
import java.lang.System.Logger.Level;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/// A controller on a real wire, by network or serial line. Function codes 3 and 4, and no others.
final class ModbusWire implements ModbusPort {
  private static final System.Logger LOG = System.getLogger(ModbusWire.class.getName());

  private final ModbusPlace place;
  private final ModbusClient client;

  private ModbusWire(ModbusPlace place) {
    this.place = place;
    this.client =
        switch (place) {
          case ModbusPlace.Tcp tcp -> network(tcp);
          case ModbusPlace.Serial serial -> line(serial);
        };
  }

  static ModbusPort open(ModbusPlace place) throws IOException {
    if (place instanceof ModbusPlace.Serial serial) {
      SerialSilence.await(serial);
    }
    ModbusWire wire = new ModbusWire(place);
    CompletionStage<?> connecting = wire.client.connectAsync();
    try {
      wire.within(connecting);
    } catch (IOException failed) {
      // What is still connecting cannot be hung up yet, and would stay open for ever.
      var _ = connecting.whenComplete((_, _) -> wire.client.disconnectAsync());
      throw failed;
    }
    return wire;
  }

  /// Waits for the library, but not for ever: a request sent while the other side hangs up may
  /// never end by itself.
  private <T> T within(CompletionStage<T> asked) throws IOException {
    try {
      long most = 2 * place.patience().toMillis();
      return asked.toCompletableFuture().get(most, TimeUnit.MILLISECONDS);
    } catch (TimeoutException failed) {
      throw silence(failed);
    } catch (ExecutionException failed) {
      throw failure(failed);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException(place.words() + ": closed", stopped);
    }
  }

  private static ModbusClient network(ModbusPlace.Tcp tcp) {
    var transport =
        NettyTcpClientTransport.create(
            settings -> {
              settings.hostname = tcp.host();
              settings.port = tcp.port();
              settings.connectTimeout = tcp.patience();
              // A lost line is opened anew by whoever asks next, not behind our back.
              settings.connectPersistent = false;
            });
    return ModbusTcpClient.create(transport, settings -> settings.requestTimeout = tcp.patience());
  }

  private static ModbusClient line(ModbusPlace.Serial serial) {
    var transport =
        SerialPortClientTransport.create(
            settings -> {
              settings.serialPort = serial.device();
              settings.baudRate = serial.baud();
              settings.dataBits = 8;
              settings.stopBits = SerialSilence.stopBits(serial);
              settings.parity = SerialSilence.parity(serial);
            });
    return ModbusRtuClient.create(
        transport, settings -> settings.requestTimeout = serial.patience());
  }

  @Override
  public byte[] read(ModbusRegister register) throws IOException {
    int count = register.form().registers();
    return switch (register.table()) {
      case HOLDING ->
          within(
                  client.readHoldingRegistersAsync(
                      register.unitId(),
                      new ReadHoldingRegistersRequest(register.address(), count)))
              .registers();
      case INPUT ->
          within(
                  client.readInputRegistersAsync(
                      register.unitId(), new ReadInputRegistersRequest(register.address(), count)))
              .registers();
    };
  }

  private IOException silence(Exception failed) {
    return new IOException(place.words() + ": no answer within " + place.patience(), failed);
  }

  private IOException failure(ExecutionException failed) {
    Throwable root = Received.root(failed);
    return switch (root) {
      case ModbusTimeoutException _ -> silence(failed);
      // On a serial line the library reports a wrong code: no refusal is told from another.
      case ModbusResponseException _ ->
          new Unusable("is a refusal: the controller does not give this register", true, failed);
      case ModbusCrcException _ -> new Unusable("came with a wrong check sum", false, failed);
      case ModbusExecutionException _ -> new IOException(place.words() + ": " + root, failed);
      case ModbusException _ -> new Unusable("is not what was asked for", false, failed);
      default -> new IOException(place.words() + ": " + root.getMessage(), failed);
    };
  }

  @Override
  public void close() {
    try {
      within(client.disconnectAsync());
    } catch (IOException failed) {
      LOG.log(Level.DEBUG, "The line to " + place.words() + " did not close", failed);
    }
  }
}
