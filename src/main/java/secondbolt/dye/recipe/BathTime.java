package secondbolt.dye.recipe;

import secondbolt.dye.plan.Lasting;

/**
 * How long something of a bath lasts, by one source.
 *
 * @param words what lasts
 * @param lasting how long
 * @param source where it comes from
 */
public record BathTime(String words, Lasting lasting, String source) {}
