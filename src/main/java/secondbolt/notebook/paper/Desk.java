package secondbolt.notebook.paper;

import java.util.Optional;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;

/**
 * What the maker has on her desk, whatever she makes.
 *
 * @param paper what lies in her printer, if she said so
 * @param correction what her printer makes of 100 mm
 */
public record Desk(Optional<Paper> paper, PrintCorrection correction) {
    /** A desk nothing is known of. */
    public static final Desk UNKNOWN = new Desk(Optional.empty(), PrintCorrection.NONE);

    /** The same with a printer that prints true, for sheets that others may print as well. */
    public Desk printingTrue() {
        return new Desk(paper, PrintCorrection.NONE);
    }
}
