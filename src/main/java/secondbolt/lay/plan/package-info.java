/**
 * What the maker writes of her lay: the sections {@code lay}, {@code designs}, {@code make}, {@code
 * cut so far} and {@code interfacing}, how they are read, and what in them names nothing. Nothing
 * is laid here.
 */
package secondbolt.lay.plan;
