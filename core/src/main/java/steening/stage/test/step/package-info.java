/** Tests in steps of rate: what the aquifer takes of the drawdown, and what the well itself takes. */
package steening.stage.test.step;
