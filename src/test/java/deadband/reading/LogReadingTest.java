package deadband.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.document.Problem;
import deadband.meterlog.Column;
import deadband.meterlog.Meaning;
import deadband.meterlog.MeterLog;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LogReadingTest {

  private static LogReading reading(String text, LogOptions options) {
    return LogReading.ofStream(
        "log.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), options);
  }

  private static MeterLog log(String... lines) {
    LogReading reading = reading(String.join("\n", lines), LogOptions.none());
    assertThat(reading).isInstanceOf(LogReading.Read.class);
    return ((LogReading.Read) reading).log();
  }

  private static Problem problem(String... lines) {
    LogReading reading = reading(String.join("\n", lines), LogOptions.none());
    assertThat(reading).isInstanceOf(LogReading.Unreadable.class);
    return ((LogReading.Unreadable) reading).problems().get(0);
  }

  private static double value(MeterLog log, Meaning meaning, int row) {
    return log.column(meaning).orElseThrow().value(row);
  }

  @Test
  void unitsStandInTheHeaderInAnyForm() {
    MeterLog log =
        log(
            "Time,Heat pump power (W),PV [kW],Tank temperature °C",
            "2026-05-01 10:00,2800,3.5,48.5",
            "2026-05-01 10:01,2700,3.4,48.6");
    assertThat(log.interval_s()).isEqualTo(60);
    assertThat(value(log, Meaning.HEAT_PUMP, 0)).isEqualTo(2.8);
    assertThat(value(log, Meaning.PV, 1)).isEqualTo(3.4);
    assertThat(value(log, Meaning.TANK, 1)).isEqualTo(48.6);
  }

  @Test
  void semicolonsDecimalCommasAndThousandsMarks() {
    MeterLog log =
        log(
            "Zeit;Wärmepumpe (W);Netzbezug kW",
            "01.05.2026 10:00;2.800,5;0,5",
            "01.05.2026 10:15;1.200,0;12,25");
    assertThat(value(log, Meaning.HEAT_PUMP, 0)).isEqualTo(2.8005, within(1e-9));
    assertThat(value(log, Meaning.IMPORT, 1)).isEqualTo(12.25);
    assertThat(log.clock(0)).isEqualTo(LocalDateTime.of(2026, 5, 1, 10, 0));
  }

  @Test
  void quotedThousandsBesideDecimalPoints() {
    MeterLog log =
        log("time,house_W", "2026-05-01 10:00,\"1,250.5\"", "2026-05-01 10:01,\"12,000\"");
    assertThat(value(log, Meaning.HOUSE, 0)).isEqualTo(1.2505, within(1e-9));
    assertThat(value(log, Meaning.HOUSE, 1)).isEqualTo(12);
  }

  @Test
  void energyInTheIntervalIsToldFromARisingCounter() {
    MeterLog energy =
        log(
            "time,heat_pump_kWh",
            "2026-05-01 10:00,0.5",
            "2026-05-01 10:15,0.7",
            "2026-05-01 10:30,0.1");
    assertThat(energy.column(Meaning.HEAT_PUMP).orElseThrow().form()).isEqualTo(Column.Form.ENERGY);
    assertThat(value(energy, Meaning.HEAT_PUMP, 0)).isEqualTo(2.0, within(1e-9));
    MeterLog counter =
        log(
            "time,heat_pump_kWh",
            "2026-05-01 10:00,1500.5",
            "2026-05-01 10:15,1501.2",
            "2026-05-01 10:30,1501.2");
    assertThat(counter.column(Meaning.HEAT_PUMP).orElseThrow().form())
        .isEqualTo(Column.Form.COUNTER);
    assertThat(value(counter, Meaning.HEAT_PUMP, 0)).isEqualTo(2.8, within(1e-9));
    assertThat(value(counter, Meaning.HEAT_PUMP, 1)).isEqualTo(0);
    assertThat(value(counter, Meaning.HEAT_PUMP, 2)).isNaN();
  }

  @Test
  void anExchangedCounterGivesNoPowerAcrossTheExchange() {
    StringBuilder rows = new StringBuilder("time,heat_pump_kWh\n");
    for (int minute = 0; minute < 40; minute++) {
      double counter = minute < 20 ? 900 + minute : minute - 20;
      rows.append("2026-05-01 10:%02d,%.1f%n".formatted(minute, counter));
    }
    MeterLog log = log(rows.toString().split("\n"));
    assertThat(value(log, Meaning.HEAT_PUMP, 18)).isEqualTo(60, within(1e-9));
    assertThat(value(log, Meaning.HEAT_PUMP, 19)).isNaN();
  }

  @Test
  void theMonthStandsFirstWhereALaterRowShowsIt() {
    MeterLog log =
        log("Date,Time,Grid kW", "05/11/2026,23:30,1", "05/12/2026,00:00,1", "05/13/2026,00:30,1");
    assertThat(log.clock(0)).isEqualTo(LocalDateTime.of(2026, 5, 11, 23, 30));
    assertThat(log.clock(1)).isEqualTo(LocalDateTime.of(2026, 5, 12, 0, 0));
  }

  @Test
  void theMonthStandsFirstWhereOnlyThatKeepsTheOrder() {
    MeterLog log =
        log("time,grid_kW", "05/11/2026 23:30,1", "05/12/2026 00:00,1", "05/12/2026 00:30,1");
    assertThat(log.clock(2)).isEqualTo(LocalDateTime.of(2026, 5, 12, 0, 30));
  }

  @Test
  void theDayStandsFirstOtherwiseAndThatIsSaid() {
    LogReading.Read read =
        (LogReading.Read)
            reading("time,grid_kW\n05/11/2026 10:00,1\n05/11/2026 10:30,1\n", LogOptions.none());
    assertThat(read.log().clock(0)).isEqualTo(LocalDateTime.of(2026, 11, 5, 10, 0));
    assertThat(read.skipped()).contains("dates taken as day/month/year: no row shows which");
  }

  @Test
  void timesOfTheHalfDayAndEpochs() {
    assertThat(log("time,pv_kW", "2026-05-01 12:00 AM,1", "2026-05-01 1:00 PM,1").clock(1))
        .isEqualTo(LocalDateTime.of(2026, 5, 1, 13, 0));
    assertThat(log("epoch,pv_kW", "1777629600,1", "1777629660,1").clock(0))
        .isEqualTo(LocalDateTime.of(2026, 5, 1, 10, 0));
    assertThat(log("timestamp,pv_kW", "1777629600000,1", "1777629601000,1").interval_s())
        .isEqualTo(1);
  }

  @Test
  void offsetsRunThroughTheChangeToWinterTime() {
    MeterLog log =
        log(
            "time,grid_kW",
            "2026-10-25T02:30:00+02:00,1",
            "2026-10-25T02:00:00+01:00,2",
            "2026-10-25T02:30:00+01:00,3");
    assertThat(log.interval_s()).isEqualTo(1800);
    assertThat(log.gaps()).isEmpty();
    assertThat(log.clock(1)).isEqualTo(LocalDateTime.of(2026, 10, 25, 2, 0));
    assertThat(log.order().clockChanges()).hasSize(1);
  }

  @Test
  void aLocalClockPutForwardLeavesNoGap() {
    MeterLog log =
        log(
            "time,grid_kW",
            "2026-03-29 01:15,1",
            "2026-03-29 01:30,1",
            "2026-03-29 01:45,2",
            "2026-03-29 03:00,3",
            "2026-03-29 03:15,3");
    assertThat(log.gaps()).isEmpty();
    assertThat(log.order().clockChanges())
        .containsExactly("local clock put forward by an hour on 2026-03-29");
    assertThat(log.clock(3)).isEqualTo(LocalDateTime.of(2026, 3, 29, 3, 0));
  }

  @Test
  void aLocalClockPutBackKeepsBothHours() {
    StringBuilder rows = new StringBuilder("time,grid_kW\n");
    for (String time : "01:30 02:00 02:30 02:00 02:30 03:00 03:30".split(" ", 0)) {
      rows.append("2026-10-25 ").append(time).append(",1\n");
    }
    MeterLog log = log(rows.toString().split("\n"));
    assertThat(log.rows()).isEqualTo(7);
    assertThat(log.order().repeats()).isZero();
    assertThat(log.clock(5)).isEqualTo(LocalDateTime.of(2026, 10, 25, 3, 0));
  }

  @Test
  void gapsRepeatsAndRowsOutOfOrder() {
    MeterLog log =
        log(
            "time,grid_kW",
            "2026-05-01 10:00,1",
            "2026-05-01 10:02,3",
            "2026-05-01 10:01,2",
            "2026-05-01 10:02,3",
            "2026-05-01 10:03,4",
            "2026-05-01 10:20,5",
            "2026-05-01 10:21,6");
    assertThat(log.rows()).isEqualTo(6);
    assertThat(value(log, Meaning.GRID, 1)).isEqualTo(2);
    assertThat(log.order().repeats()).isEqualTo(1);
    assertThat(log.order().unequal()).isZero();
    assertThat(log.order().moved()).isEqualTo(1);
    assertThat(log.gaps()).hasSize(1);
    assertThat(log.gaps().get(0).from()).isEqualTo(LocalDateTime.of(2026, 5, 1, 10, 4));
  }

  @Test
  void severalHeaderLinesAndATotalsRow() {
    LogReading.Read read =
        (LogReading.Read)
            reading(
                """
                Portal of the meters
                Site: Elm Reach
                Time,Heat pump,Grid
                ,kWh,kWh
                2026-05-01 10:00,0.5,0.1
                2026-05-01 10:15,0.7,0.2
                Total,1.2,0.3
                """,
                LogOptions.none());
    assertThat(value(read.log(), Meaning.HEAT_PUMP, 0)).isEqualTo(2.0, within(1e-9));
    assertThat(read.skipped()).contains("1 row with a total left out");
  }

  @Test
  void theSignOfTheGridIsFoundByThePvPower() {
    String[] rows = {
      "time,net_kW,pv_kW",
      "2026-05-01 01:00,-0.4,0",
      "2026-05-01 02:00,-0.4,0",
      "2026-05-01 12:00,3.1,4",
      "2026-05-01 13:00,3.2,4"
    };
    MeterLog log = log(rows);
    assertThat(value(log, Meaning.GRID, 0)).isEqualTo(0.4);
    assertThat(value(log, Meaning.GRID, 2)).isEqualTo(-3.1);
    assertThat(log.column(Meaning.GRID).orElseThrow().remark()).contains("export positive");
  }

  @Test
  void importAndExportApartMakeTheGrid() {
    MeterLog log =
        log("time,import_W,export_W", "2026-05-01 10:00,0,500", "2026-05-01 10:01,250,0");
    assertThat(value(log, Meaning.GRID, 0)).isEqualTo(-0.5);
    assertThat(value(log, Meaning.GRID, 1)).isEqualTo(0.25);
  }

  @Test
  void metersApartByAColumnAreJoinedByTheirNames() {
    MeterLog log =
        log(
            "time,id,kW",
            "2026-05-01 10:00,heat pump,2.8",
            "2026-05-01 10:00,pv,4",
            "2026-05-01 10:01,heat pump,2.7",
            "2026-05-01 10:01,pv,3.9");
    assertThat(value(log, Meaning.HEAT_PUMP, 1)).isEqualTo(2.7);
    assertThat(value(log, Meaning.PV, 1)).isEqualTo(3.9);
  }

  @Test
  void ofMetersWithoutANameOneMustBeChosen() {
    String text =
        """
        time,id,kWh
        2026-05-01 10:00,8812,0.5
        2026-05-01 10:15,8812,0.7
        2026-05-01 10:00,8813,0.1
        2026-05-01 10:15,8813,0.2
        """;
    assertThat(problem(text).right()).contains("--meter");
    LogReading chosen = reading(text, new LogOptions(Map.of(), Optional.of("8813")));
    assertThat(chosen).isInstanceOf(LogReading.Read.class);
  }

  @Test
  void aColumnIsWhatItIsSaidToBe() {
    LogReading.Read read =
        (LogReading.Read)
            reading(
                "time,channel 7 (W)\n2026-05-01 10:00,1\n2026-05-01 10:01,2\n",
                new LogOptions(Map.of("channel 7 (W)", Meaning.HEAT_PUMP), Optional.empty()));
    assertThat(read.log().has(Meaning.HEAT_PUMP)).isTrue();
  }

  @Test
  void aFileThatIsNoLogIsRefusedWithWhatWouldBeRight() {
    assertThat(problem("").kind()).isEqualTo(Problem.Kind.EMPTY);
    assertThat(problem("hello", "world").right()).contains("a header");
    assertThat(
            problem(
                    "time,pv_kW",
                    "2026-05-01 10:00,1",
                    "soon,1",
                    "later,1",
                    "some day,1",
                    "never,1",
                    "2026-05-01 10:01,1")
                .found())
        .isEqualTo("line 3: soon");
  }

  @Test
  void energyOfAHeatPumpThatRunsTwiceADayIsNoCounter() {
    StringBuilder rows = new StringBuilder("time,heat_pump_Wh\n");
    for (int quarter = 0; quarter < 96; quarter++) {
      boolean runs = quarter / 4 == 5 || quarter / 4 == 14;
      rows.append(
          "2026-05-01 %02d:%02d,%d%n".formatted(quarter / 4, quarter % 4 * 15, runs ? 700 : 3));
    }
    MeterLog log = log(rows.toString().split("\n"));
    assertThat(log.column(Meaning.HEAT_PUMP).orElseThrow().form()).isEqualTo(Column.Form.ENERGY);
    assertThat(value(log, Meaning.HEAT_PUMP, 20)).isEqualTo(2.8, within(1e-9));
  }

  @Test
  void theSignOfTheGridIsFoundByTheHeatPumpAndByTheNight() {
    MeterLog byDay =
        log(
            "time,grid_W,pv_W,heat_pump_W",
            "2026-05-01 11:00,4000,4400,10",
            "2026-05-01 11:01,1200,4400,2810",
            "2026-05-01 11:02,1200,4400,2810",
            "2026-05-01 11:03,4000,4400,10");
    assertThat(value(byDay, Meaning.GRID, 1)).isEqualTo(-1.2);
    MeterLog turned =
        log(
            "time,grid_W,pv_W,heat_pump_W",
            "2026-05-01 11:00,2000,2400,10",
            "2026-05-01 11:01,-800,2400,2810",
            "2026-05-01 11:02,-800,2400,2810",
            "2026-05-01 11:03,2000,2400,10");
    assertThat(value(turned, Meaning.GRID, 1)).isEqualTo(0.8);
    assertThat(turned.column(Meaning.GRID).orElseThrow().remark())
        .isEqualTo("sign found: export positive, turned, since it follows the heat pump's power");
    MeterLog night =
        log(
            "time,grid_W",
            "2026-05-01 01:00,-400",
            "2026-05-01 02:00,-380",
            "2026-05-01 03:00,-400");
    assertThat(value(night, Meaning.GRID, 0)).isEqualTo(0.4);
  }

  @Test
  void aGridThatComesToZeroAndNotBelowIsImportOrExportAlone() {
    MeterLog log = log("time,grid_W", "2026-05-01 10:00,0", "2026-05-01 10:01,500");
    assertThat(log.has(Meaning.GRID)).isFalse();
    assertThat(value(log, Meaning.IMPORT, 1)).isEqualTo(0.5);
    assertThat(log.column(Meaning.IMPORT).orElseThrow().remark()).contains("import alone");
    MeterLog out =
        log(
            "time,grid_W,heat_pump_W",
            "2026-05-01 10:00,2000,10",
            "2026-05-01 10:01,0,2810",
            "2026-05-01 10:02,2000,10");
    assertThat(out.has(Meaning.GRID)).isFalse();
    assertThat(value(out, Meaning.EXPORT, 0)).isEqualTo(2);
  }

  @Test
  void anHourlyClockPutBackKeepsBothHours() {
    StringBuilder rows = new StringBuilder("time,grid_kW\n");
    int value = 1;
    for (String time : "00 01 02 02 03 04".split(" ", 0)) {
      rows.append("2026-10-25 %s:00,%d%n".formatted(time, value++));
    }
    MeterLog log = log(rows.toString().split("\n"));
    assertThat(log.rows()).isEqualTo(6);
    assertThat(log.order().clockChanges()).hasSize(1);
    assertThat(value(log, Meaning.GRID, 3)).isEqualTo(4);
  }

  @Test
  void rowsOfAClockThatRanAheadForAWhileAreMovedBack() {
    StringBuilder rows = new StringBuilder("time,grid_kW\n");
    for (int minute = 0; minute < 40; minute++) {
      int hour = minute >= 10 && minute < 20 ? 18 : 10;
      rows.append("2026-05-01 %d:%02d,%d%n".formatted(hour, minute, minute));
    }
    MeterLog log = log(rows.toString().split("\n"));
    assertThat(log.gaps()).isEmpty();
    assertThat(value(log, Meaning.IMPORT, 15)).isEqualTo(15);
    assertThat(log.order().clockChanges())
        .containsExactly("clock 8.0 h fast for 10 rows from 2026-05-01T10:10 on, put right");
  }

  @Test
  void aClockThatIsPutBackIsSaid() {
    StringBuilder rows = new StringBuilder("time,grid_kW\n");
    for (int minute = 0; minute < 40; minute++) {
      rows.append("2026-05-01 10:%02d,%d%n".formatted(minute < 20 ? minute : minute - 12, minute));
    }
    MeterLog log = log(rows.toString().split("\n"));
    assertThat(log.order().clockChanges())
        .containsExactly("clock put back by 12 min at 2026-05-01T10:08");
    assertThat(log.order().repeats()).isEqualTo(12);
  }

  @Test
  void pointsMarkThousandsOfWattsWithoutDecimals() {
    MeterLog log =
        log(
            "Zeit;Wärmepumpenleistung (W);PV-Erzeugung (W);Speichertemperatur (°C)",
            "01.05.2026 10:00;12;986;48",
            "01.05.2026 10:01;2.800;1.002;49");
    assertThat(value(log, Meaning.HEAT_PUMP, 1)).isEqualTo(2.8);
    assertThat(value(log, Meaning.PV, 0)).isEqualTo(0.986);
    assertThat(value(log, Meaning.PV, 1)).isEqualTo(1.002);
    assertThat(value(log, Meaning.TANK, 1)).isEqualTo(49);
    MeterLog decimals =
        log("time;pv_W;grid_W", "2026-05-01 10:00;12.125;-5.5", "2026-05-01 10:01;1.250;3");
    assertThat(value(decimals, Meaning.PV, 1)).isEqualTo(0.00125, within(1e-12));
  }

  @Test
  void readingsOfOneStateEachAreJoinedByTheirNamesAndUnits() {
    LogReading.Read read =
        (LogReading.Read)
            reading(
                """
                entity_id,state,unit,last_changed
                sensor.heat_pump_power,2.8,kW,2026-05-01T10:00:00Z
                sensor.tank_temperature,48.5,°C,2026-05-01T10:00:10Z
                sensor.hall,1,W,2026-05-01T10:00:15Z
                sensor.heat_pump_power,2.7,kW,2026-05-01T10:01:00Z
                sensor.tank_temperature,49,°C,2026-05-01T10:01:10Z
                sensor.hall,2,W,2026-05-01T10:01:15Z
                """,
                LogOptions.none());
    assertThat(value(read.log(), Meaning.HEAT_PUMP, 1)).isEqualTo(2.7);
    assertThat(value(read.log(), Meaning.TANK, 1)).isEqualTo(48.5);
    assertThat(read.skipped())
        .contains("meter sensor.hall left out: its name does not say what it measures");
  }

  @Test
  void importAndExportOfMetersApartMakeTheGrid() {
    MeterLog log =
        log(
            "id,time,kWh",
            "main import,2026-05-01 10:00,0.1",
            "main import,2026-05-01 10:15,0",
            "main export,2026-05-01 10:00,0",
            "main export,2026-05-01 10:15,0.5");
    assertThat(value(log, Meaning.GRID, 0)).isEqualTo(0.4, within(1e-9));
    assertThat(value(log, Meaning.GRID, 1)).isEqualTo(-2.0, within(1e-9));
  }

  @Test
  void aFileOfAnOlderCharacterSetIsRead() {
    byte[] bytes =
        "Zeit;Wärmepumpe (kW);Tank °C\n01.05.2026 10:00;2,8;48\n01.05.2026 10:01;2,7;48\n"
            .getBytes(StandardCharsets.ISO_8859_1);
    LogReading reading =
        LogReading.ofStream("log.csv", new ByteArrayInputStream(bytes), LogOptions.none());
    assertThat(value(((LogReading.Read) reading).log(), Meaning.HEAT_PUMP, 1)).isEqualTo(2.7);
  }

  @Test
  void greenButton() {
    String block =
        "<feed xmlns='http://naesb.org/espi'><LocalTimeParameters><tzOffset>3600</tzOffset>"
            + "</LocalTimeParameters><ReadingType><flowDirection>1</flowDirection>"
            + "<powerOfTenMultiplier>0</powerOfTenMultiplier><uom>72</uom></ReadingType>"
            + "<IntervalBlock><interval><duration>86400</duration><start>0</start></interval>"
            + "<IntervalReading><timePeriod><duration>900</duration><start>1777629600</start>"
            + "</timePeriod><value>500</value></IntervalReading>"
            + "<IntervalReading><timePeriod><duration>900</duration><start>1777630500</start>"
            + "</timePeriod><value>250</value></IntervalReading></IntervalBlock></feed>";
    MeterLog log = log(block);
    assertThat(value(log, Meaning.IMPORT, 0)).isEqualTo(2.0, within(1e-9));
    assertThat(log.clock(0)).isEqualTo(LocalDateTime.of(2026, 5, 1, 11, 0));
    assertThat(log.has(Meaning.GRID)).as("what is exported is not in the log").isFalse();
    MeterLog both =
        log(
            block.replace(
                "</feed>",
                block
                    .substring(block.indexOf("<ReadingType>"))
                    .replace("<flowDirection>1<", "<flowDirection>19<")
                    .replace(">500<", ">900<")));
    assertThat(value(both, Meaning.GRID, 0)).isEqualTo(2.0 - 3.6, within(1e-9));
  }

  @Test
  void greenButtonReadsNoExternalEntity() {
    String bait =
        "<!DOCTYPE feed [<!ENTITY x SYSTEM"
            + " 'file:///etc/hostname'>]><feed><ReadingType><uom>72</uom>"
            + "</ReadingType><IntervalReading><timePeriod><start>&x;</start></timePeriod>"
            + "<value>1</value></IntervalReading></feed>";
    assertThat(problem(bait).kind()).isIn(Problem.Kind.NOT_FITTING, Problem.Kind.MISSING);
  }

  @Test
  void telegramsOfAP1Port() {
    String telegram =
        """
        /XXX5 A meter\r
        \r
        1-3:0.2.8(42)\r
        0-0:1.0.0(26050112%s00S)\r
        1-0:1.8.1(001234.567*kWh)\r
        1-0:1.7.0(%s*kW)\r
        1-0:2.7.0(00.250*kW)\r
        !A1B2\r
        """;
    MeterLog log = log(telegram.formatted("00", "01.500") + telegram.formatted("01", "02.500"));
    assertThat(log.clock(0)).isEqualTo(LocalDateTime.of(2026, 5, 1, 12, 0));
    assertThat(log.interval_s()).isEqualTo(60);
    assertThat(value(log, Meaning.GRID, 1)).isEqualTo(2.25);
  }
}
