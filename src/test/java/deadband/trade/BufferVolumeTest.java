package deadband.trade;

import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.value;
import static deadband.trade.OutsideCheck.worked;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class BufferVolumeTest {
  private static final double KW_PER_BTU_PER_H = 0.000293071;
  private static final double L_PER_US_GAL = 3.785412;

  static List<OutsideCheck> outside() {
    return List.of(
        worked(
            "buffer volume, 10 min, 48 000 against 2 000 Btu/h, 20 °F",
            "trade journal; inputs read, answer derived with 8.33 lb/gal",
            Known.DERIVED,
            value("[US gal], to 1 %", 46.0, 0.46, () -> journal_L() / L_PER_US_GAL),
            value("[L], to 1 %", 174, 1.74, BufferVolumeTest::journal_L)),
        independent(
            "buffer volume, 10 min, 4 against 2 kW, 2 K, 100 L in the system already",
            "practitioners' forum, 4.2 kJ a litre and kelvin",
            Known.READ,
            value("[L] in all, to 2 %", 142, 2.8, () -> BufferVolume.volume_L(10, 4, 2, 2, 35))),
        independent(
            "buffer volume, 10 min, 20 000 Btu/h, 10 °F, no load",
            "a maker's quick sum for heat pumps",
            Known.READ,
            value(
                "[US gal], to 1 %",
                40,
                0.4,
                () ->
                    BufferVolume.volume_L(10, 20_000 * KW_PER_BTU_PER_H, 0, 10 / 1.8, 35)
                        / L_PER_US_GAL)));
  }

  private static double journal_L() {
    return BufferVolume.volume_L(
        10, 48_000 * KW_PER_BTU_PER_H, 2_000 * KW_PER_BTU_PER_H, 20 / 1.8, 35);
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  @Test
  void runTimeUndoesVolume() {
    double volume_L = BufferVolume.volume_L(15, 5, 1.5, 6, 40);
    assertThat(BufferVolume.runTime_min(volume_L, 5, 1.5, 6, 40)).isCloseTo(15, within(1e-9));
  }

  @Test
  void swingUndoesVolume() {
    double volume_L = BufferVolume.volume_L(15, 5, 1.5, 6, 40);
    assertThat(BufferVolume.swing_K(15, 5, 1.5, volume_L, 40)).isCloseTo(6, within(1e-9));
    assertThat(BufferVolume.swing_K(15, 5, 5, volume_L, 40)).isZero();
    assertThatThrownBy(() -> BufferVolume.swing_K(15, 5, 1.5, 0, 40))
        .hasMessageContaining("volume_L");
  }

  @Test
  void startsAreMostAtHalfTheOutput() {
    // 100 L, 5 K at 35 °C hold 100 · 1.1536e-3 · 5 = 0.5768 kWh; 4 kW / (4 · 0.5768) = 1.734 an
    // hour
    double most = BufferVolume.startsPerHour(100, 4, 2, 5, 35);
    assertThat(most).isCloseTo(1.734, within(0.002));
    assertThat(BufferVolume.startsPerHour(100, 4, 1.9, 5, 35)).isLessThan(most);
    assertThat(BufferVolume.startsPerHour(100, 4, 2.1, 5, 35)).isLessThan(most);
    assertThat(BufferVolume.startsPerHour(100, 4, 0, 5, 35)).isZero();
    assertThat(BufferVolume.startsPerHour(100, 4, 4, 5, 35)).isZero();
    assertThatThrownBy(() -> BufferVolume.startsPerHour(0, 4, 2, 5, 35))
        .hasMessageContaining("volume_L");
  }

  @Test
  void handWorked() {
    // 220 L, 3.0 against 1.5 kW, 5 K at 35 °C: 220 · 1.1536e-3 · 5 = 1.2690 kWh; / 1.5 = 50.8 min
    assertThat(BufferVolume.runTime_min(220, 3.0, 1.5, 5, 35)).isCloseTo(50.76, within(0.05));
  }

  @Test
  void aLoadThatTakesAllNeedsNoBuffer() {
    assertThat(BufferVolume.volume_L(10, 4, 4, 5, 35)).isZero();
    assertThat(BufferVolume.volume_L(10, 4, 5, 5, 35)).isZero();
    assertThat(BufferVolume.runTime_min(0, 4, 4, 5, 35)).isInfinite();
    assertThat(BufferVolume.runTime_min(100, 4, 5, 5, 35)).isInfinite();
    assertThat(BufferVolume.runTime_min(0, 4, 2, 5, 35)).isZero();
    assertThat(BufferVolume.volume_L(0, 4, 2, 5, 35)).isZero();
  }

  @Test
  void moreLoadNeedsLessBuffer() {
    for (double load_kW = 0.5; load_kW < 4; load_kW += 0.5) {
      assertThat(BufferVolume.volume_L(10, 4, load_kW, 5, 35))
          .isLessThan(BufferVolume.volume_L(10, 4, load_kW - 0.5, 5, 35));
    }
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> BufferVolume.volume_L(-1, 4, 2, 5, 35))
        .hasMessageContaining("run_min");
    assertThatThrownBy(() -> BufferVolume.volume_L(1, -4, 2, 5, 35))
        .hasMessageContaining("source_kW");
    assertThatThrownBy(() -> BufferVolume.volume_L(1, 4, -2, 5, 35))
        .hasMessageContaining("load_kW");
    assertThatThrownBy(() -> BufferVolume.volume_L(1, 4, 2, 0, 35)).hasMessageContaining("swing_K");
    assertThatThrownBy(() -> BufferVolume.runTime_min(-1, 4, 2, 5, 35))
        .hasMessageContaining("volume_L");
    assertThatThrownBy(() -> BufferVolume.runTime_min(1, -4, 2, 5, 35))
        .hasMessageContaining("source_kW");
    assertThatThrownBy(() -> BufferVolume.runTime_min(1, 4, -2, 5, 35))
        .hasMessageContaining("load_kW");
    assertThatThrownBy(() -> BufferVolume.runTime_min(1, 4, 2, 0, 35))
        .hasMessageContaining("swing_K");
  }
}
