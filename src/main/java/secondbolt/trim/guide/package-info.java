/**
 * How interfacing is fused, strips are cut and joined, edges counted, in the words that page, sheet
 * and findings share. Start at {@link secondbolt.trim.guide.FusingWords}. This room uses {@code
 * trim.strip}, {@code trim.plan}, {@code trim.fused}, {@code prepare.heat}, {@code lay.plan},
 * {@code garment} and {@code measure}. Words may be changed freely, but not what a caution warns
 * of. Findings and what a page is made of belong in {@code trim}.
 */
package secondbolt.trim.guide;
