/**
 * The cloth: what the maker has, what the wash does to it, and how much of it is sound. Start at
 * {@link secondbolt.cloth.ClothSection}, then {@link secondbolt.cloth.ClothCalculation}; {@link
 * secondbolt.cloth.ClothTopic} shows it. This topic comes first and uses only the rooms below the
 * topics. Wording may be changed freely; a change of {@link secondbolt.cloth.ClothYield} changes
 * every lay. Nothing that knows a pattern, a dye or a price belongs here.
 */
package secondbolt.cloth;
