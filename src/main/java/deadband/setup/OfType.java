package deadband.setup;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A value that is the same wherever equipment of this type is fitted, so that a data sheet may say
 * it. Whatever is looked up on a data plate is one; settings, and what the site decides, are none.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface OfType {}
