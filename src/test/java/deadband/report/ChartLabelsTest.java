package deadband.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.report.ChartLabels.Label;
import deadband.report.ChartLabels.Placed;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChartLabelsTest {

  private static List<Double> placed(double... wanted) {
    List<Label> labels =
        Arrays.stream(wanted).mapToObj(y -> new Label("y", ChartLine.TOP, y)).toList();
    return new ChartLabels(0, 100, 10).placed(labels).stream().map(Placed::y).toList();
  }

  @Test
  void thoseWithRoomStayWhereTheyAre() {
    assertThat(placed(10, 50, 30)).containsExactly(10.0, 30.0, 50.0);
  }

  @Test
  void thoseThatTouchMoveApartEvenly() {
    assertThat(placed(50, 52)).containsExactly(46.0, 56.0);
    assertThat(placed(50, 50, 50)).containsExactly(40.0, 50.0, 60.0);
  }

  @Test
  void noneLeavesThePanel() {
    assertThat(placed(0, 0)).containsExactly(0.0, 10.0);
    assertThat(placed(99, 100)).containsExactly(90.0, 100.0);
  }

  /** No two ever collide, their order is that of what they name, and all stay inside. */
  @Test
  void neverCollide() {
    Random random = new Random(3);
    for (int number = 0; number < 5000; number++) {
      double[] wanted = random.doubles(1 + random.nextInt(9), 0, 100).toArray();
      List<Double> placed = placed(wanted);
      assertThat(placed.get(0)).isGreaterThanOrEqualTo(-1e-9);
      assertThat(placed.get(placed.size() - 1)).isLessThanOrEqualTo(100 + 1e-9);
      for (int at = 1; at < placed.size(); at++) {
        assertThat(placed.get(at) - placed.get(at - 1)).isGreaterThanOrEqualTo(10 - 1e-9);
      }
    }
  }

  @Test
  void scalesEndOnRoundValues() {
    ChartScale scale = ChartScale.over(-0.3, 6.6, 10, 130);
    assertThat(scale.ticks()).containsExactly(-2.0, 0.0, 2.0, 4.0, 6.0, 8.0);
    assertThat(scale.y(-2)).isCloseTo(130, within(1e-9));
    assertThat(scale.y(8)).isCloseTo(10, within(1e-9));
    assertThat(scale.y(3)).isCloseTo(70, within(1e-9));
    assertThat(ChartScale.over(0, 0, 0, 10).ticks()).isNotEmpty();
  }
}
