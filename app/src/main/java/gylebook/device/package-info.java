/// Instruments: bytes in, readings out. Read only; nothing in here can move a controller.
///
/// Each driver is three things: a descriptor (where, which quantity, unit and place), a transport
/// that fetches bytes, and a pure decoder. It knows protocols, ports and what an instrument says
/// when it is broken. It must not know brews, plans, pages or the journal; each reading carries
/// when it arrived, and whoever reads decides whether it is stale. Front door:
/// [gylebook.device.Panel], which listens to everything that is tied; [gylebook.device.TieForm]
/// reads a tie and [gylebook.device.Look] shows a place before anything is tied there.
@NullMarked
package gylebook.device;

import org.jspecify.annotations.NullMarked;
