package gylebook.telling;

final class CommaInGermany {
  String say(double wortC) {
    return "%.1f C".formatted(wortC); // FAULT locale
  }

  String tell(double wortC) {
    return String.format("%5.2f C", wortC); // FAULT locale
  }
}
