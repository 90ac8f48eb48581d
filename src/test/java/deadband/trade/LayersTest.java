package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LayersTest {

  @Test
  void heightFindsItsLayer() {
    assertThat(Layers.at(0, 1600, 10)).isZero();
    assertThat(Layers.at(159.9, 1600, 10)).isZero();
    assertThat(Layers.at(160, 1600, 10)).isEqualTo(1);
    assertThat(Layers.at(1599, 1600, 10)).isEqualTo(9);
    assertThat(Layers.at(1600, 1600, 10)).isEqualTo(9);
    assertThat(Layers.at(9000, 1600, 10)).isEqualTo(9);
    assertThat(Layers.at(-5, 1600, 10)).isZero();
    assertThatThrownBy(() -> Layers.at(0, 0, 10)).hasMessageContaining("tankHeight_mm");
    assertThatThrownBy(() -> Layers.at(0, 1600, 0)).hasMessageContaining("layers");
    assertThatThrownBy(() -> Layers.at(Double.NaN, 1600, 10)).hasMessageContaining("height_mm");
  }

  @Test
  void aStableProfileStaysAsItIs() {
    double[] layers = {10, 20, 20, 50};
    Layers.settle(layers);
    assertThat(layers).containsExactly(10, 20, 20, 50);
  }

  @Test
  void warmWaterBelowMixesWithWhatLiesAbove() {
    // 60 below 50 and 40: 60 and 50 mix to 55, that is still warmer than 40, all three mix to 50
    double[] layers = {60, 50, 40, 55};
    Layers.settle(layers);
    assertThat(layers).containsExactly(50, 50, 50, 55);
  }

  @Test
  void mixingStopsWhereItIsStable() {
    // 50 over 20 is stable, 40 under 30 is not: 35 and 35
    double[] layers = {20, 40, 30, 50};
    Layers.settle(layers);
    assertThat(layers).containsExactly(20, 35, 35, 50);
  }

  @Test
  void anyProfileSettlesStableWithItsHeatKept() {
    Random random = new Random(8141);
    for (int trial = 0; trial < 5_000; trial++) {
      double[] layers = random.doubles(1 + random.nextInt(12), 5, 95).toArray();
      double before = Layers.mean_C(layers);
      double hottest = Arrays.stream(layers).max().orElseThrow();
      Layers.settle(layers);
      assertThat(Layers.mean_C(layers)).isCloseTo(before, within(1e-9));
      assertThat(Arrays.stream(layers).max().orElseThrow()).isLessThanOrEqualTo(hottest);
      for (int layer = 1; layer < layers.length; layer++) {
        assertThat(layers[layer]).isGreaterThanOrEqualTo(layers[layer - 1] - 1e-9);
      }
    }
  }

  @Test
  void settledProfileIsTheNearestStableOne() {
    // pooling adjacent violators has a max-min form: layer i settles at
    // max over a ≤ i of min over b ≥ i of the mean of a..b
    Random random = new Random(12897);
    for (int trial = 0; trial < 500; trial++) {
      double[] layers = random.doubles(7, 5, 95).toArray();
      double[] expected = maxMin(layers);
      Layers.settle(layers);
      assertThat(layers).containsExactly(expected, within(1e-9));
    }
  }

  private static double[] maxMin(double[] layers) {
    double[] result = new double[layers.length];
    for (int i = 0; i < layers.length; i++) {
      double highest = Double.NEGATIVE_INFINITY;
      for (int a = 0; a <= i; a++) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int b = i; b < layers.length; b++) {
          lowest = Math.min(lowest, Arrays.stream(layers, a, b + 1).average().orElseThrow());
        }
        highest = Math.max(highest, lowest);
      }
      result[i] = highest;
    }
    return result;
  }

  @Test
  void heatIsSharedByTheLayersHeated() {
    // 0.6 kWh into two layers of 0.1 kWh/K: 3 K each
    double[] layers = {20, 30, 40, 50};
    Layers.heat(layers, 1, 2, 0.6, 0.1);
    assertThat(layers).containsExactly(new double[] {20, 33, 43, 50}, within(1e-12));
    Layers.heat(layers, 3, 3, -0.5, 0.1);
    assertThat(layers).containsExactly(new double[] {20, 33, 43, 45}, within(1e-12));
    assertThatThrownBy(() -> Layers.heat(layers, 2, 1, 0.6, 0.1))
        .hasMessageContaining("layers heated");
    assertThatThrownBy(() -> Layers.heat(layers, 1, 2, 0.6, 0))
        .hasMessageContaining("layer_kWh_per_K");
  }

  @Test
  void coolingGivesTheRoomWhatTheLayersLose() {
    double[] layers = {20, 40, 60};
    // half the difference to 20 °C is left: falls of 0, 10 and 20 K
    assertThat(Layers.cool_K(layers, 20, 0.5)).isCloseTo(30, within(1e-12));
    assertThat(layers).containsExactly(new double[] {20, 30, 40}, within(1e-12));
    // a warmer room warms the store
    assertThat(Layers.cool_K(new double[] {10}, 20, 0.5)).isCloseTo(-5, within(1e-12));
  }

  @Test
  void wholeLayersMoveUpAsOne() {
    double[] layers = {20, 30, 40, 50};
    assertThat(Layers.draw_C(layers, 25, 50, 10)).isCloseTo(45, within(1e-12));
    assertThat(layers).containsExactly(new double[] {10, 10, 20, 30}, within(1e-12));
  }

  @Test
  void partOfALayerIsAveraged() {
    // a fifth of a layer: each keeps four fifths and takes a fifth of the one below
    double[] layers = {20, 30, 40, 50};
    assertThat(Layers.draw_C(layers, 25, 5, 10)).isCloseTo(50, within(1e-12));
    assertThat(layers).containsExactly(new double[] {18, 28, 38, 48}, within(1e-12));
    // one layer and a half: 50 and half of 40 leave
    double[] more = {20, 30, 40, 50};
    assertThat(Layers.draw_C(more, 25, 37.5, 10)).isCloseTo((50 + 20) / 1.5, within(1e-12));
    assertThat(more).containsExactly(new double[] {10, 15, 25, 35}, within(1e-12));
  }

  @Test
  void nothingDrawnChangesNothing() {
    double[] layers = {20, 30, 40, 50};
    assertThat(Layers.draw_C(layers, 25, 0, 10)).isEqualTo(50);
    assertThat(layers).containsExactly(20, 30, 40, 50);
  }

  @Test
  void drawingMoreThanTheStoreHoldsLeavesItCold() {
    double[] layers = {20, 30, 40, 50};
    // 140 L in all plus 60 L of cold that ran through: (140 + 4 · 10) / 8 = 22.5
    assertThat(Layers.draw_C(layers, 25, 200, 10)).isCloseTo(22.5, within(1e-12));
    assertThat(layers).containsExactly(10, 10, 10, 10);
    double[] exactly = {20, 30, 40, 50};
    assertThat(Layers.draw_C(exactly, 25, 100, 10)).isCloseTo(35, within(1e-12));
    assertThat(exactly).containsExactly(10, 10, 10, 10);
    double[] endless = {20, 30, 40, 50};
    assertThat(Layers.draw_C(endless, 25, 1e12, 10)).isCloseTo(10, within(1e-6));
    assertThat(endless).containsExactly(10, 10, 10, 10);
  }

  @Test
  void drawnHeatIsWhatTheStoreLoses() {
    Random random = new Random(2020);
    for (int trial = 0; trial < 2_000; trial++) {
      double[] layers = random.doubles(1 + random.nextInt(10), 10, 90).sorted().toArray();
      double before = Layers.mean_C(layers) * layers.length;
      double drawn_L = random.nextDouble() * 300;
      double drawn_C = Layers.draw_C(layers, 25, drawn_L, 10);
      double after = Layers.mean_C(layers) * layers.length;
      assertThat(after).isCloseTo(before - (drawn_C - 10) * drawn_L / 25, within(1e-9));
    }
  }

  @Test
  void refusesNegativeDraw() {
    double[] layers = {20, 30};
    assertThatThrownBy(() -> Layers.draw_C(layers, 25, -1, 10)).hasMessageContaining("drawn_L");
    assertThatThrownBy(() -> Layers.draw_C(layers, 0, 1, 10)).hasMessageContaining("layer_L");
  }
}
