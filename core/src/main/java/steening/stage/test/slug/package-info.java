/** Tests by a slug of water, or of a solid, put into a well or taken out of it. */
package steening.stage.test.slug;
