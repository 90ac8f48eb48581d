/**
 * What is fitted and how it is to be set: records of what the setup file tells, and the one
 * described shape that the reader, the schema, the help and the edits walk.
 */
@NullMarked
package deadband.setup;

import org.jspecify.annotations.NullMarked;
