package deadband.setup;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.document.Pointer;
import deadband.setup.Asked.Where;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DataSheetTest {

  private static final Set<Where> OF_THE_SITE =
      EnumSet.of(Where.CONTROLLER_MENU, Where.HEAT_PUMP_MENU, Where.MEASURE, Where.CUSTOMER);

  private static List<Pointer> ofType() {
    List<Pointer> found = new ArrayList<>();
    within(Shape.of(Setup.class), Pointer.root(), found);
    return found;
  }

  private static void within(Shape shape, Pointer at, List<Pointer> found) {
    for (Field field : shape.fields()) {
      if (field.kind() instanceof FieldKind.Section section && !field.optional()) {
        within(section.shape(), at.child(field.name()), found);
      } else if (field.ofType()) {
        found.add(at.child(field.name()));
      }
    }
  }

  /** What is set, measured or decided by the customer is no matter of the type. */
  @Test
  void noSettingAndNothingOfTheSiteIsOfType() {
    assertThat(ofType())
        .hasSizeGreaterThan(40)
        .allSatisfy(at -> assertThat(Question.about(at).orElseThrow().where()).isNotIn(OF_THE_SITE))
        .noneMatch(
            at -> at.toString().matches("/(site|supply|house|asFound|isolation|observed).*"));
  }

  /** A safety device, a declaration and a test are looked at where the thing stands. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/immersion/ownCutOut",
        "/tank/coil/ownCutOut",
        "/relay/declared",
        "/diverter/sensor/declared",
        "/heatPump/surplusInput/confirmed",
        "/immersion/thermostat_C"
      })
  void whatMustBeSeenOnSiteIsNot(String at) {
    assertThat(Question.about(Pointer.parse(at))).isPresent();
    assertThat(ofType()).doesNotContain(Pointer.parse(at));
  }
}
