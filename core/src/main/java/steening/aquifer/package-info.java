/**
 * How an aquifer answers to pumping: the well functions that drawdown is made of, by the authors whose names they bear.
 * Plain numbers without units; below the rooms, since the test asks what the aquifer is and the plan what it will give.
 */
package steening.aquifer;
