/**
 * How hot a cloth may be washed and ironed: what each fibre bears, and what a blend, an unknown
 * fibre or a care label makes of it. Start at {@link secondbolt.prepare.heat.Heat}. This room uses
 * {@code textile.fibre}, {@code textile.state} and {@code measure}. The heat of a fibre may be
 * changed freely with its source; a ceiling of the iron is the standard's. How it is told, and what
 * is done to a cloth, belong in {@code prepare}.
 */
package secondbolt.prepare.heat;
