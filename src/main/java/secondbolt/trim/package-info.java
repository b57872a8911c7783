/**
 * What stiffens, binds and gathers, as the page, the sheet, the findings and the figures tell it:
 * interfacing and how it is fused, binding and its strips, elastic and its casing, with the steps
 * of work and the things needed. Start at {@link secondbolt.trim.TrimTopic}. This room uses {@code
 * lay}, {@code cutting}, {@code fit}, {@code trim.guide}, {@code trim.bound}, {@code trim.strip},
 * {@code trim.gathered}, {@code trim.plan}, {@code trim.fused}, {@code prepare.heat}, {@code
 * lay.design}, {@code lay.plan}, {@code cloth}, {@code textile}, {@code textile.fibre}, {@code
 * cutting.line}, {@code fit.result}, {@code hem.plan}, {@code pattern}, {@code wearer}, {@code
 * pattern.piece} and the rooms below the topics. Words may be changed freely, but not what a
 * caution warns of; a changed name of a step changes the order of work. What she writes stands in
 * {@code trim.plan}; nothing is worked out here.
 */
package secondbolt.trim;
