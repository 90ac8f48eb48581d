package deadband.trade;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.trade.DisinfectionCycle.Treatment;
import org.junit.jupiter.api.Test;

class CycleShortfallTest {

  /** Whichever alternative a programme follows, it passes exactly where no number falls short. */
  @Test
  void noNumberFallsShortExactlyWhereATreatmentIsMet() {
    int met = 0;
    for (DisinfectionCycle cycle : DisinfectionCycle.ALL) {
      for (double target_C : new double[] {40, 55, 59.9, 60, 62, 64.9, 65, 69.9, 70, 80}) {
        for (double hold_min : new double[] {0, 1.9, 2, 4, 10, 20, 31, 32, 59, 60, 90}) {
          for (int every_days : new int[] {1, 2, 6, 7, 8, 30}) {
            boolean passes = cycle.isMetBy(new Treatment(target_C, hold_min, every_days, 1));
            assertThat(isShort(cycle, target_C, hold_min, every_days))
                .as("%s at %s °C, %s min, every %s d", cycle.name(), target_C, hold_min, every_days)
                .isEqualTo(!passes);
            met += passes ? 1 : 0;
          }
        }
      }
    }
    assertThat(met).isPositive();
  }

  private static boolean isShort(
      DisinfectionCycle cycle, double target_C, double hold_min, double every_days) {
    return target_C < cycle.leastTarget_C()
        || every_days > cycle.longestInterval_days(target_C)
        || hold_min < cycle.leastHold_min(target_C, every_days);
  }

  @Test
  void theWeeklyAlternativeOfTheAustralianCycleAsksForItsHold() {
    assertThat(DisinfectionCycle.AS_3498.leastHold_min(60, 7)).isEqualTo(32);
    assertThat(DisinfectionCycle.AS_3498.leastHold_min(60, 1)).isZero();
  }

  @Test
  void homesAreHeldToARuleThatSpeaksOfHomes() {
    assertThat(DisinfectionCycle.inHomesOf("GB")).contains(DisinfectionCycle.GB_DOMESTIC);
    assertThat(DisinfectionCycle.inHomesOf("NZ")).contains(DisinfectionCycle.AS_3498);
    assertThat(DisinfectionCycle.inHomesOf("CH")).isEmpty();
  }

  /** AS 3498 (second-hand): 90 % where it is held 32 min in each 7 days, 45 % where it is daily. */
  @Test
  void theShareIsThatOfTheTreatmentCarriedOut() {
    assertThat(DisinfectionCycle.AS_3498.leastShare(7)).isEqualTo(0.90);
    assertThat(DisinfectionCycle.AS_3498.leastShare(1)).isEqualTo(0.45);
    assertThat(DisinfectionCycle.AS_3498.leastShare(0.5)).isEqualTo(0.45);
    assertThat(DisinfectionCycle.AS_3498.leastShare(1.01)).isEqualTo(0.90);
  }

  @Test
  void aProgrammeThatRunsTooSeldomIsHeldToTheRarestTreatment() {
    assertThat(DisinfectionCycle.AS_3498.leastShare(14)).isEqualTo(0.90);
    assertThat(DisinfectionCycle.ISSO_55_1.leastShare(30)).isEqualTo(1);
  }

  @Test
  void aChosenCycleNeverAsksForLessThanTheCountrysOwn() {
    assertThat(DisinfectionCycle.HSE_L8.canReplace(DisinfectionCycle.GB_DOMESTIC, "GB")).isTrue();
    assertThat(DisinfectionCycle.HSE_L8.canReplace(DisinfectionCycle.ISSO_55_1, "NL")).isTrue();
    assertThat(DisinfectionCycle.ORDER_2005.canReplace(DisinfectionCycle.GB_DOMESTIC, "GB"))
        .isFalse();
    assertThat(DisinfectionCycle.GB_DOMESTIC.canReplace(DisinfectionCycle.ISSO_55_1, "NL"))
        .isFalse();
    assertThat(DisinfectionCycle.AS_3498.canReplace(DisinfectionCycle.ISSO_55_1, "NL")).isFalse();
  }

  @Test
  void aProgrammeIsHeldAgainstTheCyclesOfEveryCountry() {
    assertThat(DisinfectionCycle.isKnownToDo(60, 20, 7)).isTrue();
    assertThat(DisinfectionCycle.isKnownToDo(60, 19.99, 7)).isFalse();
    assertThat(DisinfectionCycle.isKnownToDo(60, 0, 1)).isTrue();
    assertThat(DisinfectionCycle.isKnownToDo(59.99, 60, 1)).isFalse();
    assertThat(DisinfectionCycle.isKnownToDo(60, 60, 7.01)).isFalse();
  }

  @Test
  void aHoldThatKillsLessThanNineInTenKillsNothing() {
    assertThat(DisinfectionCycle.kills(60, 60)).isTrue();
    assertThat(DisinfectionCycle.kills(60, 1)).isFalse();
    assertThat(DisinfectionCycle.kills(54.99, 600)).isFalse();
    assertThat(DisinfectionCycle.kills(150, 10)).isTrue();
  }
}
