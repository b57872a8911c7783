/**
 * The whole pattern after all its alterations: its pieces, how long their edges are, which seams
 * meet and what stays unknown. Start at {@link secondbolt.fit.result.FitCalculation} for the sums
 * and {@link secondbolt.fit.result.FitCheck} for what cannot be altered so. This room uses {@code
 * fit.alter}, {@code fit.cut}, {@code fit.seam}, {@code pattern}, {@code pattern.piece}, {@code
 * worksheet}, {@code garment}, {@code file.value}, {@code file.source}, {@code shape}, {@code
 * shape.cut} and {@code measure}. How the result is held may be changed freely; a change of the
 * order in which alterations are carried out changes every piece. What the maker writes is in
 * {@code pattern}; words, pages and figures belong in {@code fit}.
 */
package secondbolt.fit.result;
