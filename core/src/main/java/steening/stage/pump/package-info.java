/** The pump room: the pump, its pipe, its pressure tank. */
package steening.stage.pump;
