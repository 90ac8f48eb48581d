package deadband.judging;

import deadband.cases.Case;

/**
 * A rule that matched a case.
 *
 * @param check name of the rule
 */
public record Violation(String check, Case found) {}
