/** The sample room: the water sample and what the laboratory found. */
package steening.stage.sample;
