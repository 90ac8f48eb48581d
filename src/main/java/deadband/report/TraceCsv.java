package deadband.report;

import deadband.dayrun.Recording;
import deadband.dayrun.Recording.Quantity;
import deadband.dayrun.StepLength;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;

/**
 * A recorded run as CSV (RFC 4180, lines ending in LF): a row a step, units in the header.
 *
 * <p>{@code time} is when the step begins; numbers have up to six decimals and no exponent, so that
 * the same run gives the same bytes everywhere. Its {@code time}, {@code pv_kW}, {@code house_kW}
 * and {@code draw_L} make it a day file: the run can be run again.
 */
public final class TraceCsv {

  private static final long MICRO = 1_000_000;

  private static final int SECONDS_PER_HOUR = 3600;
  private static final int SECONDS_PER_MINUTE = 60;

  private final Recording recording;
  private final boolean seconds;
  private final StringBuilder row = new StringBuilder(256);

  private TraceCsv(Recording recording) {
    this.recording = recording;
    this.seconds =
        recording.step().seconds() % StepLength.MINUTE.seconds() != 0
            || (recording.length() > 0 && recording.secondOfDay(0) % SECONDS_PER_MINUTE != 0);
  }

  /** Writes a run. */
  public static void write(Recording recording, Appendable out) throws IOException {
    new TraceCsv(recording).write(out);
  }

  /** A run as one text. */
  public static String of(Recording recording) {
    StringBuilder text = new StringBuilder();
    try {
      write(recording, text);
    } catch (IOException e) {
      throw new UncheckedIOException("a text cannot fail to be written to", e);
    }
    return text.toString();
  }

  private void write(Appendable out) throws IOException {
    out.append("time,").append(String.join(",", Recording.headers())).append('\n');
    for (int at = 0; at < recording.length(); at++) {
      row.setLength(0);
      time(recording.secondOfDay(at));
      for (Quantity quantity : Quantity.values()) {
        row.append(',');
        number(recording.value(quantity, at));
      }
      states(at);
      out.append(row.append('\n'));
    }
  }

  private void time(int second) {
    two(second / SECONDS_PER_HOUR);
    row.append(':');
    two(second / SECONDS_PER_MINUTE % 60);
    if (seconds) {
      row.append(':');
      two(second % SECONDS_PER_MINUTE);
    }
  }

  private void two(int number) {
    row.append((char) ('0' + number / 10)).append((char) ('0' + number % 10));
  }

  private void states(int at) {
    flag(recording.relayClosed(at));
    word(recording.heatPump(at).name());
    word(recording.runEnded(at).name());
    flag(recording.onSurplus(at));
    flag(recording.disinfecting(at));
  }

  private void flag(boolean on) {
    row.append(',').append(on ? '1' : '0');
  }

  private void word(String name) {
    row.append(',').append(name.toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** Rounded to a millionth, without zeros at the end. */
  private void number(double value) {
    long micro = Math.round(value * MICRO);
    if (micro < 0) {
      row.append('-');
    }
    long size = Math.abs(micro);
    row.append(size / MICRO);
    long fraction = size % MICRO;
    if (fraction == 0) {
      return;
    }
    row.append('.');
    for (long place = MICRO / 10; fraction > 0; place /= 10) {
      row.append((char) ('0' + fraction / place));
      fraction %= place;
    }
  }
}
