/** The JVM shell: what is stored, and the start of everything. Reads the clock, makes ids, and knows the core. */
package steening.office;
