/** An invented firm and its journals. Invented data stays here. */
package steening.office.demo;
