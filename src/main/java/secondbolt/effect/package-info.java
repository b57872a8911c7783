/**
 * Effects: what each alteration changes further down, on closures, hems, marks, cut pieces and
 * cloth. Start at {@link secondbolt.effect.EffectCalculation}: it works the topics out once for
 * every alteration and compares. This room uses {@code fit}, {@code closure}, {@code hem}, {@code
 * cutting}, {@code worksheet} and {@code measure}. What is compared may be added to freely in
 * {@code Stage}; the order of alterations is the maker's and must stay. How a topic is worked out
 * does not belong here.
 */
package secondbolt.effect;
