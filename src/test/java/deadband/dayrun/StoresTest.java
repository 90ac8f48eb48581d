package deadband.dayrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Who takes what in which turn; steps of an hour, so that kW and kWh are the same numbers. */
class StoresTest {
  private static final Offset<Double> KW = within(1e-12);
  private final Given given = new Given();
  private final Step now = new Step();

  private Stores stores() {
    Stores stores = new Stores(given.build(), StepLength.ofMinutes(60));
    stores.begin(now);
    return stores;
  }

  private void battery(Set<Load> before, Set<Load> into, double stored_kWh) {
    given.battery = new BatteryModel.Spec(20, stored_kWh, 3, 1, before, into, Line.L1);
  }

  private void charger(boolean follows, Set<Load> before) {
    given.charger = new Charger.Spec(follows, 1.4, 4, 99, Window.ALWAYS, before, Line.L1);
  }

  @Test
  void eachTakesOnlyInItsOwnTurn() {
    battery(EnumSet.of(Load.IMMERSION), Set.of(), 0);
    charger(true, EnumSet.of(Load.HEAT_PUMP));
    Stores stores = stores();
    assertThat(stores.take_kW(0, 9, now)).isZero();
    assertThat(stores.take_kW(1, 9, now)).isEqualTo(4);
    assertThat(stores.take_kW(2, 2, now)).isEqualTo(2);
    assertThat(stores.take_kW(3, 9, now)).isZero();
    assertThat(now.charger_kW).isEqualTo(4);
    assertThat(now.charge_kW).isEqualTo(2);
  }

  @Test
  void theEarliestOfSeveralPlacesCounts() {
    battery(EnumSet.of(Load.IMMERSION, Load.HOUSE), Set.of(), 0);
    assertThat(stores().take_kW(0, 9, now)).isEqualTo(3);
  }

  @Test
  void inOneTurnTheChargerComesFirstUnlessTheBatteryStandsBeforeIt() {
    battery(Set.of(), Set.of(), 0);
    charger(true, Set.of());
    assertThat(stores().take_kW(3, 5, now)).isEqualTo(5);
    assertThat(now.charger_kW).isEqualTo(4);
    assertThat(now.charge_kW).isEqualTo(1);
    battery(EnumSet.of(Load.CHARGER), Set.of(), 0);
    assertThat(stores().take_kW(3, 5, now)).isEqualTo(5);
    assertThat(now.charge_kW).isEqualTo(3);
    assertThat(now.charger_kW).isEqualTo(2);
  }

  @Test
  void aChargerThatDoesNotFollowTakesItsPowerWhateverIsOffered() {
    charger(false, EnumSet.of(Load.IMMERSION));
    assertThat(stores().take_kW(0, -2, now)).isEqualTo(4);
  }

  @Test
  void wantIsWhatTheSunLeavesOpenInTheOrderOfTheLoads() {
    battery(Set.of(), EnumSet.of(Load.HEAT_PUMP, Load.IMMERSION), 9);
    Stores stores = stores();
    now.pv_kW = 2;
    now.house_kW = 1.5;
    now.heatPump_kW = 1;
    now.backup_kW = 0.5;
    now.immersion_kW = 0.25;
    stores.discharge(now, 0);
    // 0.5 kW are left for 1.5 kW of heat pump: it wants 1, the heater all of its 0.25 kW
    assertThat(now.discharge_kW).isCloseTo(1.25, KW);
  }

  @Test
  void whatStoodEarlyIsNotThereForTheLoads() {
    battery(Set.of(), EnumSet.of(Load.HOUSE), 9);
    Stores stores = stores();
    now.pv_kW = 2;
    now.house_kW = 1.5;
    stores.discharge(now, 1);
    assertThat(now.discharge_kW).isCloseTo(0.5, KW);
  }

  @Test
  void theChargerWantsWhatTheHouseLeaves() {
    battery(Set.of(), EnumSet.of(Load.CHARGER), 9);
    charger(false, Set.of());
    Stores stores = stores();
    stores.take_kW(0, 0, now);
    now.pv_kW = 3;
    now.house_kW = 1;
    stores.discharge(now, 0);
    assertThat(now.discharge_kW).as("charger 4 kW, 2 kW of sun left").isCloseTo(2, KW);
  }

  @Test
  void aBatteryThatChargesDoesNotDischarge() {
    battery(EnumSet.of(Load.HOUSE), EnumSet.of(Load.HOUSE), 9);
    Stores stores = stores();
    now.pv_kW = 1;
    now.house_kW = 1;
    stores.take_kW(0, 1, now);
    stores.discharge(now, 1);
    assertThat(now.charge_kW).isEqualTo(1);
    assertThat(now.discharge_kW).isZero();
  }

  @Test
  void withoutBatteryAndChargerNothingIsTaken() {
    Stores stores = stores();
    assertThat(stores.take_kW(3, 9, now)).isZero();
    now.house_kW = 1;
    stores.discharge(now, 0);
    assertThat(now.discharge_kW).isZero();
  }
}
