/** How much water a household asks for, and what a well of low yield must store. */
package steening.stage.pump.demand;
