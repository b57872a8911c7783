package secondbolt.cloth;

import java.util.List;

/**
 * What the cloth page shows, as ready text.
 *
 * @param cloths one for each cloth
 * @param stocks one for each role, with what its cloths come to together
 */
public record ClothView(List<One> cloths, List<Stock> stocks) {
    /**
     * Text on the maker's tape, and the same on the other; the second is empty if there is none.
     *
     * @param own on the maker's tape
     * @param other on the other tape
     */
    public record Both(String own, String other) {}

    /**
     * One cloth.
     *
     * @param name the maker's name for it
     * @param picture the name of its picture; empty if its size is not known
     * @param caption what stands under the picture
     * @param basis what the figures hold for, such as the finished cloth
     * @param facts label and value
     * @param flaws one row for each flaw and feature
     * @param rectangles one row for each clear rectangle
     * @param ownLengths lengths by the bolt widths of the maker's system
     * @param otherLengths lengths by those of the other
     */
    public record One(
            String name,
            String picture,
            String caption,
            String basis,
            List<Fact> facts,
            List<FlawRow> flaws,
            List<RectangleRow> rectangles,
            List<LengthRow> ownLengths,
            List<LengthRow> otherLengths) {}

    /**
     * A fact.
     *
     * @param label what it is
     * @param value on both tapes
     */
    public record Fact(String label, Both value) {}

    /**
     * A flaw or feature.
     *
     * @param letter as in the picture
     * @param what in the maker's words
     * @param across from the left edge, as measured
     * @param along from the top, as measured
     * @param use what pieces may do with it
     */
    public record FlawRow(String letter, String what, Both across, Both along, String use) {}

    /**
     * A clear rectangle.
     *
     * @param number as in the picture
     * @param across from the left edge of the trimmed cloth to its left side
     * @param along from the top of the trimmed cloth to its upper side
     * @param width its width
     * @param length its length along the grain
     */
    public record RectangleRow(int number, Both across, Both along, Both width, Both length) {}

    /**
     * A length from the bolt.
     *
     * @param width of the bolt
     * @param byArea what the sound area comes to
     * @param clearRun the longest clear piece that is so wide, or {@code none}
     */
    public record LengthRow(String width, Both byArea, Both clearRun) {}

    /**
     * All cloths of one role.
     *
     * @param role what they are for
     * @param names their names
     * @param facts what they come to
     */
    public record Stock(String role, String names, List<Fact> facts) {}
}
