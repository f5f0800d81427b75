package gylebook.cellar; // FAULT ladder

final class NoSuchRoom {}
