/**
 * Published values, held against the reckonings: a text with cases in, a verdict on each out. Cases come in a format of
 * our own or in tables of others, which a translation given as data turns into cases. Reads no files itself.
 */
package steening.cases;
