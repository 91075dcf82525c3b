/**
 * The idea of a stage. Each stage of the work has a room below this package that holds all of it: its entries, its
 * reckonings, its part of the fold, its findings and what its page shows. Rooms do not know each other.
 */
package steening.stage;
