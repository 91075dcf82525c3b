/** Type curves laid through the drawdowns of a test by least squares, and what they foretell. */
package steening.stage.test.curve;
