/**
 * What the pieces with their cutting lines ask of the whole work: printing, trying the print,
 * marking what is cut; the words of the trade. Start at {@link
 * secondbolt.cutting.giving.CuttingGiving}. This room uses {@code cutting.line}, {@code
 * pattern.piece}, {@code task}, {@code worksheet} and {@code measure}. Words may be changed freely;
 * the name of a step may not, for other topics follow it and makers tick it. Cutting itself belongs
 * in {@code lay.giving}, which knows the cloth.
 */
package secondbolt.cutting.giving;
