package deadband.trade;

import static deadband.trade.OutsideCheck.independent;
import static deadband.trade.OutsideCheck.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import deadband.trade.TappingProfile.DrawOff;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class TappingProfileTest {
  private static final String TABLE = "Reg. (EU) 814/2013 Annex III Table 1";

  static List<OutsideCheck> outside() {
    return List.of(
        independent(
            "heat of a day by tapping profile, sum of the draw-offs",
            TABLE,
            Known.READ,
            sum(TappingProfile.XXXS, 0.345),
            sum(TappingProfile.XXS, 2.100),
            sum(TappingProfile.XS, 2.100),
            sum(TappingProfile.S, 2.100),
            sum(TappingProfile.M, 5.845),
            sum(TappingProfile.L, 11.655),
            sum(TappingProfile.XL, 19.07),
            sum(TappingProfile.XXL, 24.53),
            sum(TappingProfile.XXXL, 46.76),
            sum(TappingProfile.XXXXL, 93.52)));
  }

  private static OutsideCheck.Value sum(TappingProfile profile, double expected_kWh) {
    return value(
        profile.size() + " [kWh]",
        expected_kWh,
        1e-9,
        () -> profile.drawOffs().stream().mapToDouble(DrawOff::heat_kWh).sum());
  }

  @TestFactory
  @Tag("outside")
  Stream<DynamicTest> outsideValues() {
    return OutsideCheck.tests(outside());
  }

  /** Data file: all ten load profiles, each draw-off. */
  @Test
  @Tag("outside")
  void everyDrawOffOfTheDataFile() {
    DataFile file = DataFile.read("tapping_profiles_814_2013.csv");
    assertThat(file.size()).isEqualTo(184);
    int row = 0;
    for (TappingProfile profile : TappingProfile.values()) {
      for (DrawOff drawOff : profile.drawOffs()) {
        assertThat(profile.size()).isEqualTo(file.text(row, "profile"));
        assertThat(clock(drawOff.minute())).isEqualTo(file.text(row, "time"));
        assertThat(drawOff.heat_kWh()).isEqualTo(file.number(row, "q_tap_kwh"));
        assertThat(drawOff.flow_L_per_min()).isEqualTo(file.number(row, "flow_l_min"));
        assertThat(drawOff.useful_C()).isEqualTo(file.number(row, "t_m_degC"));
        assertThat(peak(drawOff.peak_C())).isEqualTo(file.text(row, "t_p_degC"));
        row++;
      }
    }
    assertThat(row).isEqualTo(file.size());
  }

  private static String clock(int minute) {
    return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
  }

  private static String peak(OptionalDouble peak_C) {
    return peak_C.isEmpty() ? "" : String.format(Locale.ROOT, "%.0f", peak_C.getAsDouble());
  }

  @Test
  void theReferenceIsTheSumOfItsDrawOffs() {
    for (TappingProfile profile : TappingProfile.values()) {
      assertThat(profile.drawOffs().stream().mapToDouble(DrawOff::heat_kWh).sum())
          .as(profile.size())
          .isCloseTo(profile.reference_kWh(), within(1e-9));
    }
  }

  @Test
  void drawOffsRiseThroughTheDay() {
    for (TappingProfile profile : TappingProfile.values()) {
      List<DrawOff> drawOffs = profile.drawOffs();
      assertThat(drawOffs).extracting(DrawOff::minute).isSorted();
      assertThat(drawOffs).allSatisfy(drawOff -> assertThat(drawOff.minute()).isBetween(0, 1439));
    }
  }

  @Test
  void theFirstAndAMidMorningDrawOffOfProfileM() {
    assertThat(TappingProfile.M.drawOffs()).hasSize(23);
    assertThat(TappingProfile.M.drawOffs().get(1))
        .isEqualTo(new DrawOff(425, 1.4, 6, 40, OptionalDouble.empty()));
    assertThat(TappingProfile.M.drawOffs().get(9))
        .isEqualTo(new DrawOff(630, 0.105, 3, 10, OptionalDouble.of(40)));
  }

  @Test
  void smallestProfileThatCoversAUse() {
    assertThat(TappingProfile.atLeast(0)).isEqualTo(TappingProfile.XXXS);
    assertThat(TappingProfile.atLeast(5.845)).isEqualTo(TappingProfile.M);
    assertThat(TappingProfile.atLeast(5.846)).isEqualTo(TappingProfile.L);
    assertThat(TappingProfile.atLeast(500)).isEqualTo(TappingProfile.XXXXL);
    assertThatThrownBy(() -> TappingProfile.atLeast(-1)).hasMessageContaining("daily_kWh");
  }
}
