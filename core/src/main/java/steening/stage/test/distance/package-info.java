/** Drawdown at a distance: what it tells of the aquifer, and what a pumped well does to its neighbours. */
package steening.stage.test.distance;
