/**
 * What a maker writes of dyeing: cloths, colour, class, depth, packet, vessel, her leaflet's own
 * figures. Start at {@link secondbolt.dye.plan.DyeSection}, whose lines become a {@link
 * secondbolt.dye.plan.DyePlan}; {@link secondbolt.dye.plan.DyeCheck} finds what cannot be. This
 * room uses the rooms below the topics. A key may be added freely; a change of one changes the
 * project files. No recipe and nothing that a page says belongs here.
 */
package secondbolt.dye.plan;
