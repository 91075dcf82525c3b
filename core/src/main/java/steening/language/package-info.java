/** Phrases in English and Spanish, and the reader they are shown to: language and units. Depends on {@code number}. */
package steening.language;
