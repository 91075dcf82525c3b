/**
 * What the drilled ground is: a sieve curve and its sizes, the name of a soil, the grade of a grain, and how well water
 * goes through. Below the rooms, since drilling logs it and the screen and its pack are chosen by it.
 */
package steening.ground;
