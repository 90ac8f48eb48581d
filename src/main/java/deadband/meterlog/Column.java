package deadband.meterlog;

import java.util.Arrays;

/**
 * One quantity of a log, row by row: a mean power over the row [kW], a temperature [°C], or a
 * state. A missing value is NaN.
 */
public final class Column {

  private final Heading heading;
  private final Form form;
  private final String remark;
  private final double resolution;
  private final double[] values;

  Column(Heading heading, Form form, String remark, double resolution, double[] values) {
    this.heading = heading;
    this.form = form;
    this.remark = remark;
    this.resolution = resolution;
    this.values = values;
  }

  /** How the file gives the quantity. */
  public enum Form {
    POWER("power"),
    ENERGY("energy in each interval"),
    COUNTER("rising counter reading"),
    TEMPERATURE("temperature"),
    STATE("state"),
    DERIVED("derived");

    private final String says;

    Form(String says) {
      this.says = says;
    }

    public String says() {
      return says;
    }
  }

  public Heading heading() {
    return heading;
  }

  public Meaning meaning() {
    return heading.meaning();
  }

  public Form form() {
    return form;
  }

  /** What was taken or found out about it, in words; empty where nothing was. */
  public String remark() {
    return remark;
  }

  /** Smallest step of its values [kW or K]; 0 where none shows. */
  public double resolution() {
    return resolution;
  }

  public int rows() {
    return values.length;
  }

  public double value(int row) {
    return values[row];
  }

  public double[] values() {
    return values.clone();
  }

  /** How many rows have no value. */
  public int missing() {
    return (int) Arrays.stream(values).filter(Double::isNaN).count();
  }
}
