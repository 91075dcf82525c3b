/** The site room: the first call, the place of the well, and the distances it must keep. */
package steening.stage.site;
