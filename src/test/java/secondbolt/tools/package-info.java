/** Programs and pictures that tests measure sheets with. */
package secondbolt.tools;
