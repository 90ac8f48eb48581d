/** What the rules of the topic wiring look at, and what explains their findings. */
@NullMarked
package deadband.topics.wiring;

import org.jspecify.annotations.NullMarked;
