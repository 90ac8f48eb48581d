/** What the rules of the topic coordination look at, and what explains their findings. */
@NullMarked
package deadband.topics.coordination;

import org.jspecify.annotations.NullMarked;
