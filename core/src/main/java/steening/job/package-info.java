/**
 * The whole job: the register of stages, and what follows from it for a journal: the well, the findings, what is
 * next.
 */
package steening.job;
