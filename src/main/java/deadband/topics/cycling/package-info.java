/** What the rules of the topic cycling look at, and what explains their findings. */
@NullMarked
package deadband.topics.cycling;

import org.jspecify.annotations.NullMarked;
