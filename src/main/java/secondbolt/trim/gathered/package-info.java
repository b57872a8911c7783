/**
 * Elastic worked out: how long it is by each published rule and by the maker's own, whether it can
 * be pulled over what it must pass, how wide its casing is and what cloth that takes. Start at
 * {@link secondbolt.trim.gathered.ElasticCalculation}. This room uses {@code trim.plan}, {@code
 * wearer}, {@code hem.plan}, {@code cutting.line}, {@code fit.result}, {@code pattern}, {@code
 * pattern.piece}, {@code garment}, {@code measure} and of {@code worksheet} the convention. A rule
 * with its source may be added freely; an elastic told shorter than it may be does not go on.
 * Words, findings and steps belong in {@code trim}.
 */
package secondbolt.trim.gathered;
