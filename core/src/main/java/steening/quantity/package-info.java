/**
 * Amounts with their units: small value records, exact where something was measured, and the trade's notation in and
 * out.
 *
 * <p>No bare double crosses a public method where a quantity exists. Depends on {@code number} and {@code language}.
 */
package steening.quantity;
