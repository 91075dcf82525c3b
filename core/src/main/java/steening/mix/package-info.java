/** What is mixed with water: how much a mix makes, what it weighs, what is solid in it. Grout and plugs share it. */
package steening.mix;
