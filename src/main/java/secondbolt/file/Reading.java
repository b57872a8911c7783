package secondbolt.file;

import java.util.Optional;
import java.util.function.BiFunction;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Node;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.measure.Tape;

/**
 * What a form needs to know while it reads: the file, where mistakes go, and the tape of bare
 * numbers.
 */
public final class Reading {
    private final SourceFile source;
    private final Mistakes mistakes;
    private final Tape tape;
    private final boolean whole;
    private int told;

    /**
     * Begins a reading.
     *
     * @param whole whether nothing of the file was passed over; if something was, a missing key is
     *     not told, for it may stand there
     */
    Reading(SourceFile source, Mistakes mistakes, Tape tape, boolean whole) {
        this.source = source;
        this.mistakes = mistakes;
        this.tape = tape;
        this.whole = whole;
    }

    /** The tape a bare number is read on. */
    public Tape tape() {
        return tape;
    }

    /** Whether the whole file is read, not one part of it. */
    public boolean isWhole() {
        return whole;
    }

    /** How often a mistake was told, counting one that was told before, in what this is like. */
    public int mistakeCount() {
        return told;
    }

    /** A file that the maker names, from the folder of the one that is read. */
    public Optional<SourceFile> sibling(Node node, String path) {
        int before = mistakes.count();
        Optional<SourceFile> file = source.sibling(path, node.place(), mistakes);
        told += mistakes.count() - before;
        return file;
    }

    /** Reads what stands in another file, its mistakes told there. */
    public <T> Optional<T> inside(
            SourceFile file, BiFunction<SourceFile, Mistakes, Optional<T>> read) {
        int before = mistakes.count();
        Optional<T> value = read.apply(file, mistakes);
        told += mistakes.count() - before;
        return value;
    }

    /** Tells a mistake. */
    public void tell(Place place, String found, String right) {
        told++;
        // A maker who has read that she may write it wonders why not here.
        String unless = found.equals("`unknown`") ? "; `unknown` cannot stand here" : "";
        mistakes.add(source.mistake(place, found, right + unless));
    }

    /** Tells that a node is not what was wanted, unless what ails it is told already. */
    public void tellWrong(Node node, String right) {
        if (node.isLost()) {
            told++;
            return;
        }
        tell(node.place(), node.words(), right);
    }
}
