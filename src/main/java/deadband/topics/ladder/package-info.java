/** What the rules of the topic ladder look at, and what explains their findings. */
@NullMarked
package deadband.topics.ladder;

import org.jspecify.annotations.NullMarked;
