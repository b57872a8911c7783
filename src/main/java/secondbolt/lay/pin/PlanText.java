package secondbolt.lay.pin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.Placed;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.plan.PlanFile;
import secondbolt.lay.stock.Pinned;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.WrittenAlterations;

/**
 * The text of a plan.
 *
 * @param result what is laid
 * @param names of all pieces of the pattern
 * @param alterations as they are now, which what is laid has
 * @param tape it is written for
 */
public record PlanText(
        LayResult result, Set<String> names, List<Alteration> alterations, Tape tape) {
    private static final List<String> ABOUT =
            List.of(
                    "# Where each piece lies, written by `secondbolt pin`; yours to edit.",
                    "# Tick what is cut: `cut: yes`. To move a piece, write where the box round its",
                    "# cutting line begins: across and along, from the left edge (or the fold) and",
                    "# the top of the trimmed and washed cloth. Take its lines away, and it is laid"
                            + " anew.");

    private static final String ALTERED = "altered";

    /** Copies both. */
    public PlanText {
        names = Set.copyOf(names);
        alterations = List.copyOf(alterations);
    }

    /**
     * What is in a plan and what became of it.
     *
     * @param text the whole text of the file
     * @param kept how many pieces stand in it as before
     * @param anew the pieces that are written anew, as the cutting plan names them
     */
    public record Written(String text, int kept, List<String> anew) {
        /** Copies the list. */
        public Written {
            anew = List.copyOf(anew);
        }
    }

    /** A plan where there was none. */
    public Written fresh() {
        List<String> lines = new ArrayList<>(ABOUT);
        lines.add("units: " + tape.symbol());
        lines.add(ALTERED + ": " + new WrittenAlterations(tape).of(alterations));
        List<PlanEntry> entries = laidAnew();
        lines.add(entries.isEmpty() ? "pieces: []" : "pieces:");
        entries.forEach(entry -> lines.addAll(entry.lines(tape)));
        return new Written(
                String.join("\n", lines) + "\n", 0, entries.stream().map(PlanEntry::name).toList());
    }

    /**
     * A plan brought up to date: what still holds stays letter for letter, with every remark; what
     * does not is written anew in its place, and what is new at the end.
     *
     * @param old the plan as it is
     *     <p>Where the pattern is altered otherwise than when it was pinned, what is cut is told to
     *     have what it had then.
     * @param plan what stands in it
     * @return nothing if two pieces of it stand in one line
     */
    public Optional<Written> updated(SourceFile old, PlanFile.Plan plan) {
        List<Placed<PlanFile.Entry>> entries = plan.entries();
        if (entries.isEmpty()) {
            return Optional.of(fresh());
        }
        Optional<EntryLines> all = EntryLines.of(old, entries);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Map<String, PlanEntry> anew = new LinkedHashMap<>();
        laidAnew().forEach(entry -> anew.put(entry.name(), entry));
        List<String> written = new ArrayList<>(anew.keySet());
        Set<Place> letGo = letGo(entries);
        boolean isAltered = !plan.altered().equals(Optional.of(alterations));
        Map<Integer, List<String>> instead = new HashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            PlanFile.Entry entry = entries.get(i).value();
            if (letGo.contains(entries.get(i).place())) {
                PlanEntry other = anew.remove(entry.placing().piece().value());
                instead.put(i, other == null ? List.of() : other.lines(tape));
            } else if (isAltered && entry.isCut() && !entry.isTold()) {
                instead.put(i, asCut(all.get().own(i), entries.get(i).place(), plan));
            }
        }
        List<String> more =
                anew.values().stream().flatMap(entry -> entry.lines(tape).stream()).toList();
        List<String> lines = all.get().with(instead, more);
        String now = new WrittenAlterations(tape).of(alterations);
        return Optional.of(
                new Written(
                        all.get().text(isAltered ? EntryLines.telling(ALTERED, now, lines) : lines),
                        entries.size() - letGo.size(),
                        written));
    }

    /** The lines of a piece that is cut, with the alterations it had when it was pinned. */
    private List<String> asCut(List<String> own, Place place, PlanFile.Plan plan) {
        String told =
                ALTERED
                        + ": "
                        + plan.altered().map(new WrittenAlterations(tape)::of).orElse("unknown");
        List<String> lines = new ArrayList<>(own);
        boolean isInBraces = own.get(0).startsWith("{", place.column() - 1);
        if (isInBraces) {
            int last = lines.size() - 1;
            int brace = lines.get(last).lastIndexOf('}');
            String line = lines.get(last);
            lines.set(last, line.substring(0, brace) + ", " + told + line.substring(brace));
        } else {
            lines.add(" ".repeat(place.column() - 1) + told);
        }
        return lines;
    }

    /**
     * The same plan with nothing in it but what is cut.
     *
     * @return nothing if two pieces of it stand in one line
     */
    public static Optional<SourceFile> onlyCut(
            SourceFile old, List<Placed<PlanFile.Entry>> entries) {
        Map<Integer, List<String>> instead = new HashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            if (!entries.get(i).value().isCut()) {
                instead.put(i, List.of());
            }
        }
        boolean isAll = instead.size() == entries.size();
        return EntryLines.of(old, entries)
                .map(all -> all.text(isAll ? all.withNone() : all.with(instead, List.of())))
                .map(text -> SourceFile.of(old.name(), text));
    }

    /** What is laid elsewhere than the plan has it, in the order of laying. */
    private List<PlanEntry> laidAnew() {
        List<PlanEntry> anew = new ArrayList<>();
        for (StockLay stock : result.made().stocks()) {
            List<LaidPiece> laid = stock.laid();
            laid.subList(stock.pinned().kept().size(), laid.size())
                    .forEach(
                            l -> anew.add(new PlanEntry(l, stock.spreads().get(l.cloth()), names)));
        }
        return anew;
    }

    /** The places of what does not hold, and of what names nothing. */
    private Set<Place> letGo(List<Placed<PlanFile.Entry>> entries) {
        Set<Place> misfits =
                result.made().stocks().stream()
                        .flatMap(stock -> stock.pinned().misfits().stream())
                        .map(Pinned.Misfit::placing)
                        .map(placing -> placing.piece().place())
                        .collect(Collectors.toSet());
        Set<Place> letGo = new HashSet<>();
        for (Placed<PlanFile.Entry> entry : entries) {
            Place piece = entry.value().placing().piece().place();
            boolean isNamed =
                    names.contains(entry.value().placing().namedBy(names).piece().value());
            if (!entry.value().isCut() && (misfits.contains(piece) || !isNamed)) {
                letGo.add(entry.place());
            }
        }
        return letGo;
    }
}
