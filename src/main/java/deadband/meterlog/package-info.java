/**
 * What meters recorded: instants, mean powers, temperatures, and what is missing between them.
 *
 * <p>A log arrives as {@link deadband.meterlog.Readings}, raw as the file has them; {@link
 * deadband.meterlog.Assembly} makes a {@link deadband.meterlog.MeterLog} of it.
 */
@NullMarked
package deadband.meterlog;

import org.jspecify.annotations.NullMarked;
