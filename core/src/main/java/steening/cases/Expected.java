package steening.cases;

import java.math.BigDecimal;

/**
 * One answer as published.
 *
 * @param answer the name of the answer
 * @param unit as files write it; empty for a pure number
 */
record Expected(String answer, BigDecimal value, String unit, Tolerance tolerance) {}
