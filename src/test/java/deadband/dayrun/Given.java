package deadband.dayrun;

import deadband.trade.HeatPumpCop;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** An installation under construction: a believable home whose every number a test may change. */
final class Given {
  boolean perPhase;
  double exportLimit_kW = Double.POSITIVE_INFINITY;
  Line house = Line.L1;
  double inverter_kW = 100;
  Line generator = Line.L1;
  Line sensor = Line.ALL;
  boolean seesHeatPump = true;
  double opening_C = 62;
  double closing_C = 60;
  double minimum_kW = 0.15;
  double exportMargin_kW = 0;
  boolean answersDemand = true;
  double diverterSensor_mm = 900;
  Line diverter = Line.L1;
  double immersion_kW = 3;
  double element_mm = 120;
  double thermostat_C = 70;
  double thermostatDifferential_K = 6;
  double cutOut_C = 80;
  List<Window> timed = List.of();
  Set<Counted> counts = EnumSet.of(Counted.EXPORT, Counted.IMMERSION);
  double start_kW = 3.2;
  double stop_kW = 0.3;
  double startDelay_min = 5;
  double stopDelay_min = 3;
  RelayModel.Call call = RelayModel.Call.WHILE_CLOSED;
  double startLag_min = 2;
  double minimumRun_min = 10;
  double minimumOff_min = 10;
  double heatPumpSensor_mm = 700;
  double everydayStart_C = 51;
  double everydayStop_C = 56;
  List<Window> blocked = List.of();
  List<Window> surplusBlocked = List.of();
  double surplusStart_C = 57;
  double surplusStop_C = 62;
  Line heatPump = Line.L1;
  HeatPumpCop.Fit fit = HeatPumpCop.Fit.STAFFELL_GROUND;
  double factor = 0.85;
  double minimumInput_kW = 1.8;
  double hotWaterInput_kW = 2.5;
  double maximumFlow_C = 70;
  double flowAboveTank_K = 5;
  BackupHeaterModel.Spec backup = BackupHeaterModel.Spec.none();
  DisinfectionModel.Spec disinfection = DisinfectionModel.Spec.none();
  BatteryModel.Spec battery = BatteryModel.Spec.none();
  Charger.Spec charger = Charger.Spec.none();
  double volume_L = 300;
  double height_mm = 1600;
  double loss_kWh_per_day = 1.8;
  double coilBottom_mm = 100;
  double coilTop_mm = 900;
  double coilCutOut_C = 80;
  double room_C = 20;
  int layers = TankModel.LAYERS;

  /** A home whose tank never fills and never cools: only the control loop acts. */
  static Given boundless() {
    Given given = new Given();
    given.volume_L = 100_000;
    given.loss_kWh_per_day = 0;
    given.everydayStart_C = Double.NEGATIVE_INFINITY;
    given.surplusStart_C = 55;
    return given;
  }

  /** The heat pump draws the same power whatever the tank's temperature. */
  Given constantDraw(double draw_kW) {
    minimumInput_kW = draw_kW;
    hotWaterInput_kW = draw_kW;
    return this;
  }

  Given untimed() {
    startLag_min = 0;
    minimumRun_min = 0;
    minimumOff_min = 0;
    return this;
  }

  Installation build() {
    return new Installation(
        new SupplyModel.Spec(perPhase, exportLimit_kW, house),
        new Installation.Generator(inverter_kW, generator),
        new GridSensorModel.Spec(sensor, seesHeatPump),
        new DiverterModel.Spec(
            opening_C,
            closing_C,
            minimum_kW,
            exportMargin_kW,
            answersDemand,
            diverterSensor_mm,
            diverter),
        new ImmersionModel.Spec(
            immersion_kW, element_mm, thermostat_C, thermostatDifferential_K, cutOut_C, timed),
        new RelayModel.Spec(counts, start_kW, stop_kW, startDelay_min, stopDelay_min, call),
        new HeatPumpModel.Spec(
            startLag_min,
            minimumRun_min,
            minimumOff_min,
            heatPumpSensor_mm,
            new HeatPumpModel.Programme(everydayStart_C, everydayStop_C, blocked, List.of()),
            new HeatPumpModel.Programme(surplusStart_C, surplusStop_C, surplusBlocked, List.of()),
            heatPump,
            new Performance.Spec(
                fit,
                factor,
                minimumInput_kW,
                hotWaterInput_kW,
                surplusStop_C,
                maximumFlow_C,
                flowAboveTank_K)),
        backup,
        disinfection,
        battery,
        charger,
        new TankModel.Spec(
            volume_L,
            height_mm,
            loss_kWh_per_day,
            coilBottom_mm,
            coilTop_mm,
            coilCutOut_C,
            room_C,
            layers));
  }
}
