/**
 * Kitchen measures: a volume in cups and spoons, with which cup is meant, and which powders may be
 * measured so at all. Start at {@link secondbolt.measure.kitchen.Kitchen}. This room uses {@code
 * measure}. How finely a volume is told may be changed freely; a change of what a cup holds changes
 * every recipe that is measured with one. What a bath needs belongs in the topics, and what a maker
 * writes with spoons and cups in {@code measure}.
 */
package secondbolt.measure.kitchen;
