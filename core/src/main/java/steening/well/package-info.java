/**
 * The well as built: what the entries of a journal amount to. Parts that several stages need have their records here; a
 * part that only one stage needs lives in that stage's room.
 */
package steening.well;
