package gylebook.device;

/// A line that stands as it is: nobody has to keep it up.
record Standing(Line line) implements Listening {
  @Override
  public void close() {
    // There is nothing to close.
  }
}
