/** Where reality and expectation differ, or a rule is not met: findings, and what is expected before it is measured. */
package steening.finding;
