package secondbolt.worksheet;

import java.util.List;
import java.util.Map;
import secondbolt.draw.Drawing;

/** One topic worked out: what its page shows, what its sheets print, what other programs read. */
public interface Worksheet {
    /** One lower-case word; it names the template, the page's anchor and the key of the figures. */
    String name();

    /** The heading of its page, in the trade's words. */
    String title();

    /** What its template shows: a record of text, made ready so that templates only lay out. */
    Object view();

    /** The pictures its template shows, by name. */
    Map<String, Drawing> pictures();

    /** Its sheets true to scale. */
    List<Sheet> sheets();

    /** What the maker should know before she cuts. */
    List<Finding> findings();

    /** What was not written and therefore assumed. */
    List<Assumed> assumed();

    /** What stays open because she does not know it yet. */
    List<Open> open();

    /** All that its sheets show, for other programs. */
    Figures figures();
}
