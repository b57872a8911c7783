/**
 * What a garment closes with, as the maker writes it: buttons and other fasteners, how many and how
 * they are spread, how the sides lie over each other, what her machine can do. Start at {@link
 * secondbolt.closure.fastening.Fastening} and {@link secondbolt.closure.fastening.FastenerSpread}.
 * This room uses {@code worksheet}, {@code file} and the rooms in it, {@code garment} and {@code
 * measure}. A kind of fastener may be added freely; a change of how long a hole is for its button
 * changes every hole. Where they come on a pattern belongs in {@code closure.placket}.
 */
package secondbolt.closure.fastening;
