package secondbolt.lay;

import java.util.List;

/**
 * What the page of the lay shows, as ready text.
 *
 * @param verdict whether the chosen design fits
 * @param facts about the lay as a whole
 * @param cloths one for each cloth a piece is cut from, or could be
 * @param leftOver what found no place; empty if everything did
 * @param remedies what was tried, with what came of it
 * @param designs one row for each design, if there are several
 * @param saved the heading of what a design saves; empty if the maker tells of no new cloth
 * @param bolts lengths from the bolt, by design and role
 */
public record LayView(
        String verdict,
        List<Fact> facts,
        List<OneCloth> cloths,
        List<String> leftOver,
        List<Fact> remedies,
        List<DesignRow> designs,
        String saved,
        List<Bolt> bolts) {
    /**
     * A labelled value.
     *
     * @param label what it is
     * @param value on the project's tape
     * @param other on the other one; empty if there is none
     */
    public record Fact(String label, String value, String other) {}

    /**
     * A cloth.
     *
     * @param name the maker's name for it
     * @param picture the name of its picture
     * @param caption what the picture shows
     * @param over what stays over in one piece
     * @param pieces in the order of cutting
     */
    public record OneCloth(
            String name, String picture, String caption, String over, List<PieceRow> pieces) {}

    /**
     * A piece.
     *
     * @param number on the picture
     * @param piece its name
     * @param lies which side is up, and how it is turned
     * @param begins where the box round it begins
     * @param pins its pin points
     */
    public record PieceRow(
            String number, String piece, String lies, String begins, List<Pin> pins) {}

    /**
     * A pin point.
     *
     * @param where which corner
     * @param across from the left edge
     * @param along from the top
     */
    public record Pin(String where, String across, String along) {}

    /**
     * A design.
     *
     * @param name the maker's name for it
     * @param fits whether all of it has room
     * @param used the share of sound cloth it takes
     * @param over the largest remnant
     * @param suits what the cloth's weight says
     * @param saved what new cloth would cost, or how much it would be
     */
    public record DesignRow(
            String name, String fits, String used, String over, String suits, String saved) {}

    /**
     * Lengths from the bolt.
     *
     * @param title of which design and cloth
     * @param rows one for each width
     */
    public record Bolt(String title, List<BoltRow> rows) {}

    /**
     * One width.
     *
     * @param width of the bolt
     * @param lay how long the lay is
     * @param buy what to buy
     * @param printed what the envelope says; empty if it does not
     */
    public record BoltRow(String width, String lay, String buy, String printed) {}
}
