/** The handover room: the well tag and the completion. */
package steening.stage.handover;
