/**
 * What the maker writes of her lay: the sections {@code lay}, {@code designs}, {@code make}, {@code
 * cut so far} and {@code interfacing}, and the plan that is pinned beside the project file, how
 * they are read, and what in them names nothing. Start with {@link secondbolt.lay.plan.LayPlan}. It
 * may use {@code file} and the topics {@code fit} and {@code cloth}, and of {@code lay.placement}
 * the effort, and of {@code supply.plan} the notions of a design. Records may change freely; a
 * changed key or form is a change of every project file. Nothing is laid here. Words to the maker
 * about a lay belong in {@code lay}; only how a copy lies is worded here, since she writes it as it
 * is printed.
 */
package secondbolt.lay.plan;
