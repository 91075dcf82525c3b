/** Reports as PDF: searchable, vector, with the fonts in them. */
package steening.office.paper;
