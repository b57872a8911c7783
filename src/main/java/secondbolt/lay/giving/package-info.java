/**
 * What the lay asks of the whole work: cutting, with what is looked at just before it, since
 * nothing that is cut can be made longer; the words of the trade. Start at {@link
 * secondbolt.lay.giving.LayGiving}. This room uses {@code lay.design}, {@code lay.stock}, {@code
 * lay.piece}, {@code lay.plan}, {@code cutting.line}, {@code cloth.yields}, {@code textile}, {@code
 * textile.extent}, {@code pattern.piece}, {@code garment}, {@code task}, {@code worksheet} and
 * {@code measure}. Words may be changed freely; the name of the step may not, for other topics
 * follow it and makers tick it. Where a piece lies belongs in {@code lay.design}, its page in
 * {@code lay}.
 */
package secondbolt.lay.giving;
