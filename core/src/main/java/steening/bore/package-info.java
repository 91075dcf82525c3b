/** The geometry of hole and pipe: stacked cylinders, the annulus between them, what fills it and how high it stands. */
package steening.bore;
