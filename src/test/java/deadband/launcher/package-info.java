/** Tests of what the build leaves for users; they run after packaging. */
@NullMarked
package deadband.launcher;

import org.jspecify.annotations.NullMarked;
