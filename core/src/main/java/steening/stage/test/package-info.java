/** The pumping test: what the well gives, for how long, and how deep the water is drawn down. */
package steening.stage.test;
