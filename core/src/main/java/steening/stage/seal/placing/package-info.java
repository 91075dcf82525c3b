/** The pipe that grout is placed through, and how long grout stays workable and takes to set. */
package steening.stage.seal.placing;
