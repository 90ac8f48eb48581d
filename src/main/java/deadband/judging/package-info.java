/**
 * From cases to a judgement: the rule base looks at them, outcomes are told apart, and what was
 * found is ranked. The only package that knows the rule engine.
 */
@NullMarked
package deadband.judging;

import org.jspecify.annotations.NullMarked;
