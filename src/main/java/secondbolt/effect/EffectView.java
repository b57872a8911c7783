package secondbolt.effect;

import java.util.List;

/**
 * What the page shows, as ready text.
 *
 * @param alterations one for each, in the maker's order
 */
public record EffectView(List<One> alterations) {
    /**
     * An alteration.
     *
     * @param words what it does
     * @param rows what it changed
     */
    public record One(String words, List<Row> rows) {}

    /**
     * A change.
     *
     * @param what changed
     * @param before without the alteration
     * @param after with it
     * @param other the same on the other tape
     * @param difference by how much, with its sign
     */
    public record Row(String what, String before, String after, String other, String difference) {}
}
