/** The log and the cuttings it is written by. */
package steening.stage.drilling.log;
