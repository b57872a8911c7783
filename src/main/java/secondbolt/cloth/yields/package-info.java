/**
 * What the wash leaves of a cloth and how much of that is sound, as figures and surfaces. Start at
 * {@link secondbolt.cloth.yields.ClothCalculation}, then {@link
 * secondbolt.cloth.yields.ClothYield}. This room uses {@code textile}, {@code textile.extent},
 * {@code worksheet}, {@code garment}, {@code file.value}, {@code shape} and {@code measure}. How a
 * surface is held may be changed freely; a change of {@link secondbolt.cloth.yields.ClothYield}
 * changes every lay. Words, pages and drawings belong in {@code cloth}; nothing that knows a
 * pattern, a dye or a price belongs here.
 */
package secondbolt.cloth.yields;
