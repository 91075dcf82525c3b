/** Disinfection: chlorine for the water in the casing and in the pores of the pack, and what is left of it afterwards. */
package steening.stage.disinfection;
