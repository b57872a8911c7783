/**
 * Measures of the trade: lengths, areas, cloth weights, masses, volumes and shares, each with its
 * unit in the type, and counts in words ({@link secondbolt.measure.Plural}). Start at {@link
 * secondbolt.measure.Length}; what a maker reads off her tape is {@link secondbolt.measure.Tape}.
 * This room uses no other room. How a number is scanned may be changed freely; a change of a unit
 * factor or of a printed form changes every sheet. Nothing that knows a project, a file or a
 * drawing belongs here.
 */
package secondbolt.measure;
