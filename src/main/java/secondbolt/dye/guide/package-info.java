/**
 * How a colour is dyed, act by act, with amounts, times and the cautions that belong to each. Start
 * at {@link secondbolt.dye.guide.DyeOrder}; {@link secondbolt.dye.guide.DyePrint} puts amounts into
 * words. This room uses {@code prepare.heat}, {@code dye.bath}, {@code cloth.yields}, {@code
 * textile}, {@code textile.state}, {@code dye.recipe}, {@code dye.take}, {@code dye.plan}, {@code
 * textile.fibre} and the rooms below the topics. Words may be changed freely with their sources; an
 * act may be added. No finding and no key of the project file belongs here.
 */
package secondbolt.dye.guide;
