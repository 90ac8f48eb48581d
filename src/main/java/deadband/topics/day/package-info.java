/** What the rules of the topic day look at, and what explains their findings. */
@NullMarked
package deadband.topics.day;

import org.jspecify.annotations.NullMarked;
