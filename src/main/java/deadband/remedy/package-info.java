/**
 * Remedies together: the smallest set of changes that brings a setup as near to sign-off as it can
 * be brought. Each set is tried by the judge before it is proposed.
 */
@NullMarked
package deadband.remedy;

import org.jspecify.annotations.NullMarked;
