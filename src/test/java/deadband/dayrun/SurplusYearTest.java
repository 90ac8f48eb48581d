package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.dayrun.Surroundings.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whether relay and heat pump do anything in any season. */
class SurplusYearTest {

  private final Given given = new Given();

  private static Surroundings facing(double azimuth_deg) {
    SolarArray array = new SolarArray(52.3, 60, azimuth_deg, 8, 8, 0.85);
    return new Surroundings(array, Household.of(4, 0.4, 56, 10), Source.GROUND);
  }

  private SurplusYear year(double azimuth_deg) {
    return SurplusYear.of(given.build(), facing(azimuth_deg));
  }

  @Test
  void aHomeThatWorksCostsAFewDays() {
    SurplusYear south = year(180);
    assertThat(south.relayCloses()).isTrue();
    assertThat(south.heatPumpRuns()).isTrue();
    assertThat(south.days()).isLessThan(36);
    assertThat(south.result().steps()).isEqualTo(1440L * south.days());
  }

  @Test
  void aRoofThatNeverReachesTheStartIsRunThroughAllSeasons() {
    given.start_kW = 5.5;
    SurplusYear north = year(0);
    assertThat(north.days()).isEqualTo(36);
    assertThat(north.relayCloses()).isFalse();
    assertThat(north.result().mostCounted_kW()).isBetween(0.5, 5.5);
    assertThat(north.result().coolestWhenCalled_C()).isInfinite();
    assertThat(year(180).relayCloses()).isTrue();
  }

  @Test
  void aBlockedProgrammeIsCalledInVain() {
    given.surplusBlocked = List.of(Window.ALWAYS);
    SurplusYear blocked = year(180);
    assertThat(blocked.days()).isEqualTo(36);
    assertThat(blocked.relayCloses()).isTrue();
    assertThat(blocked.heatPumpRuns()).isFalse();
    assertThat(blocked.result().coolestWhenCalled_C()).isLessThan(given.surplusStart_C);
  }

  @Test
  void theSeasonsAreADullABrokenAndAClearDayOfEachMonth() {
    Surroundings home = facing(180);
    for (int month = 0; month < 12; month++) {
      double dull_kWh = home.season(3 * month).profile().pv_kWh();
      double broken_kWh = home.season(3 * month + 1).profile().pv_kWh();
      double clear_kWh = home.season(3 * month + 2).profile().pv_kWh();
      assertThat(dull_kWh).isLessThan(broken_kWh);
      assertThat(broken_kWh).isLessThan(clear_kWh);
    }
  }
}
