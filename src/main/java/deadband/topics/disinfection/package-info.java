/** What the rules of the topic disinfection look at, and what explains their findings. */
@NullMarked
package deadband.topics.disinfection;

import org.jspecify.annotations.NullMarked;
