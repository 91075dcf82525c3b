/** Samples sieved, and what they say of screen and water. */
package steening.stage.drilling.sieve;
