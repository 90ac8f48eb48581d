/** Located text: every value of a setup file knows its place. Knows no setup and no parser. */
@NullMarked
package deadband.document;

import org.jspecify.annotations.NullMarked;
