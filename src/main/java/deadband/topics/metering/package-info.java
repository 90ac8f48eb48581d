/** What the rules of the topic metering look at, and what explains their findings. */
@NullMarked
package deadband.topics.metering;

import org.jspecify.annotations.NullMarked;
