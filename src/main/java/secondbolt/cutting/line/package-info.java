/**
 * The lines on which cloth is cut: each piece with its seam and hem allowances, its sewing line and
 * its cutting line. Start at {@link secondbolt.cutting.line.CuttingCalculation}. This room uses
 * {@code fit.cut}, {@code fit.result}, {@code pattern}, {@code pattern.piece}, {@code hem.plan},
 * {@code worksheet}, {@code block}, {@code garment}, {@code shape}, {@code shape.cut} and {@code
 * measure}. How the lines are held may be changed freely; a change of an allowance moves the line
 * on which cloth is cut. Words and drawings belong in {@code cutting.sketch}; how pieces lie on the
 * cloth does not belong here.
 */
package secondbolt.cutting.line;
