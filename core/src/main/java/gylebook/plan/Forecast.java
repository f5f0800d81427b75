package gylebook.plan;

import java.util.List;
import java.util.Optional;

/// The whole day as an ensemble of simulated days sees it.
///
/// @param engine revision of the model that made it
/// @param seed of the draws
/// @param days how many were simulated
/// @param milestones in the order of the day
/// @param figures everything else that comes out
/// @param guards what may go wrong, loudest first
/// @param stepSec spacing of the time grid of the traces
/// @param traces the lines of the day chart
/// @param worthMeasuring assumptions of the rig whose measuring would narrow the forecast most
public record Forecast(
    String engine,
    long seed,
    int days,
    List<Milestone> milestones,
    List<Figure> figures,
    List<Guard> guards,
    double stepSec,
    List<Trace> traces,
    List<Figure.Mover> worthMeasuring) {

  /// Copies the lists.
  public Forecast {
    milestones = List.copyOf(milestones);
    figures = List.copyOf(figures);
    guards = List.copyOf(guards);
    traces = List.copyOf(traces);
    worthMeasuring = List.copyOf(worthMeasuring);
  }

  /// The figure of that name, if the day has it.
  public Optional<Figure> figure(String key) {
    return figures.stream().filter(figure -> figure.key().equals(key)).findFirst();
  }

  /// The milestone of that name, if the day has it.
  public Optional<Milestone> milestone(String key) {
    return milestones.stream().filter(milestone -> milestone.key().equals(key)).findFirst();
  }
}
