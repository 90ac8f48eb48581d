package deadband.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import deadband.dayrun.Profile;
import deadband.dayrun.Recording;
import deadband.dayrun.Recording.Quantity;
import deadband.dayrun.Recordings;
import deadband.reading.ProfileReading;
import deadband.reading.ProfileReading.Column;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TraceCsvTest {

  static List<Recording> recordings() {
    return List.of(Recordings.hunting(), Recordings.cloud(), Recordings.coarse());
  }

  @ParameterizedTest
  @MethodSource("recordings")
  void isADayFileThatHoldsTheSameDay(Recording recording) {
    ProfileReading reading = ProfileReading.ofText("trace.csv", TraceCsv.of(recording));
    assertThat(reading).isInstanceOf(ProfileReading.Read.class);
    ProfileReading.Read read = (ProfileReading.Read) reading;
    assertThat(read.entered()).containsExactly(Column.PV, Column.HOUSE, Column.DRAW);
    Profile profile = read.profile();
    assertThat(profile.step()).isEqualTo(recording.step());
    assertThat(profile.start_s()).isEqualTo(recording.secondOfDay(0));
    assertThat(profile.length()).isEqualTo(recording.length());
    for (int at = 0; at < profile.length(); at++) {
      assertThat(profile.pv_kW(at)).isCloseTo(recording.value(Quantity.PV, at), within(5.1e-7));
      assertThat(profile.house_kW(at))
          .isCloseTo(recording.value(Quantity.HOUSE, at), within(5.1e-7));
      assertThat(profile.draw_L(at)).isCloseTo(recording.value(Quantity.DRAW, at), within(5.1e-7));
    }
  }

  @Test
  void hasARowAStepAndACellAColumn() {
    Recording recording = Recordings.hunting();
    List<String> lines = TraceCsv.of(recording).lines().toList();
    assertThat(lines.get(0))
        .startsWith("time,pv_kW,house_kW,draw_L,counted_kW,heatPump_kW")
        .endsWith("tankBottom_C,relayClosed,heatPump,runEnded,onSurplus,disinfecting");
    assertThat(lines).hasSize(1441);
    int cells = lines.get(0).split(",", -1).length;
    assertThat(lines).allMatch(line -> line.split(",", -1).length == cells);
    assertThat(lines.get(1)).startsWith("00:00,0,0.35,0,-0.35,").endsWith(",0,off,none,0,0");
    assertThat(lines).anyMatch(line -> line.endsWith(",0,running,timer,1,0"));
  }

  @Test
  void numbersAreShortAndNeverExponents() {
    assertThat(TraceCsv.of(Recordings.cloud()).lines().skip(1))
        .allMatch(line -> line.matches("\\d\\d:\\d\\d(,-?\\d+(\\.\\d{0,5}[1-9])?){18},.*"))
        .noneMatch(line -> line.contains(",-0,"));
  }
}
