package secondbolt.dye.bath;

import secondbolt.measure.Mass;

/**
 * What cannot be shared out over two baths: a cloth, or pieces that meet in a seam that is seen.
 *
 * @param name as a maker calls it
 * @param dry what it weighs dry
 * @param takes how much of that is fibre that takes
 */
public record Part(String name, Mass dry, Mass takes) {}
