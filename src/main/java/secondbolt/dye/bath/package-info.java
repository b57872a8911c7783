/**
 * How what is dyed is shared out over baths: what weighs how much, what of it takes, how many
 * loads, how much bath each, how many packets. Start at {@link secondbolt.dye.bath.DyeCalculation},
 * which works one colour out as a {@link secondbolt.dye.bath.DyeBatch}. This room uses {@code
 * dye.plan}, {@code dye.take}, {@code dye.recipe}, {@code cloth.yields}, {@code cutting.line} and
 * {@code pattern}. How loads are made even may be changed freely; that what is sewn together lies
 * in one bath may not. No words of a page belong here.
 */
package secondbolt.dye.bath;
