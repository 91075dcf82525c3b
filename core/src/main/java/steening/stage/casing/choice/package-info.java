/** Pack, slot and length of the screen, chosen by the sand that was sieved and by the rate that is wanted. */
package steening.stage.casing.choice;
