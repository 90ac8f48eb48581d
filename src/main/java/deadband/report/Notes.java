package deadband.report;

import deadband.days.HeldImport;
import deadband.judging.Check;
import deadband.judging.ClearOnAssumption;
import deadband.setup.Accepted;
import deadband.setup.DataSheet;
import deadband.setup.Outlet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is no finding and still worth saying: what is as it should be, and yet not nothing. */
final class Notes {

  private static final String IMPORT_CHECK = "stop-lets-grid-in";

  /** Settings named in one line. */
  private static final int MOST_CHANGED = 4;

  private final Report report;

  private Notes(Report report) {
    this.report = report;
  }

  static List<String> of(Report report) {
    Notes notes = new Notes(report);
    List<String> all = new ArrayList<>();
    report.sheets().forEach(sheet -> all.add(notes.taken(sheet)));
    notes.openOutlets().ifPresent(all::add);
    notes.toleratedImport().ifPresent(all::add);
    notes.asFound().ifPresent(all::add);
    notes.changedSinceFound().ifPresent(all::add);
    all.addAll(notes.renamed());
    return List.copyOf(all);
  }

  private String taken(DataSheet sheet) {
    return Words.count(report.takenFrom(sheet).size(), "value") + " from equipment file " + sheet;
  }

  private Optional<String> openOutlets() {
    String open =
        report.setup().outlets().optional().orElse(List.of()).stream()
            .filter(outlet -> outlet.blended().says(false))
            .map(outlet -> outlet.at().optional().map(Outlet.Kind::word).orElse("an outlet"))
            .collect(Collectors.joining(", "));
    return open.isEmpty()
        ? Optional.empty()
        : Optional.of("no mixing valve, as hot as the tank: " + open);
  }

  /** What the stop lets be bought, where that was looked at and is too little for a finding. */
  private Optional<String> toleratedImport() {
    return isTolerated()
        ? HeldImport.of(report.setup())
            .map(
                most ->
                    "import while the call is held, below the limit: up to " + Words.withUnit(most))
        : Optional.empty();
  }

  /** What was wrong with the settings as found: the people of the home lived with it until now. */
  private Optional<String> asFound() {
    String ended =
        report.judgement().asFound().stream()
            .map(check -> check.consequence().word() + " " + check.name())
            .collect(Collectors.joining(", "));
    return ended.isEmpty()
        ? Optional.empty()
        : Optional.of("with the settings as found, not with those proposed: " + ended);
  }

  /** The settings that were found otherwise, in one line. */
  private Optional<String> changedSinceFound() {
    List<Comparison.Difference> changed =
        Comparison.settings(report.setup().asItWasFound(), report.setup());
    String named =
        changed.stream()
            .limit(MOST_CHANGED)
            .map(each -> each.pointer().dotted() + " " + each.words())
            .collect(Collectors.joining(", "));
    int more = changed.size() - MOST_CHANGED;
    return named.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "changed since as-found: " + named + (more > 0 ? " and " + more + " more" : ""));
  }

  private boolean isTolerated() {
    return Stream.concat(
            report.judgement().clear().stream(),
            report.judgement().clearOnAssumption().stream().map(ClearOnAssumption::check))
        .anyMatch(check -> check.name().equals(IMPORT_CHECK));
  }

  /** Accepted entries that name a check by a name it had before. */
  private List<String> renamed() {
    List<String> said = new ArrayList<>();
    for (Accepted entry : report.setup().accepted().optional().orElse(List.of())) {
      String named = entry.check().optional().orElse("");
      for (Check check : report.judgement().checks()) {
        if (check.formerNames().contains(named)) {
          said.add(
              entry.check().pointer().dotted() + ": " + named + " is now called " + check.name());
        }
      }
    }
    return said;
  }
}
