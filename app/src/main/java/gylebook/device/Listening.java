package gylebook.device;

/// A driver at work. It goes on through every failure until it is closed.
public interface Listening extends AutoCloseable {
  /// How its line stands now.
  Line line();

  @Override
  void close();
}
