/**
 * What is still ahead of the bit: the chance of the sand, what it would give, what the next feet cost, and when the
 * customer is called.
 */
package steening.stage.drilling.ahead;
