/** The mud: what it weighs, how it rises, and what the pit tells. */
package steening.stage.drilling.fluid;
