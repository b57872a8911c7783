/**
 * Bleaching and taking colour out: what may be done to which cloth, how, in which order and where
 * it hurts; its page, sheets, findings, steps and needs. Start at {@link
 * secondbolt.bleach.BleachTopic}. This room uses {@code prepare.heat}, {@code bleach.recipe},
 * {@code cloth}, {@code cloth.yields}, {@code textile}, {@code textile.state}, {@code bleach.plan},
 * {@code textile.fibre} and the rooms below the topics. Words may be changed freely, but for two: a
 * bleach is only rinsed, never stopped with vinegar or ammonia, and never meets a colour remover.
 * What a maker writes is in {@code bleach.plan}, what a fibre bears in {@code bleach.recipe};
 * cautions are those of {@code task}.
 */
package secondbolt.bleach;
