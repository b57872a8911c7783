package secondbolt.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.source.Columns;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Node;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.LeftOpen;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Tape;

/**
 * What a form needs to know while it reads: the file, where mistakes go, and the tape of bare
 * numbers.
 */
public final class Reading {
    /** A # before a letter or a number; {@code # 2} is a number too. */
    private static final Pattern CUT_OFF = Pattern.compile("\\s*+#(?:[\\p{L}\\p{N}]|\\s*+\\d).*+");

    /** After so many mistakes, and for more than she can see at a glance, no line is built. */
    private static final int MOST_LINES_BUILT = 100;

    /** So many mistakes are held back to be told together. */
    private static final int MOST_HELD = 1000;

    private final SourceFile source;
    private Mistakes mistakes;
    private final Tape tape;
    private final boolean tapeTold;
    private final boolean whole;
    private final List<SourceFile> others = new ArrayList<>();
    private final boolean silent;
    private final Columns columns;
    private int told;
    private final List<String> path = new ArrayList<>();

    /** What is left open under each path, by the path of what is open. */
    private final Map<List<String>, Map<List<String>, LeftOpen>> open = new HashMap<>();

    /** What is told when all of it is known. */
    private final List<Trouble> held = new ArrayList<>();

    private Optional<Example> example = Optional.empty();

    /**
     * Begins a reading.
     *
     * @param tapeTold whether the file says which tape; if not, no number is asked about for its
     *     unit
     * @param whole whether nothing of the file was passed over; if something was, a missing key is
     *     not told, for it may stand there
     */
    Reading(SourceFile source, Mistakes mistakes, Tape tape, boolean tapeTold, boolean whole) {
        this(source, mistakes, tape, tapeTold, whole, false, new Columns(source));
    }

    private Reading(
            SourceFile source,
            Mistakes mistakes,
            Tape tape,
            boolean tapeTold,
            boolean whole,
            boolean silent,
            Columns columns) {
        this.source = source;
        this.mistakes = mistakes;
        this.tape = tape;
        this.tapeTold = tapeTold;
        this.whole = whole;
        this.silent = silent;
        this.columns = columns;
    }

    /** A reading of the same file that tells nobody, to try what a form takes. */
    Reading silent() {
        return new Reading(source, new Mistakes(), tape, tapeTold, true, true, columns);
    }

    /** From now on tells its mistakes elsewhere. */
    void tellTo(Mistakes other) {
        mistakes = other;
    }

    /**
     * Shows the lines of another file as well, where a mistake that is found later stands in it.
     */
    void showAlso(SourceFile other) {
        others.add(other);
    }

    private SourceFile source(Place place) {
        return others.stream()
                .filter(other -> other.name().equals(place.file()))
                .findFirst()
                .orElse(source);
    }

    /** Reads what stands under a key, so that what is wrong is told with the key's example. */
    <T> T under(Example model, Supplier<T> read) {
        Optional<Example> before = example;
        example = Optional.of(model);
        if (!model.label().isEmpty()) {
            path.add(model.label());
        }
        T value = read.get();
        if (!model.label().isEmpty()) {
            path.remove(path.size() - 1);
        }
        example = before;
        return value;
    }

    /** The section, the keys and the names of the maker's own above what is read. */
    List<String> path() {
        return List.copyOf(path);
    }

    /** Keeps that a key is open, and what is taken for it meanwhile; empty if nothing is. */
    void leaveOpen(Key<?> key, List<String> above, String meanwhile) {
        List<String> whole = new ArrayList<>(above);
        whole.add(key.name());
        String findOut =
                key.findOut().isEmpty()
                        ? key.meaning() + " Write it as " + key.line(tape) + "."
                        : key.findOut();
        LeftOpen one = new LeftOpen(above, key.name(), meanwhile, findOut);
        for (int i = 0; i <= above.size(); i++) {
            open.computeIfAbsent(List.copyOf(above.subList(0, i)), path -> new LinkedHashMap<>())
                    .put(whole, one);
        }
    }

    /** What is left open at a path and below it. */
    List<LeftOpen> leftOpen(List<String> above) {
        return List.copyOf(open.getOrDefault(above, Map.of()).values());
    }

    /**
     * Tells keys that stand where a name of the maker's own is missing above them: {@code cloth:
     * {size: …}}.
     *
     * @param names the form of the whole, to be told
     * @param form of what stands under each name
     * @return whether that is so
     */
    public boolean tellUnnamed(Node.Mapping node, Form<?> names, Form<?> form) {
        boolean areKeys =
                node.pairs().stream().allMatch(pair -> isUnderKey(pair, form))
                        && node.pairs().stream().anyMatch(pair -> !form.suits(pair.value()));
        Optional<String> line =
                areKeys ? example.flatMap(e -> e.line(node, this)) : Optional.empty();
        line.ifPresent(
                right ->
                        tell(
                                node.place(),
                                "`" + node.pairs().get(0).key().text() + "` where a name stands",
                                right + ": " + names.words(tape)));
        return line.isPresent();
    }

    private static boolean isUnderKey(Node.Pair pair, Form<?> form) {
        return form.keys().stream()
                .anyMatch(
                        key ->
                                key.name().equals(pair.key().text())
                                        && key.form().suits(pair.value()));
    }

    /** Reads one item of a list. */
    public <T> Optional<T> item(Form<T> form, Node node) {
        return example.isEmpty()
                ? form.read(node, this)
                : under(example.get().item(form), () -> form.read(node, this));
    }

    /** Reads a value under a name of the maker's own. */
    public <T> Optional<T> named(String name, Form<T> form, Node node) {
        return example.isEmpty()
                ? form.read(node, this)
                : under(example.get().named(name, form), () -> form.read(node, this));
    }

    /** The tape a bare number is read on. */
    public Tape tape() {
        return tape;
    }

    /** Whether the file says which tape a bare number is on. */
    public boolean isTapeTold() {
        return tapeTold;
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

    /**
     * Tells what was found, a mistake or a fault of the program; a name that nothing bears when all
     * are {@linkplain #settle settled}.
     */
    void tell(Trouble trouble) {
        if (trouble.unknown().isPresent() && held.size() < MOST_HELD) {
            told++;
            held.add(trouble);
        } else if (trouble.isOfProgram()) {
            told++;
            mistakes.add(Mistake.ofProgram(trouble.place(), trouble.found()));
        } else {
            tell(trouble.place(), trouble.found(), trouble.right());
        }
    }

    /** Tells the names that nothing bears, or the ones that were given amiss in their place. */
    void settle() {
        new Misnamed(source)
                .settled(held)
                .forEach(trouble -> tell(trouble.place(), trouble.found(), trouble.right()));
        held.clear();
    }

    /** Tells a mistake. */
    public void tell(Place place, String found, String right) {
        told++;
        if (silent) {
            return;
        }
        // A maker who has read that she may write it wonders why not here.
        String unless = found.equals("`unknown`") ? "; `unknown` cannot stand here" : "";
        mistakes.add(source(place).mistake(place, found, right + unless));
    }

    /**
     * Tells that a node has not the kind of a form, with the line that she may have meant, unless
     * what ails it is told already.
     */
    public void tellKind(Node node, Form<?> wanted) {
        if (silent) {
            told++;
            return;
        }
        String words = wanted.words(tape);
        tellWrong(
                node,
                example.filter(e -> told < MOST_LINES_BUILT)
                        .flatMap(e -> e.line(node, this))
                        .map(line -> line + ": " + words)
                        .orElse(words));
    }

    /** Tells that a node is not what was wanted, unless what ails it is told already. */
    public void tellWrong(Node node, String right) {
        if (node.isLost()) {
            told++;
            return;
        }
        boolean isHidden =
                node.asText().filter(t -> t.text().isEmpty()).isPresent()
                        && cutOff(node.place(), "").isPresent();
        tell(
                node.place(),
                node.words() + (isHidden ? ", for what follows a # is a note of your own" : ""),
                right + (isHidden ? "; in quotation marks if it begins with #" : ""));
    }

    /**
     * What a # behind a text seems to have cut off it: {@code #2} of {@code Skirt #2}. A note of
     * her own has a space after its #.
     */
    public Optional<String> cutOff(Node.Text text) {
        return cutOff(text.place(), text.text());
    }

    private Optional<String> cutOff(Place place, String text) {
        if (place.line() > source.lines().size()) {
            return Optional.empty();
        }
        String line = source.lines().get(place.line() - 1);
        int at = columns.offset(place.line(), place.column());
        Matcher behind = CUT_OFF.matcher(line);
        return line.startsWith(text, at)
                        && behind.region(at + text.length(), line.length()).matches()
                ? Optional.of(behind.group().strip())
                : Optional.empty();
    }
}
