/**
 * Fields: the named values of an entry or a reckoning, each declared once. From the declaration follow the form on the
 * page, the check of what was typed, the command line, the JSON and the row in the documentation.
 */
package steening.field;
