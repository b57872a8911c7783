/**
 * What the maker writes of strips and elastic: the sections {@code binding} and {@code elastic},
 * how they are read, and what in them names nothing. Start at {@link
 * secondbolt.trim.plan.BindingSection} and {@link secondbolt.trim.plan.ElasticSection}. This room
 * uses {@code hem.plan}, {@code pattern}, {@code wearer}, {@code pattern.piece} and the rooms below
 * the topics. What a measure is for may be changed freely; a changed key is a change of every
 * project file. No strip is cut and no length worked out here.
 */
package secondbolt.trim.plan;
