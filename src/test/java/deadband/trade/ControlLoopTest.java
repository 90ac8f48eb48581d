package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.ControlLoop.Counts;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ControlLoopTest {
  private static final Counts EXPORT = new Counts(true, false, false);
  private static final Counts WITH_HEATER = new Counts(true, true, false);
  private static final Counts WITH_PUMP = new Counts(true, false, true);
  private static final Counts WITH_BOTH = new Counts(true, true, true);
  private static final double LEAST_KW = 0.15;

  private static ControlLoop loop(
      Counts counts, double start_kW, double stop_kW, double draw_kW, double heater_kW) {
    return new ControlLoop(counts, start_kW, stop_kW, draw_kW, heater_kW, LEAST_KW);
  }

  private static SurplusBand band(double from_kW, double to_kW) {
    return new SurplusBand(from_kW, to_kW);
  }

  // ------------------------------------------------------------- cases from practice

  @Test
  void oneThresholdForOnAndOff() {
    // a relay for a 3.85 kW element, on and off both at 0.3 kW: hunts from 0.3 to 4.15 kW
    ControlLoop loop = loop(EXPORT, 0.3, 0.3, 3.85, 0);
    assertThat(loop.hunting()).containsExactly(band(0.3, 4.15));
    assertThat(loop.runsFree()).isTrue();
  }

  @Test
  void startOnExportStopOnImport() {
    // starts above 1.0 kW, stops above 0.1 kW import, least input about 1 kW: gap 1.1 kW, no
    // hunting
    ControlLoop loop = loop(EXPORT, 1.0, -0.1, 1.0, 0);
    assertThat(loop.hunting()).isEmpty();
    assertThat(loop.gap_kW()).isEqualTo(1.1);
    assertThat(loop.importWhileHeld_kW()).isEqualTo(0.1);
    // with a draw of the gap itself the two edges meet
    assertThat(loop(EXPORT, 1.0, -0.1, 1.1, 0).hunting()).containsExactly(band(1.0, 1.0));
  }

  // ------------------------------------------------------------- limiting cases

  @Test
  void equalEdgesAreDecidedInWholeWatts() {
    // 3.2 − 0.4 is above 2.8 in raw doubles; in watts the gap equals the draw and the edge hunts
    assertThat(3.2 - 0.4).isGreaterThan(2.8);
    assertThat(loop(WITH_HEATER, 3.2, 0.4, 2.8, 0).hunting()).containsExactly(band(3.2, 3.2));
    assertThat(loop(WITH_HEATER, 3.2, 0.399, 2.8, 0).hunting()).isEmpty();
  }

  @Test
  void everyEqualPairOnATenthDialIsFound() {
    for (int stop = -20; stop <= 60; stop++) {
      for (int draw = 1; draw <= 60; draw++) {
        double start_kW = (stop + draw) / 10.0;
        ControlLoop loop = loop(EXPORT, start_kW, stop / 10.0, draw / 10.0, 0);
        assertThat(loop.hunting()).containsExactly(band(start_kW, start_kW));
      }
    }
  }

  @Test
  void aPumpThatDrawsNothingDoesNotHunt() {
    assertThat(loop(EXPORT, 2, 1.9, 0, 3).hunting()).isEmpty();
  }

  @Test
  void aBandCanHaveNoEnd() {
    // a relay that counts the heat pump alone closes at any surplus where the start is 0 and never
    // opens below its draw; with a stop at the draw it always opens
    Counts pumpAlone = new Counts(false, false, true);
    assertThat(loop(pumpAlone, 0, 2, 2, 3).hunting())
        .containsExactly(band(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
    assertThat(loop(pumpAlone, 0, 1.999, 2, 3).hunting()).isEmpty();
    assertThat(loop(pumpAlone, 0.001, 2, 2, 3).hunting()).isEmpty();
  }

  @Test
  void aStopBelowTheLeastHeaterPowerSplitsTheBand() {
    // export alone, R = 0.5, d = 0.4, P = 1.0, A = 0.45, B = 0.1: closes from 0.95; opens up to 1.1
    // (nothing for the heater yet) and from 1.4 to 1.6, where the heater hides all or all but B
    ControlLoop loop = new ControlLoop(EXPORT, 0.45, 0.1, 1.0, 0.5, 0.4);
    assertThat(loop.hunting()).containsExactly(band(0.95, 1.1), band(1.4, 1.6));
    assertThat(loop.opens(1.2)).isFalse();
  }

  @Test
  void aStartBelowTheLeastHeaterPowerSplitsTheBand() {
    // A = 0.1 < d = 0.15: 0.1 to 0.149 kW is export that closes the relay, then the heater takes it
    ControlLoop loop = loop(EXPORT, 0.1, -0.5, 2.0, 3.0);
    assertThat(loop.hunting()).containsExactly(band(0.1, 0.149));
    assertThat(loop.lowestClosing_kW()).hasValue(0.1);
    // at d itself the heater has it all
    assertThat(loop(EXPORT, 0.15, -0.5, 2.0, 3.0).lowestClosing_kW()).hasValue(3.15);
  }

  @Test
  void aHeaterWeakerThanItsLeastPowerIsOff() {
    ControlLoop weak = new ControlLoop(EXPORT, 1, 0.5, 2, 0.1, 0.15);
    assertThat(weak.hunting()).isEqualTo(weak.withHeaterOff().hunting());
    assertThat(weak.hunting()).containsExactly(band(1, 2.5));
    ControlLoop atLeast = new ControlLoop(EXPORT, 1, 0.5, 2, 0.15, 0.15);
    assertThat(atLeast.hunting()).containsExactly(band(1.15, 2.65));
  }

  @Test
  void whatTheHeaterTakes() {
    assertThat(ControlLoop.heater(-1, 3, 0.15)).isZero();
    assertThat(ControlLoop.heater(0, 3, 0)).isZero();
    assertThat(ControlLoop.heater(0.149, 3, 0.15)).isZero();
    assertThat(ControlLoop.heater(0.15, 3, 0.15)).isEqualTo(0.15);
    assertThat(ControlLoop.heater(2, 3, 0.15)).isEqualTo(2);
    assertThat(ControlLoop.heater(5, 3, 0.15)).isEqualTo(3);
    assertThat(ControlLoop.heater(5, 0.1, 0.15)).isZero();
  }

  @Test
  void powersAreBroughtToWholeWatts() {
    assertThat(ControlLoop.watts(2.8004)).isEqualTo(2800);
    assertThat(ControlLoop.watts(-0.0996)).isEqualTo(-100);
    assertThat(ControlLoop.wholeWatts_kW(0.1 + 0.2)).isEqualTo(0.3);
    ControlLoop loop = new ControlLoop(EXPORT, 3.0004, 0.29996, 2.0004, 2.9999, 0.14999);
    assertThat(loop).isEqualTo(new ControlLoop(EXPORT, 3, 0.3, 2, 3, 0.15));
  }

  @Test
  void refusesWhatIsNoPower() {
    assertThatThrownBy(() -> loop(EXPORT, Double.NaN, 0, 1, 1)).hasMessageContaining("start_kW");
    assertThatThrownBy(() -> loop(EXPORT, 1, Double.NaN, 1, 1)).hasMessageContaining("stop_kW");
    assertThatThrownBy(() -> loop(EXPORT, 1, 0, -1, 1)).hasMessageContaining("draw_kW");
    assertThatThrownBy(() -> loop(EXPORT, 1, 0, 1, -1)).hasMessageContaining("heater_kW");
    assertThatThrownBy(() -> new ControlLoop(EXPORT, 1, 0, 1, 1, -1))
        .hasMessageContaining("heaterLeast_kW");
  }

  @Test
  void stopNotBelowStartRunsFree() {
    assertThat(loop(WITH_BOTH, 2, 2, 1, 0).runsFree()).isTrue();
    assertThat(loop(WITH_BOTH, 2, 2.1, 1, 0).runsFree()).isTrue();
    assertThat(loop(WITH_BOTH, 2, 1.9, 1, 0).runsFree()).isFalse();
    // by definition such a relay also hunts without any draw, between its thresholds
    assertThat(loop(EXPORT, 2, 2.1, 0, 0).hunting()).containsExactly(band(2, 2.1));
  }

  @Test
  void bandsHoldTheirEnds() {
    SurplusBand band = band(3.0, 5.5);
    assertThat(band.holds(3.0)).isTrue();
    assertThat(band.holds(5.5)).isTrue();
    assertThat(band.holds(2.9996)).as("3000 W").isTrue();
    assertThat(band.holds(2.999)).isFalse();
    assertThat(band.holds(5.501)).isFalse();
    assertThat(band.width_kW()).isEqualTo(2.5);
    assertThat(band(1, 1).width_kW()).isZero();
    assertThatThrownBy(() -> band(2, 1)).hasMessage("a band from 2.0 kW cannot end at 1.0 kW");
    assertThatThrownBy(() -> band(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  // ------------------------------------------------------------- brute force

  /** The definition, word for word, in whole watts and integers. */
  private record Definition(
      boolean export,
      boolean heater,
      boolean pump,
      int start,
      int stop,
      int draw,
      int most,
      int least) {
    int taken(int left) {
      int taken = Math.min(most, Math.max(0, left));
      return taken < least ? 0 : taken;
    }

    int before(int surplus) {
      int taken = taken(surplus);
      return (export ? surplus - taken : 0) + (heater ? taken : 0);
    }

    int running(int surplus) {
      int taken = taken(surplus - draw);
      return (export ? surplus - draw - taken : 0) + (heater ? taken : 0) + (pump ? draw : 0);
    }

    boolean hunts(int surplus) {
      return before(surplus) >= start && running(surplus) <= stop;
    }

    ControlLoop loop() {
      return new ControlLoop(
          new Counts(export, heater, pump),
          start / 1000.0,
          stop / 1000.0,
          draw / 1000.0,
          most / 1000.0,
          least / 1000.0);
    }

    static Definition random(Random random, int scale) {
      return new Definition(
          random.nextInt(8) > 0,
          random.nextBoolean(),
          random.nextBoolean(),
          random.nextInt(6 * scale) - scale,
          random.nextInt(6 * scale) - 2 * scale,
          random.nextInt(4 * scale),
          random.nextInt(3) == 0 ? 0 : random.nextInt(4 * scale),
          random.nextInt(2 * scale));
    }
  }

  @Test
  void agreesWithTheDefinitionAtEverySurplus() {
    Random random = new Random(39_850);
    for (int trial = 0; trial < 30_000; trial++) {
      Definition definition = Definition.random(random, 10);
      agreesAtEverySurplus(definition, definition.loop());
    }
  }

  private static void agreesAtEverySurplus(Definition definition, ControlLoop loop) {
    List<SurplusBand> bands = loop.hunting();
    for (int surplus = -80; surplus <= 200; surplus++) {
      double surplus_kW = surplus / 1000.0;
      boolean inABand = bands.stream().anyMatch(band -> band.holds(surplus_kW));
      if (inABand != definition.hunts(surplus)
          || loop.closes(surplus_kW) != definition.before(surplus) >= definition.start
          || loop.opens(surplus_kW) != definition.running(surplus) <= definition.stop) {
        throw new AssertionError(definition + " at " + surplus + " W: " + bands);
      }
    }
  }

  @Test
  void agreesWithTheDefinitionAtHouseholdPowers() {
    Random random = new Random(2026_11_25);
    for (int trial = 0; trial < 30_000; trial++) {
      Definition definition = Definition.random(random, 1000);
      ControlLoop loop = definition.loop();
      for (int look = 0; look < 40; look++) {
        int surplus = random.nextInt(20_000) - 4_000;
        agreesAt(definition, loop, surplus);
      }
      for (SurplusBand band : loop.hunting()) {
        agreesAroundItsEnds(definition, loop, band);
      }
    }
  }

  private static void agreesAroundItsEnds(
      Definition definition, ControlLoop loop, SurplusBand band) {
    for (int step = -1; step <= 1; step++) {
      agreesAt(definition, loop, clamped(band.from_kW()) + step);
      agreesAt(definition, loop, clamped(band.to_kW()) + step);
    }
  }

  private static int clamped(double edge_kW) {
    return (int) Math.max(-1e8, Math.min(1e8, ControlLoop.watts(edge_kW)));
  }

  private static void agreesAt(Definition definition, ControlLoop loop, int surplus) {
    double surplus_kW = surplus / 1000.0;
    boolean inABand = loop.hunting().stream().anyMatch(band -> band.holds(surplus_kW));
    if (inABand != definition.hunts(surplus)) {
      throw new AssertionError(definition + " at " + surplus + " W: " + loop.hunting());
    }
  }

  @Test
  void bandsAreDisjointAndRise() {
    Random random = new Random(5);
    int split = 0;
    for (int trial = 0; trial < 30_000; trial++) {
      List<SurplusBand> bands = Definition.random(random, 10).loop().hunting();
      split += bands.size() > 1 ? 1 : 0;
      for (int next = 1; next < bands.size(); next++) {
        assertThat(bands.get(next).from_kW()).isGreaterThan(bands.get(next - 1).to_kW() + 0.001);
      }
    }
    assertThat(split).as("settings with a split band").isPositive();
  }

  @Test
  void edgesAgreeWithTheDefinition() {
    Random random = new Random(77);
    for (int trial = 0; trial < 10_000; trial++) {
      Definition definition = Definition.random(random, 10);
      if (definition.export) {
        ControlLoop loop = definition.loop();
        assertThat(loop.lowestClosing_kW().orElseThrow())
            .isEqualTo(lowestClosing(definition) / 1000.0);
        assertThat(loop.importWhileHeld_kW()).isEqualTo(importWhileHeld(definition) / 1000.0);
      }
    }
  }

  private static int lowestClosing(Definition definition) {
    int surplus = -500;
    while (definition.before(surplus) < definition.start) {
      surplus++;
    }
    return surplus;
  }

  /** Import where the relay is about to let go: the watt above the highest surplus that opens. */
  private static int importWhileHeld(Definition definition) {
    int surplus = -500;
    while (definition.running(surplus) <= definition.stop) {
      surplus++;
    }
    int left = surplus - 1 - definition.draw;
    return Math.max(0, definition.taken(left) - left);
  }

  // ------------------------------------------------------------- the table, row by row

  private static double tenths(Random random, int least, int most) {
    return (least + random.nextInt(most - least + 1)) / 10.0;
  }

  /** Bands as a row of the table states them: one closed band, or none where it is empty. */
  private static void isTheBand(ControlLoop loop, double from_kW, double to_kW) {
    double from = ControlLoop.wholeWatts_kW(from_kW);
    double to = ControlLoop.wholeWatts_kW(to_kW);
    assertThat(loop.hunting())
        .as("%s", loop)
        .isEqualTo(from > to ? List.of() : List.of(band(from, to)));
  }

  @Test
  void rowHeaterCountedOrOff() {
    Random random = new Random(1);
    for (int trial = 0; trial < 5_000; trial++) {
      double a = tenths(random, 2, 60);
      double b = tenths(random, -20, 60);
      double p = tenths(random, 0, 50);
      double r = tenths(random, 0, 40);
      isTheBand(loop(WITH_HEATER, a, b, p, r), a, b + p);
      isTheBand(loop(EXPORT, a, b, p, r).withHeaterOff(), a, b + p);
      assertThat(loop(WITH_HEATER, a, b, p, r).hunting().isEmpty())
          .isEqualTo(ControlLoop.watts(a - b) > ControlLoop.watts(p));
    }
  }

  @Test
  void rowHeaterAndPumpCounted() {
    Random random = new Random(2);
    for (int trial = 0; trial < 5_000; trial++) {
      double a = tenths(random, 2, 60);
      double b = tenths(random, -20, 60);
      double p = tenths(random, 0, 50);
      isTheBand(loop(WITH_BOTH, a, b, p, tenths(random, 0, 40)), a, b);
      isTheBand(loop(WITH_PUMP, a, b, p, 0), a, b);
    }
  }

  @Test
  void rowExportAloneStopAtOrAboveTheLeastHeaterPower() {
    Random random = new Random(3);
    for (int trial = 0; trial < 5_000; trial++) {
      double a = tenths(random, 2, 60);
      double b = tenths(random, 2, 60);
      double p = tenths(random, 0, 50);
      double r = tenths(random, 2, 40);
      isTheBand(loop(EXPORT, a, b, p, r), a + r, b + p + r);
    }
  }

  @Test
  void rowExportAloneNegativeStop() {
    Random random = new Random(4);
    for (int trial = 0; trial < 5_000; trial++) {
      double a = tenths(random, 2, 60);
      double b = tenths(random, -50, -1);
      double p = tenths(random, 0, 100);
      double r = tenths(random, 2, 40);
      isTheBand(loop(EXPORT, a, b, p, r), a + r, b + p);
    }
  }

  @Test
  void rowExportAndPumpStopBelowDraw() {
    Random random = new Random(6);
    for (int trial = 0; trial < 5_000; trial++) {
      double a = tenths(random, 2, 60);
      double p = tenths(random, 1, 100);
      double b = tenths(random, -50, (int) Math.round(p * 10) - 1);
      double r = tenths(random, 2, 40);
      isTheBand(loop(WITH_PUMP, a, b, p, r), a + r, b);
    }
  }

  @Test
  void rowExportAndPumpStopAtOrAboveDraw() {
    Random random = new Random(8);
    for (int trial = 0; trial < 5_000; trial++) {
      double a = tenths(random, 2, 100);
      double p = tenths(random, 0, 50);
      // the row needs B − P at or above the heater's least power, or the start above that notch
      double b = p + tenths(random, 2, 50);
      double r = tenths(random, 2, 40);
      isTheBand(loop(WITH_PUMP, a, b, p, r), a + r, b + r);
    }
  }

  @Test
  void aStopAtTheDrawLeavesANotchAboveIt() {
    // Export and pump counted, B = P: between P and P + d the heater takes nothing and the relay
    // sees more than B. Row six states one band, [A + R, B + R]; where the start lies below P + d
    // the notch (P, P + d) does not hunt.
    ControlLoop loop = loop(WITH_PUMP, 0.3, 2.0, 2.0, 0.2);
    assertThat(loop.hunting()).containsExactly(band(0.5, 2.0), band(2.15, 2.2));
    assertThat(loop.closes(2.1) && loop.opens(2.1)).isFalse();
  }

  @Test
  void withoutTimersCountingExportAloneActsLikeCountingThePumpToo() {
    // stop B on export alone opens where stop B + P opens with the pump counted
    Random random = new Random(9);
    for (int trial = 0; trial < 5_000; trial++) {
      double a = tenths(random, -10, 60);
      double b = tenths(random, -20, 60);
      double p = tenths(random, 0, 50);
      double r = tenths(random, 0, 40);
      assertThat(loop(EXPORT, a, b, p, r).hunting())
          .isEqualTo(loop(WITH_PUMP, a, b + p, p, r).hunting());
    }
  }

  @Test
  void theWidthOfTheBandGrowsWithTheDrawAndShrinksWithTheGap() {
    double width_kW = 0;
    for (double draw_kW = 2.8; draw_kW < 6; draw_kW += 0.1) {
      double next_kW =
          loop(WITH_HEATER, 3, 0.3, draw_kW, 3).hunting().stream()
              .mapToDouble(SurplusBand::width_kW)
              .sum();
      assertThat(next_kW).isGreaterThan(width_kW);
      width_kW = next_kW;
    }
    assertThat(loop(WITH_HEATER, 3, 0.3, 2.8, 3).withStart(2.5).hunting().get(0).width_kW())
        .isCloseTo(0.6, within(1e-9));
  }
}
