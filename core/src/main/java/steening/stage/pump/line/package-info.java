/** The pipe from the pump to the tank: friction, fittings, and where the pump's curve meets it. */
package steening.stage.pump.line;
