package secondbolt.fit;

import java.util.List;

/**
 * What the fit page shows, as ready text.
 *
 * @param rights whose the pattern is
 * @param sized the wearer beside the pattern
 * @param alterations each with what it changed
 * @param seams each with its lengths
 * @param openings each with its size
 */
public record FitView(
        String rights,
        Sized sized,
        List<Altered> alterations,
        List<Joined> seams,
        List<Opens> openings) {
    /**
     * A value on both tapes.
     *
     * @param own on the project's tape
     * @param other on the other one
     */
    public record Both(String own, String other) {}

    /**
     * The wearer beside the pattern.
     *
     * @param size the size worked with; empty if there is none
     * @param measurements a row for each
     * @param suggestions what could be altered
     * @param redraw what is redrawn between the sizes of a blend
     */
    public record Sized(
            String size,
            List<Measured> measurements,
            List<Suggested> suggestions,
            List<String> redraw) {}

    /**
     * A measurement; an empty text where it is not known.
     *
     * @param name what is measured
     * @param body of the wearer
     * @param pattern of the size
     * @param finished of the garment
     * @param ease of the garment
     * @param nearest the nearest size
     */
    public record Measured(
            String name, Both body, Both pattern, Both finished, Both ease, String nearest) {}

    /**
     * A suggestion.
     *
     * @param text why and what
     * @param yaml a line to paste; empty if there is none
     */
    public record Suggested(String text, String yaml) {}

    /**
     * An alteration.
     *
     * @param words what it does
     * @param found in which fitting; empty if not told
     * @param changes what it changed
     * @param open taped edges of which that is not known
     */
    public record Altered(String words, String found, List<Change> changes, List<String> open) {}

    /**
     * A change.
     *
     * @param what changed
     * @param before its length before
     * @param after its length after
     */
    public record Change(String what, Both before, Both after) {}

    /**
     * A seam.
     *
     * @param first one side
     * @param firstLength how long it is
     * @param second the other side
     * @param secondLength how long it is
     * @param meant what is meant: ease or gathers; empty if nothing
     * @param verdict whether it meets
     */
    public record Joined(
            String first,
            Both firstLength,
            String second,
            Both secondLength,
            String meant,
            String verdict) {}

    /**
     * An opening.
     *
     * @param what it is
     * @param size how far it opens
     * @param over what must pass
     */
    public record Opens(String what, Both size, String over) {}
}
