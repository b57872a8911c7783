/**
 * How what is dyed is shared out over baths: what weighs how much, what of it takes, how many
 * loads, how much bath each, how many packets. Start at {@link secondbolt.dye.bath.DyeCalculation},
 * which works one colour out as a {@link secondbolt.dye.bath.DyeBatch}. This room uses {@code
 * cloth.yields}, {@code textile}, {@code dye.recipe}, {@code dye.take}, {@code dye.plan}, {@code
 * textile.fibre}, {@code cutting.line}, {@code pattern}, {@code pattern.piece} and the rooms below
 * the topics. How loads are made even may be changed freely; that what is sewn together lies in one
 * bath may not. No words of a page belong here.
 */
package secondbolt.dye.bath;
