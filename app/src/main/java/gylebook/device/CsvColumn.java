package gylebook.device;

/// An instrument in a table of readings: the column it stands in, by its heading.
public record CsvColumn(Instrument instrument, String heading) {}
