package deadband;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Arrays;
import java.util.stream.Stream;

/** How the house is built: one direction, no cycles, each library known where it is needed. */
@AnalyzeClasses(packages = "deadband", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {

  private static final String[] BELOW_FACTS = {
    "document", "trade", "setup", "dayrun", "provenance", "limits"
  };

  private static final String[] BELOW_TOPICS = with(BELOW_FACTS, "facts", "loop", "days", "plant");

  private static String[] with(String[] layers, String... more) {
    return Stream.concat(Arrays.stream(layers), Arrays.stream(more)).toArray(String[]::new);
  }

  @ArchTest
  static final ArchRule DATA_FLOWS_ONE_WAY =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("document")
          .definedBy("deadband.document")
          .layer("trade")
          .definedBy("deadband.trade")
          .layer("meterlog")
          .definedBy("deadband.meterlog")
          .layer("dayrun")
          .definedBy("deadband.dayrun")
          .layer("setup")
          .definedBy("deadband.setup")
          .layer("provenance")
          .definedBy("deadband.provenance")
          .layer("limits")
          .definedBy("deadband.limits")
          .layer("facts")
          .definedBy("deadband.facts")
          .layer("loop")
          .definedBy("deadband.loop")
          .layer("days")
          .definedBy("deadband.days")
          .layer("plant")
          .definedBy("deadband.plant")
          .layer("diagnosis")
          .definedBy("deadband.diagnosis")
          .layer("topics")
          .definedBy("deadband.topics..")
          .layer("paste")
          .definedBy("deadband.paste")
          .layer("reading")
          .definedBy("deadband.reading")
          .layer("judging")
          .definedBy("deadband.judging..")
          .layer("remedy")
          .definedBy("deadband.remedy")
          .layer("report")
          .definedBy("deadband.report")
          .layer("cli")
          .definedBy("deadband.cli")
          .whereLayer("document")
          .mayNotAccessAnyLayer()
          .whereLayer("trade")
          .mayNotAccessAnyLayer()
          .whereLayer("meterlog")
          .mayNotAccessAnyLayer()
          .whereLayer("dayrun")
          .mayOnlyAccessLayers("trade", "setup")
          .whereLayer("setup")
          .mayOnlyAccessLayers("document")
          .whereLayer("provenance")
          .mayOnlyAccessLayers("setup", "document")
          .whereLayer("limits")
          .mayOnlyAccessLayers("setup", "trade", "document")
          .whereLayer("facts")
          .mayOnlyAccessLayers(with(BELOW_FACTS))
          .whereLayer("loop")
          .mayOnlyAccessLayers(with(BELOW_FACTS, "facts"))
          .whereLayer("days")
          .mayOnlyAccessLayers(with(BELOW_FACTS, "facts", "loop"))
          .whereLayer("plant")
          .mayOnlyAccessLayers(with(BELOW_FACTS, "facts", "loop", "days"))
          .whereLayer("diagnosis")
          .mayOnlyAccessLayers(with(BELOW_FACTS, "meterlog", "loop", "days"))
          .whereLayer("topics")
          .mayOnlyAccessLayers(with(BELOW_TOPICS))
          .whereLayer("reading")
          .mayOnlyAccessLayers("paste", "limits", "dayrun", "meterlog", "setup", "document")
          .whereLayer("paste")
          .mayOnlyAccessLayers("setup", "document")
          .whereLayer("judging")
          .mayOnlyAccessLayers(with(BELOW_TOPICS, "topics"))
          .whereLayer("remedy")
          .mayOnlyAccessLayers(with(BELOW_TOPICS, "topics", "judging"))
          .whereLayer("report")
          .mayOnlyAccessLayers(
              with(BELOW_TOPICS, "topics", "judging", "remedy", "paste", "meterlog", "diagnosis"))
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer();

  @ArchTest
  static final ArchRule NO_CYCLES = slices().matching("deadband.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule NO_TOPIC_KNOWS_ANOTHER =
      slices().matching("deadband.topics.(*)..").should().notDependOnEachOther();

  @ArchTest
  static final ArchRule ONLY_JUDGING_KNOWS_THE_RULE_ENGINE =
      noClasses()
          .that()
          .resideOutsideOfPackage("deadband.judging..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.drools..", "org.kie..");

  @ArchTest
  static final ArchRule ONLY_REPORT_KNOWS_THE_JSON_LIBRARY =
      noClasses()
          .that()
          .resideOutsideOfPackage("deadband.report")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tools.jackson..");

  @ArchTest
  static final ArchRule ONLY_READING_KNOWS_CSV =
      noClasses()
          .that()
          .resideOutsideOfPackage("deadband.reading")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("de.siegmar.fastcsv..");

  @ArchTest
  static final ArchRule ONLY_THE_COMMANDS_KNOW_THE_COMMAND_LINE =
      noClasses()
          .that()
          .resideOutsideOfPackage("deadband.cli")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("picocli..");

  @ArchTest
  static final ArchRule NO_PACKAGE_FOR_ODDS_AND_ENDS =
      noClasses().should().resideInAnyPackage("..util..", "..utils..", "..common..", "..helper..");

  @ArchTest
  static final ArchRule ONLY_THE_CONSOLE_TOUCHES_STANDARD_OUTPUT =
      noClasses()
          .that()
          .doNotHaveSimpleName("Console")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");
}
