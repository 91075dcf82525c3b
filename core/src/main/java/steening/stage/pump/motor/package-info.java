/** The pump's motor: its cooling and its cable. */
package steening.stage.pump.motor;
