/** Closing a hole for good: one given up while drilling, or the well itself at the end of its life. */
package steening.stage.decommissioning;
