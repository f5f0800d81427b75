package gylebook.tidy;

/// One broken house rule at one place.
record Fault(String rule, String file, long line, String what) {
  @Override
  public String toString() {
    return "FAIL " + file + ":" + line + " [" + rule + "] " + what;
  }
}
