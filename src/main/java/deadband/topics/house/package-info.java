/** What the rules of the topic house look at, and what explains their findings. */
@NullMarked
package deadband.topics.house;

import org.jspecify.annotations.NullMarked;
