/** The seal: chips on the pack, then grout from the bottom up; what goes in, what stands where, how thick it is. */
package steening.stage.seal;
