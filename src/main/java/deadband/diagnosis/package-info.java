/**
 * Why a heat pump short-cycles: what a meter log or a description shows, held against what each
 * possible cause would lead to.
 *
 * <p>{@link deadband.diagnosis.CycleFinder} finds the runs in a log; a {@link
 * deadband.diagnosis.Signature} says what they look like; {@link deadband.diagnosis.Diagnosis}
 * compares it with what the day run or the closed form predicts with each fault.
 */
@NullMarked
package deadband.diagnosis;

import org.jspecify.annotations.NullMarked;
