/** Setting up: what is looked at, asked and measured before the first foot. */
package steening.stage.drilling.start;
