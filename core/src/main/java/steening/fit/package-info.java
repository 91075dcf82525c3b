/** Curves laid through readings: the parameters for which a model misses what was measured least, and how sure they are. */
package steening.fit;
