/**
 * The pattern: its pieces with named edges, what is lengthened, shortened, widened or narrowed, and
 * whether every seam still meets. Start at {@link secondbolt.fit.PatternSection} for what the maker
 * writes, {@link secondbolt.fit.FitCalculation} for the sums and {@link
 * secondbolt.fit.FitWorksheet} for what is shown. This room uses {@code fit.size}, {@code garment},
 * {@code file}, {@code topic}, {@code worksheet}, {@code figure}, {@code block}, {@code shape} and
 * {@code measure}. The look of the pages may be changed freely; a change of how an edge follows an
 * alteration changes every sewing line. Allowances and cutting lines belong to {@code cutting},
 * hems to {@code hem}, not here.
 */
package secondbolt.fit;
