package secondbolt.pattern;

import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.wearer.Passage;

/**
 * An opening that a part of the body must pass.
 *
 * @param what the opening's name
 * @param edges what bounds it
 * @param slit the length of a slit that opens it further
 * @param over what of the body must pass
 */
public record Opening(String what, Placed<EdgeSum> edges, Length slit, Passage over) {}
