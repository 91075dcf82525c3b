package steening.journal;

import steening.language.Phrase;

/**
 * A line of a journal file that is no entry.
 *
 * @param lineNumber from 1
 * @param line as it stands in the file, without the space around it
 * @param phrase what is wrong with it, in one sentence
 */
public record Fault(int lineNumber, String line, Phrase phrase) {}
