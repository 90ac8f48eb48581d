package deadband.reading;

import deadband.document.Problem.Kind;

/**
 * A value that is not written as its format wants it.
 *
 * @param start offset of what is wrong
 * @param end offset after it
 * @param right what to write; where that is a value of JSON, it is the one that was meant
 */
record SyntaxError(Kind kind, int start, int end, String right) {}
