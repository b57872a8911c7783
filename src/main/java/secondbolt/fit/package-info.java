/**
 * The pattern: its pieces with named edges, what is lengthened, shortened, widened or narrowed, and
 * whether every seam still meets. Start at {@link secondbolt.fit.PatternSection} for what the maker
 * writes and {@link secondbolt.fit.FitCalculation} for the sums. This room uses {@code cloth},
 * {@code garment}, {@code file}, {@code draw}, {@code worksheet}, {@code shape} and {@code
 * measure}. The look of the pages may be changed freely; a change of how an edge follows an
 * alteration changes every sewing line. Allowances and cutting lines belong to {@code cutting},
 * hems to {@code hem}, not here.
 */
package secondbolt.fit;
