package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ProfileTest {
  private static final StepLength HALF_HOUR = StepLength.ofMinutes(30);

  private static Profile profile() {
    return Profile.of(
        HALF_HOUR,
        3600,
        new double[] {1, 2, 3, 4},
        new double[] {0.5, 0.5, 1.5, 0.5},
        new double[] {30, 0, 6, 0});
  }

  @Test
  void finerStepsHoldPowersAndSpreadDrawOff() {
    Profile fine = profile().at(StepLength.MINUTE);
    assertThat(fine.length()).isEqualTo(120);
    assertThat(fine.pv_kW(29)).isEqualTo(1);
    assertThat(fine.pv_kW(30)).isEqualTo(2);
    assertThat(fine.draw_L(0)).isEqualTo(1);
    assertThat(fine.drawn_L()).isCloseTo(36, within(1e-9));
    assertThat(fine.pv_kWh()).isCloseTo(profile().pv_kWh(), within(1e-9));
  }

  @Test
  void coarserStepsAverageAndGather() {
    Profile coarse = profile().at(StepLength.ofMinutes(60));
    assertThat(coarse.length()).isEqualTo(2);
    assertThat(coarse.pv_kW(1)).isEqualTo(3.5);
    assertThat(coarse.house_kW(1)).isEqualTo(1);
    assertThat(coarse.draw_L(0)).isEqualTo(30);
  }

  @Test
  void surplusBecomesSunOrHouseLoad() {
    Profile surplus = Profile.ofSurplus(StepLength.MINUTE, 0, new double[] {2, -1}, new double[2]);
    assertThat(surplus.pv_kW(0)).isEqualTo(2);
    assertThat(surplus.house_kW(0)).isZero();
    assertThat(surplus.pv_kW(1)).isZero();
    assertThat(surplus.house_kW(1)).isEqualTo(1);
  }

  @Test
  void aPartBeginsLater() {
    Profile part = profile().part(1, 3);
    assertThat(part.start_s()).isEqualTo(5400);
    assertThat(part.length()).isEqualTo(2);
    assertThat(part.house_kW(1)).isEqualTo(1.5);
  }

  @Test
  void whatCannotBeIsRefusedWithItsValue() {
    double[] two = new double[2];
    double[] bad = {0, Double.NaN};
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Profile.of(HALF_HOUR, 0, two, new double[3], two))
        .withMessageContaining("house_kW has 3 values");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Profile.of(HALF_HOUR, 0, two, two, new double[1]))
        .withMessageContaining("draw_L has 1 values");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Profile.of(HALF_HOUR, 0, two, bad, two))
        .withMessageContaining("house_kW NaN at step 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Profile.of(HALF_HOUR, 0, bad, two, two))
        .withMessageContaining("pv_kW NaN at step 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Profile.of(HALF_HOUR, 0, two, two, new double[] {0, -1}))
        .withMessageContaining("draw_L -1.0 at step 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Profile.of(HALF_HOUR, 86400, two, two, two))
        .withMessageContaining("86400");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> profile().at(new StepLength(720)))
        .withMessageContaining("cannot become");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> profile().part(0, 3).at(StepLength.ofMinutes(60)))
        .withMessageContaining("left over");
  }
}
