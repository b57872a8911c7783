/**
 * What stiffens, binds and gathers, as the page, the sheet, the findings and the figures tell it:
 * interfacing and how it is fused, binding and its strips, elastic and its casing, with the steps
 * of work and the things needed. Start at {@link secondbolt.trim.TrimTopic}. This room uses the
 * rooms {@code trim.*} below it, the topics that come before it, {@code task}, {@code block},
 * {@code figure}, {@code worksheet}, {@code topic}, {@code file} and {@code measure}. Words may be
 * changed freely, but not what a caution warns of; a changed name of a step changes the order of
 * work. What she writes stands in {@code trim.plan}; nothing is worked out here.
 */
package secondbolt.trim;
