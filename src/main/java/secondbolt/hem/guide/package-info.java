/**
 * What a maker makes a hem with, and its words: the card it is pressed over, the strip it is
 * levelled with, the picture of its folds. Start at {@link secondbolt.hem.guide.PressingCard}. This
 * room uses {@code hem.turned}, {@code hem.plan}, {@code pattern.piece}, {@code worksheet}, {@code
 * garment}, {@code draw}, {@code shape}, {@code shape.cut} and {@code measure}. Words may be
 * changed freely; a change of a card's true size presses a wrong depth into cloth. How deep a hem
 * is belongs in {@code hem.plan}, how long its edges are in {@code hem.turned}, the sheets in
 * {@code hem}.
 */
package secondbolt.hem.guide;
