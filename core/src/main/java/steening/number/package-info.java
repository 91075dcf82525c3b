/**
 * Decimal text in and out, and the elementary functions, equal bit for bit on every platform the core runs on.
 *
 * <p>Platforms disagree on {@code String.format}, {@code Double.toString} and {@code Math.log10}; nothing above this
 * package may call them. Depends on nothing of ours.
 */
package steening.number;
