package deadband.beam;

import deadband.days.DayRuns;
import deadband.judging.Judge;
import deadband.judging.Judgement;
import deadband.judging.RuleBook;
import deadband.limits.Limits;
import deadband.reading.SetupReading;
import deadband.report.JsonReport;
import deadband.report.Report;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.apache.beam.sdk.Pipeline;
import org.apache.beam.sdk.io.TextIO;
import org.apache.beam.sdk.options.PipelineOptions;
import org.apache.beam.sdk.options.PipelineOptionsFactory;
import org.apache.beam.sdk.options.Validation;
import org.apache.beam.sdk.transforms.DoFn;
import org.apache.beam.sdk.transforms.Filter;
import org.apache.beam.sdk.transforms.ParDo;

/**
 * Setups in, a line each; reports out, a line each, in any order. The step itself is a date and a
 * word: each worker makes one rule book, at the first line it gets, and shares it between threads.
 */
public final class JudgedLines extends DoFn<String, String> {

  private static final long serialVersionUID = 1;

  private final LocalDate asOf;
  private final String tool;

  /**
   * The step.
   *
   * @param asOf the date against which acceptances are held
   * @param tool version to name in the reports
   */
  public JudgedLines(LocalDate asOf, String tool) {
    this.asOf = asOf;
    this.tool = tool;
  }

  /** Of a worker. */
  private static final class Shared {
    static final Judge JUDGE = new Judge(RuleBook.builtIn(), DayRuns.none());
  }

  /** What the command line says of the pipeline. */
  public interface Options extends PipelineOptions {

    @Validation.Required
    String getInput();

    void setInput(String files);

    @Validation.Required
    String getOutput();

    void setOutput(String prefix);

    @Validation.Required
    String getAsOf();

    void setAsOf(String date);
  }

  /** Runs the pipeline on whichever runner is on the class path. */
  public static void main(String[] arguments) {
    Options options = PipelineOptionsFactory.fromArgs(arguments).withValidation().as(Options.class);
    Pipeline pipeline = Pipeline.create(options);
    pipeline
        .apply(TextIO.read().from(options.getInput()))
        .apply(Filter.by(line -> !line.isBlank()))
        .apply(ParDo.of(new JudgedLines(LocalDate.parse(options.getAsOf()), "beam")))
        .apply(TextIO.write().to(options.getOutput()));
    pipeline.run().waitUntilFinish();
  }

  /** Judges a line. */
  @ProcessElement
  public void judge(@Element String line, OutputReceiver<String> reports) {
    byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
    SetupReading reading = SetupReading.ofLine("line", new ByteArrayInputStream(bytes));
    if (reading instanceof SetupReading.Unreadable unreadable) {
      reports.output(JsonReport.unreadable(unreadable.name(), unreadable.problems(), tool, false));
      return;
    }
    SetupReading.Read read = (SetupReading.Read) reading;
    Judgement judgement = Shared.JUDGE.judge(read.setup(), Limits.standard(), asOf);
    reports.output(
        JsonReport.of(new Report(read.document(), read.setup(), judgement), tool, false));
  }
}
