package deadband.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckIndexTest {

  @TempDir Path folder;

  @Test
  void saysOfEachCheckWhatItsRuleAndItsPageSay() throws IOException {
    Path file = folder.resolve("checks.tsv");
    CheckIndex.main(new String[] {file.toString()});
    List<CheckIndex.Entry> entries =
        List.copyOf(CheckIndex.entries(Files.readString(file)).values());

    List<Check> checks = RuleBook.builtIn().checks();
    assertThat(entries).extracting(CheckIndex.Entry::check).isEqualTo(checks);
    assertThat(entries)
        .extracting(CheckIndex.Entry::headline)
        .isEqualTo(checks.stream().map(check -> RulePage.of(check).says()).toList());
  }
}
