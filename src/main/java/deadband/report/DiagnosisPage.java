package deadband.report;

import deadband.diagnosis.Cycle;
import deadband.diagnosis.Cycles;
import deadband.diagnosis.Diagnosis;
import deadband.diagnosis.Trigger;
import deadband.meterlog.MeterLog;
import deadband.report.Note.Fact;
import deadband.report.Note.Row;
import deadband.report.Note.Section;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** A diagnosis as one page of HTML, with the log drawn: no network, no script, all escaped. */
final class DiagnosisPage {

  /** Rows drawn: of a longer log the days around the worst hour are enough [h]. */
  private static final int DRAWN_H = 72;

  private static final int HOUR_S = 3600;

  private final DiagnosisReport report;
  private final Diagnosis diagnosis;

  private DiagnosisPage(DiagnosisReport report) {
    this.report = report;
    this.diagnosis = report.diagnosis();
  }

  static String of(DiagnosisReport report, String tool, List<Double> band_kW) {
    return new DiagnosisPage(report).note(tool, band_kW).html();
  }

  private Note note(String tool, List<Double> band_kW) {
    String verdict = report.verdict();
    List<Section> sections = new ArrayList<>();
    diagnosis.log().ifPresent(log -> drawn(log, band_kW, sections));
    sections.add(Section.of("Observed", report.observed(), List.of(), List.of()));
    sections.add(
        Section.of(
            "Causes",
            diagnosis.causes().isEmpty() ? report.notRanked() : "",
            List.of("Cause", "What it predicts, and what would confirm it"),
            report.shown().stream().map(this::cause).toList()));
    sections.add(listed("Cannot be seen", diagnosis.cannotSee()));
    sections.add(listed("Notes", report.notes()));
    sections.add(Section.of("Safety", DiagnosisReport.CAUTION, List.of(), List.of()));
    return new Note(
        report.reference().orElse("(no reference)"),
        "Diagnosis",
        verdict,
        diagnosis
            .healthy()
            .map(healthy -> healthy ? "ready" : "not-ready")
            .orElse("answers-needed"),
        List.of(
            new Fact("Setup", report.file().isEmpty() ? "none" : report.file()),
            new Fact("Days compared", diagnosis.compared()),
            new Fact("By", "deadband " + tool)),
        sections.stream().filter(section -> !section.isEmpty()).toList());
  }

  private void drawn(MeterLog log, List<Double> band_kW, List<Section> sections) {
    Cycles cycles = diagnosis.cycles();
    List<Cycle> worst = cycles.worstHour();
    int first = worst.isEmpty() ? 0 : worst.get(0).first();
    int half_s = DRAWN_H * HOUR_S / 2;
    int from = row(log, log.at_s(first) - half_s);
    int until = row(log, log.at_s(first) + half_s) + 1;
    List<Row> letters =
        Arrays.stream(Trigger.values())
            .filter(diagnosis.triggers()::contains)
            .map(trigger -> Row.of(LogChart.letter(trigger), "started by: " + trigger.says()))
            .toList();
    sections.add(
        Section.of("Log", report.understood(log), List.of("Mark", "Meaning"), letters)
            .with(List.of(picture(log, band_kW, from, until, "Log"))));
    if (!worst.isEmpty()) {
      int begin = row(log, log.at_s(first) - HOUR_S / 6);
      int end = row(log, log.at_s(first) + HOUR_S + HOUR_S / 6) + 1;
      String intro = Words.count(worst.size(), "start") + " within an hour";
      sections.add(
          Section.of("Worst hour", intro, List.of(), List.of())
              .with(List.of(picture(log, band_kW, begin, end, "Worst hour"))));
    }
  }

  private RecordModel.Picture picture(
      MeterLog log, List<Double> band_kW, int from, int until, String title) {
    return PageStyle.picture(
        size ->
            LogChart.of(
                log, diagnosis.cycles(), diagnosis.triggers(), band_kW, size, from, until, title));
  }

  private static int row(MeterLog log, long at_s) {
    int row = 0;
    while (row + 1 < log.rows() && log.at_s(row) < at_s) {
      row++;
    }
    return row;
  }

  private Row cause(int index) {
    return Row.of(
        (index + 1) + ". " + report.headline(index), String.join("; ", report.details(index)));
  }

  private static Section listed(String heading, List<String> lines) {
    return Section.of(
        heading,
        "",
        List.of("No.", "What"),
        IntStream.range(0, lines.size())
            .mapToObj(index -> Row.of(Integer.toString(index + 1), lines.get(index)))
            .toList());
  }
}
