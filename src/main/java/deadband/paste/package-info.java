/** Settings as people send them: from lines of text to places of the setup file. */
@NullMarked
package deadband.paste;

import org.jspecify.annotations.NullMarked;
