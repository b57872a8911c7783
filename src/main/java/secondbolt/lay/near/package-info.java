/**
 * What lies near what, and how they stand to each other, kept so that very many items cost no more
 * each than a few. Start with {@link secondbolt.lay.near.BoxGrid}. This room uses no other. How it
 * is kept may be changed freely; what is found, and the order it is found in, may not, for every
 * lay depends on it. What the numbers mean must not be put here: that is for {@code lay.search}.
 */
package secondbolt.lay.near;
