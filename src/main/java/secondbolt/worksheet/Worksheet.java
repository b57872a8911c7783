package secondbolt.worksheet;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import secondbolt.block.Block;
import secondbolt.fault.Fault;
import secondbolt.figure.Figures;

/**
 * One topic worked out: what is to be read, what its page shows, what its sheets print, what other
 * programs read. All of it is made when it is first asked for, once.
 */
public final class Worksheet {
    private final String name;
    private final String title;
    private final Supplier<Notes> notes;
    private final Supplier<List<Block>> blocks;
    private final Supplier<List<Sheet>> sheets;
    private final Supplier<Figures> figures;
    private final Gives gives;

    private Worksheet(
            String name,
            String title,
            Supplier<Notes> notes,
            Supplier<List<Block>> blocks,
            Supplier<List<Sheet>> sheets,
            Supplier<Figures> figures,
            Gives gives) {
        this.name = name;
        this.title = title;
        this.notes = notes;
        this.blocks = blocks;
        this.sheets = sheets;
        this.figures = figures;
        this.gives = gives;
    }

    /**
     * A worksheet with nothing but what is to be read.
     *
     * @param name one lower-case word; it names the page's anchor and the key of the figures
     * @param title the heading of its page, in the trade's words
     * @param notes what the maker should read
     */
    public static Worksheet of(String name, String title, Supplier<Notes> notes) {
        return new Worksheet(
                name, title, made(name, notes), List::of, List::of, Figures::new, Gives.NOTHING);
    }

    /** Made once; a failure is told with the worksheet's name. */
    private static <T> Supplier<T> made(String name, Supplier<T> make) {
        return new Once<>(() -> Fault.during(name, make));
    }

    /** The same with what its page shows. */
    public Worksheet showing(Supplier<List<Block>> shown) {
        return new Worksheet(name, title, notes, made(name, shown), sheets, figures, gives);
    }

    /** The same with its sheets. */
    public Worksheet printing(Supplier<List<Sheet>> printed) {
        return new Worksheet(name, title, notes, blocks, made(name, printed), figures, gives);
    }

    /** The same with its figures for other programs. */
    public Worksheet telling(Supplier<Figures> told) {
        return new Worksheet(name, title, notes, blocks, sheets, made(name, told), gives);
    }

    /** The same with more that stays open. */
    public Worksheet leaving(List<Open> more) {
        Supplier<Notes> all = made(name, () -> notes.get().leaving(more));
        return more.isEmpty()
                ? this
                : new Worksheet(name, title, all, blocks, sheets, figures, gives);
    }

    /** The same with what it contributes to others. */
    public Worksheet giving(Gives given) {
        return new Worksheet(name, title, notes, blocks, sheets, figures, given);
    }

    /** One lower-case word; it names the page's anchor and the key of the figures. */
    public String name() {
        return name;
    }

    /** The heading of its page, in the trade's words. */
    public String title() {
        return title;
    }

    /** What the maker should read. */
    public Notes notes() {
        return notes.get();
    }

    /** What the maker should know before she cuts. */
    public List<Finding> findings() {
        return notes().findings();
    }

    /** What was not written and therefore assumed. */
    public List<Assumed> assumed() {
        return notes().assumed();
    }

    /** What stays open because she does not know it yet. */
    public List<Open> open() {
        return notes().open();
    }

    /** What its page shows, in order. */
    public List<Block> blocks() {
        return blocks.get();
    }

    /** Its sheets, in order. */
    public List<Sheet> sheets() {
        return sheets.get();
    }

    /** All that its sheets show, for other programs. */
    public Figures figures() {
        return figures.get();
    }

    /** What it contributes to others. */
    public Gives gives() {
        return gives;
    }

    /** Everything its page and sheets show that a finding can be about. */
    public Set<Subject> shows() {
        Set<Subject> shown = new HashSet<>();
        sheets().forEach(sheet -> shown.addAll(sheet.shows()));
        findings().forEach(finding -> shown.add(finding.about()));
        return shown;
    }
}
