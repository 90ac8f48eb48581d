/** What the rules of the topic thresholds look at, and what explains their findings. */
@NullMarked
package deadband.topics.thresholds;

import org.jspecify.annotations.NullMarked;
