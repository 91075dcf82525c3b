/** Measurements, each against a rival in the same run. They print ratios, and are no tests: machines differ. */
package steening.bench;
