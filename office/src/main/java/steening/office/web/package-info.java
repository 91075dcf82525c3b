/** HTTP: who may ask, what was asked, what goes back. Every page comes from the core. */
package steening.office.web;
