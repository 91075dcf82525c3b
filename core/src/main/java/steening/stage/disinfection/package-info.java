/** Disinfection: chlorine for the water in casing and pack, and what is left of it afterwards. */
package steening.stage.disinfection;
