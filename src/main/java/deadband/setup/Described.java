package deadband.setup;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What one value of the setup file means. The reader, the schema and the help read it from here;
 * its unit comes from the end of its name.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Described {

  /** The words of the trade for it. */
  String value();

  /** Least value that can physically be; where not given, the unit's own. */
  double least() default Double.NaN;

  /** Greatest value that can physically be; where not given, the unit's own. */
  double most() default Double.NaN;

  /** Whether only whole numbers make sense. */
  boolean whole() default false;

  /** The documented default, as it would be written in the file. */
  String assumed() default "";

  /** Where the default comes from. */
  String because() default "";
}
