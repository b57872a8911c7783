/**
 * The fit shown: what is found of pattern, seams, openings and alterations, and its page and
 * figures. Start at {@link secondbolt.fit.FitWorksheet}. This room uses {@code fit.giving}, {@code
 * fit.result}, {@code fit.alter}, {@code fit.cut}, {@code fit.seam}, {@code fit.stretch}, {@code
 * fit.size}, {@code lay.plan}, {@code pattern}, {@code pattern.piece}, {@code wearer} and the rooms
 * below the topics. Words may be changed freely; a change of when a seam is told not to meet
 * changes what a maker trusts. What the maker writes is in {@code pattern}, the altered pattern in
 * {@code fit.result}; allowances and cutting lines belong to {@code cutting}, hems to {@code hem}.
 */
package secondbolt.fit;
