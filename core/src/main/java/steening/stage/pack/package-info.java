/** The filter pack: bags poured, tape readings between them, and what the next reading should be. */
package steening.stage.pack;
