/** The permit room: the permit to drill and the utility-locate ticket. */
package steening.stage.permit;
