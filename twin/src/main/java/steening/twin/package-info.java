/** What the twin test compiles beside the phone, to look below the pages. Nothing of it is shipped. */
package steening.twin;
