/**
 * What happened, in order: entries, the journal they form, and their text on disk and on the wire.
 *
 * <p>An entry is one fact, said once. It is never edited: a correction or a withdrawal is another entry that names the
 * one it replaces. Journals merge by union. Depends on {@code number} and {@code language} only.
 */
package steening.journal;
