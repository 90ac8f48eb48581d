package deadband.setup;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * How to ask for one value of the setup file, beside what it means ({@link Described}). The report,
 * the starter file, the questions of {@code deadband new} and the schema read it from here.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Asked {

  /**
   * The question in plain words; {@code {it}} stands for what the section is, where several
   * sections are of one shape.
   */
  String value();

  Where where();

  /** What is usual there, from practice and never taken in place of an answer. */
  String usual() default "";

  /** Where a value can be looked up. */
  enum Where {
    DATA_PLATE("data plate"),
    CONTROLLER_MENU("menu of the controller"),
    HEAT_PUMP_MENU("menu of the heat pump"),
    LOOK("look"),
    MEASURE("measure"),
    PAPERS("papers"),
    CUSTOMER("customer");

    private final String words;

    Where(String words) {
      this.words = words;
    }

    /** The words for people. */
    public String words() {
      return words;
    }
  }
}
