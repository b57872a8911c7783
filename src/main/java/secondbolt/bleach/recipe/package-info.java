/**
 * What a fibre bears of bleaches and of colour removers, why a treatment is refused, and what a
 * remover's bath takes. Start at {@link secondbolt.bleach.recipe.Treatment}. This room uses {@code
 * cloth.yields}, {@code textile}, {@code textile.state}, {@code bleach.plan}, {@code
 * textile.fibre}, {@code file.value} and {@code measure}. A source may be added freely; a change of
 * what is refused may cost somebody her cloth. No strength of a bleach belongs here: that is the
 * label's to say.
 */
package secondbolt.bleach.recipe;
