/**
 * Why a heat pump short-cycles: what a meter log or a description shows, held against what each
 * possible cause would lead to.
 *
 * <p>{@link deadband.diagnosis.CycleFinder} finds the runs in a log, {@code RunReader} says how
 * they begin, go and end, {@code Causes} what each cause would lead to in this home, and {@link
 * deadband.diagnosis.Diagnosis} ranks the causes by the likelihood of the one if the other is so.
 */
@NullMarked
package deadband.diagnosis;

import org.jspecify.annotations.NullMarked;
