/**
 * Which class of dye takes on which fibre, and what of a cloth therefore takes. Start at {@link
 * secondbolt.dye.take.ClothUptake}; the table by fibre is {@link secondbolt.dye.take.UptakeTable},
 * its sources {@link secondbolt.dye.take.DyeSources}. This room uses {@code dye.plan}, {@code
 * textile.fibre} and {@code measure}. Words of the table may be changed with their source; a change
 * of what takes changes every recipe. No amount belongs here.
 */
package secondbolt.dye.take;
