/** Ways to measure what a pump gives: vessel and watch, weirs, orifice, jet, meter. */
package steening.stage.test.gauge;
