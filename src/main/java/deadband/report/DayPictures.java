package deadband.report;

import deadband.dayrun.Day;
import deadband.dayrun.DayRun;
import deadband.dayrun.Recording;
import deadband.dayrun.Result;
import deadband.dayrun.StepLength;
import deadband.days.DayEvidence;
import deadband.days.DayModel;
import deadband.setup.Setup;
import java.util.List;
import java.util.Optional;

/** The example days of a job as charts: as entered, and with the settings proposed. */
record DayPictures(List<RecordModel.Day> days) {

  /** None where the days were left out, or cannot be run. */
  static DayPictures of(JobRecord job) {
    boolean left = job.report().judgement().days().isEmpty();
    Optional<DayModel> before = left ? Optional.empty() : DayEvidence.model(job.setup());
    boolean same = job.proposal().changes().isEmpty();
    Optional<DayModel> after = left || same ? Optional.empty() : DayEvidence.model(job.proposed());
    return new DayPictures(
        before
            .map(
                model ->
                    List.of(
                        day("clear", "Clear day", job, model, after),
                        day("cloud", "Cloudy day", job, model, after)))
            .orElse(List.of()));
  }

  /**
   * A clear day and a cloudy one of two setups, one drawn over the other; none that cannot be run.
   */
  static List<RecordModel.Picture> overlays(Report before, Report after) {
    Optional<DayModel> one = DayEvidence.model(before.setup());
    Optional<DayModel> other = DayEvidence.model(after.setup());
    boolean left = before.judgement().days().isEmpty() || after.judgement().days().isEmpty();
    if (left || one.isEmpty() || other.isEmpty()) {
      return List.of();
    }
    return List.of(
        overlay("clear", "Clear day", run(one.get(), "clear"), run(other.get(), "clear")),
        overlay("cloud", "Cloudy day", run(one.get(), "cloud"), run(other.get(), "cloud")));
  }

  private static RecordModel.Picture overlay(String id, String title, Run before, Run after) {
    return PageStyle.picture(
        size ->
            OverlayChart.of(
                before.recording(), after.recording(), size, id + "-" + size.word(), title));
  }

  /** A run with what it recorded. */
  private record Run(DayModel model, Recording recording, Result result) {}

  private static RecordModel.Day day(
      String id, String name, JobRecord job, DayModel model, Optional<DayModel> proposed) {
    Run before = run(model, id);
    Optional<Run> after = proposed.map(each -> run(each, id));
    String now = proposed.isPresent() ? name + ", settings as entered" : name;
    return new RecordModel.Day(
        name,
        picture(id + "-before", now, job.setup(), before),
        after.stream()
            .map(run -> picture(id + "-after", name + ", settings proposed", job.proposed(), run))
            .toList(),
        after
            .map(run -> Quantity.words(Quantity.day(id, before.result(), run.result())))
            .map(text -> text.isEmpty() ? "no difference in energy, closures or starts" : text)
            .orElse(""));
  }

  private static Run run(DayModel model, String id) {
    Day day =
        id.equals("clear")
            ? model.surroundings().clear(model.surroundings().springDate())
            : model.surroundings().cloud(model.surroundings().springDate());
    Recording recording = Recording.of(StepLength.MINUTE, day.profile().length());
    DayRun run = DayRun.of(model.installation(), StepLength.MINUTE).watchedBy(recording);
    return new Run(model, recording, run.through(day).result());
  }

  private static RecordModel.Picture picture(String id, String title, Setup setup, Run run) {
    return PageStyle.picture(
        size ->
            DayChart.of(
                run.recording(),
                DayChart.Markings.of(setup, run.model(), id + "-" + size.word(), title),
                size));
  }
}
