/// Instruments: bytes in, readings out. Read only; nothing in here can move a controller.
///
/// Each driver is three things: a descriptor (where, which quantity, unit and place), a transport
/// that fetches bytes, and a pure decoder. It knows protocols, ports and what an instrument says
/// when it is broken. It must not know brews, plans, pages or the journal, and it never judges
/// whether a reading is stale: each carries when it arrived. Front doors:
/// [gylebook.device.MqttInstruments], [gylebook.device.ModbusInstruments],
/// [gylebook.device.OneWireInstruments], [gylebook.device.LineInstruments],
/// [gylebook.device.Posted], [gylebook.device.CsvReplay].
@NullMarked
package gylebook.device;

import org.jspecify.annotations.NullMarked;
