/** The plan room: the design the crew builds to. */
package steening.stage.plan;
