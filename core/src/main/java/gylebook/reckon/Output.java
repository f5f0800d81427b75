package gylebook.reckon;

/// What a calculation gives: a name and the unit of its number (empty for a plain number).
public record Output(String name, String unit) {}
