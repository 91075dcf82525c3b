/** Development: working the screen until the water comes clear and the sand stops. */
package steening.stage.development;
