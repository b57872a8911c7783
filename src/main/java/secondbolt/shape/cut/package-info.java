/**
 * Lines that run beside an edge at a distance: cutting lines with their allowances and corners,
 * turned-up edges, what is sewn between the seams at both ends. Start at {@link
 * secondbolt.shape.cut.CuttingLine} and {@link secondbolt.shape.cut.TurnedEdge}. This room uses
 * {@code shape}. How a line is found may be changed freely; a change of where a corner comes moves
 * the line on which cloth is cut. Nothing that knows how wide an allowance should be, or the names
 * of edges, belongs here.
 */
package secondbolt.shape.cut;
