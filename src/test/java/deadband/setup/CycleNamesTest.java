package deadband.setup;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.trade.DisinfectionCycle;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class CycleNamesTest {

  @Test
  void theSetupFileKnowsEveryCycleByItsName() {
    assertThat(Arrays.stream(Site.DisinfectionCycle.values()).map(Site.DisinfectionCycle::word))
        .containsExactlyElementsOf(
            DisinfectionCycle.ALL.stream().map(DisinfectionCycle::name).toList());
  }
}
