package deadband.topics.ladder;

import static org.assertj.core.api.Assertions.assertThat;

import deadband.limits.Limit;
import deadband.limits.LimitOverride;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.setup.Outlet.Kind;
import deadband.setup.Setup;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a mixing valve may give, beyond the rows of the rule page. */
class OutletCeilingTest {

  private static OutletCeiling of(String site, Limits limits, Kind kind, double mixed_C) {
    String text = "{ \"site\": " + site + " }";
    Setup setup = ((SetupReading.Read) SetupReading.ofText("a home", text)).setup();
    return OutletCeiling.of(kind, mixed_C, setup, limits).orElseThrow();
  }

  private static OutletCeiling standard(String site, Kind kind, double mixed_C) {
    return of(site, Limits.standard(), kind, mixed_C);
  }

  /** A limits file settles what is a recommendation, in any country. */
  @Test
  void aLimitThatTheSiteSetsHoldsAsALawDoes() {
    Limits own =
        Limits.with(
            List.of(
                new LimitOverride(
                    Limit.OUTLET_BATH,
                    46,
                    "limits.json",
                    Optional.of("the site"),
                    Optional.of("a reason"),
                    Optional.of("a name"))));
    for (String site : new String[] {"{}", "{ \"country\": \"FR\" }", "{ \"country\": \"GB\" }"}) {
      OutletCeiling bath = of(site, own, Kind.BATH, 47);
      assertThat(bath.law()).isTrue();
      assertThat(bath.bound().firm()).isTrue();
      assertThat(bath.limit().value()).isEqualTo(46);
    }
    assertThat(of("{}", own, Kind.SHOWER, 47).law()).as("another outlet").isFalse();
  }

  @Test
  void aRecommendationIsNeverFirm() {
    assertThat(standard("{}", Kind.BATH, 60).bound().firm()).isFalse();
    assertThat(standard("{ \"country\": \"DE\" }", Kind.BASIN, 60).bound().firm()).isFalse();
    assertThat(standard("{ \"country\": \"NZ\" }", Kind.BASIN, 60).bound().firm()).isTrue();
  }

  /** A law that is exceeded goes before a recommendation that is exceeded by more. */
  @Test
  void theLawGoesFirst() {
    String site = "{ \"country\": \"GB\", \"newDwelling\": true }";
    assertThat(standard(site, Kind.BATH, 49).limit().name()).isEqualTo("outletNewBathGB_C");
    assertThat(standard(site, Kind.BATH, 47).limit().name()).isEqualTo("outletBath_C");
    assertThat(standard(site, Kind.SHOWER, 49).limit().name()).isEqualTo("outletShower_C");
  }
}
