/** What the rules of the topic siting look at, and what explains their findings. */
@NullMarked
package deadband.topics.siting;

import org.jspecify.annotations.NullMarked;
