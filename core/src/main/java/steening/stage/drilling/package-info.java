/** Drilling the hole: rig, rods, hole, mud and the driller's log; hole and mud volumes, up-hole velocity, lag. */
package steening.stage.drilling;
