/** What the rules of the topic records look at, and what explains their findings. */
@NullMarked
package deadband.topics.records;

import org.jspecify.annotations.NullMarked;
