package deadband.reading;

import deadband.document.Problem.Kind;

/**
 * A value that is written otherwise than JSON writes it.
 *
 * @param kind what is wrong
 * @param end offset after what is wrong
 * @param right what would be right
 */
record Slip(Kind kind, int end, String right) {}
