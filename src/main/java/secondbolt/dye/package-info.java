/**
 * Dyeing: which class takes, the dye and what goes with it, the baths, the sheet it is done by.
 * Start at {@link secondbolt.dye.DyeTopic}.
 */
package secondbolt.dye;
