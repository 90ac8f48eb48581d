/** What the rules of the topic grid look at, and what explains their findings. */
@NullMarked
package deadband.topics.grid;

import org.jspecify.annotations.NullMarked;
