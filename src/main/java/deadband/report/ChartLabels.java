package deadband.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Labels in a column beside a panel, each as near to what it names as the others leave it.
 *
 * <p>In order from top to bottom each is put below the one before; a run of labels that touch then
 * moves together to the middle of the places they would have liked.
 */
final class ChartLabels {

  private final double top;
  private final double bottom;
  private final double apart;

  /**
   * Room for labels.
   *
   * @param top least height of a label's middle
   * @param bottom greatest
   * @param apart from one label's middle to the next
   */
  ChartLabels(double top, double bottom, double apart) {
    this.top = top;
    this.bottom = bottom;
    this.apart = apart;
  }

  /**
   * A label.
   *
   * @param wanted the height of what it names
   */
  record Label(String text, ChartLine line, double wanted) {}

  /** A label at the height where it came to stand. */
  record Placed(Label label, double y) {}

  /** Labels that touch: their number, and the height of the first if they were alone. */
  private record Run(int size, double sum, double y) {}

  List<Placed> placed(List<Label> labels) {
    List<Label> ordered =
        labels.stream().sorted(Comparator.comparingDouble(Label::wanted)).toList();
    List<Run> runs = new ArrayList<>();
    for (Label label : ordered) {
      runs.add(run(1, label.wanted()));
      while (runs.size() > 1 && touch(runs.get(runs.size() - 2), runs.get(runs.size() - 1))) {
        Run last = runs.remove(runs.size() - 1);
        Run before = runs.remove(runs.size() - 1);
        double sum = before.sum() + last.sum() - before.size() * apart * last.size();
        runs.add(run(before.size() + last.size(), sum));
      }
    }
    return placed(ordered, runs);
  }

  /** A run at the mean of what its labels want, each less the labels above it. */
  private Run run(int size, double sum) {
    double most = bottom - (size - 1) * apart;
    return new Run(size, sum, Math.max(top, Math.min(most, sum / size)));
  }

  private boolean touch(Run above, Run below) {
    return above.y() + above.size() * apart > below.y();
  }

  private List<Placed> placed(List<Label> ordered, List<Run> runs) {
    List<Placed> placed = new ArrayList<>();
    for (Run run : runs) {
      for (int at = 0; at < run.size(); at++) {
        placed.add(new Placed(ordered.get(placed.size()), run.y() + at * apart));
      }
    }
    return placed;
  }
}
