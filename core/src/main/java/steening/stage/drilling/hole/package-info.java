/** The hole and the rods that made it. */
package steening.stage.drilling.hole;
