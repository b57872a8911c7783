/**
 * Cutting: each piece with its seam and hem allowances, printed full size. Start at {@link
 * secondbolt.cutting.CuttingCalculation} for the cutting lines, {@link
 * secondbolt.cutting.PieceSketch} for how a piece is drawn and {@link
 * secondbolt.cutting.CuttingWorksheet} for page and sheets. This room uses {@code fit}, {@code
 * hem}, {@code draw}, {@code topic}, {@code worksheet}, {@code block}, {@code figure}, {@code
 * garment}, {@code shape} and {@code measure}. Where labels stand may be changed freely; a change
 * of an allowance moves the line on which cloth is cut. How pieces lie on the cloth does not belong
 * here.
 */
package secondbolt.cutting;
