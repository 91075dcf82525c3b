/** What goes wrong in the hole: mud lost, walls that cave, tools left behind. */
package steening.stage.drilling.trouble;
