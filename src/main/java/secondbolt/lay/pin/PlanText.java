package secondbolt.lay.pin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.Placed;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.design.PinnedNames;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.plan.Placing;
import secondbolt.lay.plan.PlanFile;
import secondbolt.lay.stock.Pinned;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.WrittenAlterations;
import secondbolt.pattern.piece.Piece;

/**
 * The text of a plan.
 *
 * @param result what is laid
 * @param pieces all of the pattern, by name
 * @param alterations as they are now, which what is laid has
 * @param tape the maker's
 */
public record PlanText(
        LayResult result, Map<String, Piece> pieces, List<Alteration> alterations, Tape tape) {
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
        pieces = Map.copyOf(pieces);
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
        lines.add(PlanLines.PIECES + ": []");
        SourceFile empty = SourceFile.of(PlanFile.NAME, String.join("\n", lines) + "\n");
        return updated(empty, new PlanFile.Plan(tape, Optional.of(alterations), List.of()));
    }

    /** Why a plan cannot be brought up to date line by line; nothing if it can. */
    public static Optional<Mistake> mistake(SourceFile old, PlanFile.Plan plan) {
        return EntryLines.mistake(old, plan.entries());
    }

    /**
     * A plan brought up to date: what still holds stays letter for letter, with every remark; what
     * does not is written anew in its place, and what is new at the end.
     *
     * <p>Where the pattern is altered otherwise than when it was pinned, what is cut is told to
     * have what it had then.
     *
     * @param old the plan as it is, which has no {@link #mistake}
     * @param plan what stands in it
     */
    public Written updated(SourceFile old, PlanFile.Plan plan) {
        return updated(old, plan, letGo(plan.entries()));
    }

    /** The same where nothing but what is cut keeps its place, laid so by {@link #onlyCut}. */
    public Written anew(SourceFile old, PlanFile.Plan plan) {
        return updated(
                old,
                plan,
                notCut(plan).stream()
                        .map(i -> plan.entries().get(i).place())
                        .collect(Collectors.toSet()));
    }

    private Written updated(SourceFile old, PlanFile.Plan plan, Set<Place> letGo) {
        List<Placed<PlanFile.Entry>> entries = plan.entries();
        EntryLines all = EntryLines.of(old, entries);
        List<PlanEntry> anew = laidAnew(plan.units());
        List<String> written = anew.stream().map(PlanEntry::name).toList();
        boolean isAltered = !plan.altered().equals(Optional.of(alterations));
        Map<Integer, List<String>> instead = new HashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            PlanFile.Entry entry = entries.get(i).value();
            if (letGo.contains(entries.get(i).place())) {
                Optional<PlanEntry> other = named(entry.placing().piece().value(), anew);
                other.ifPresent(anew::remove);
                int number = i;
                instead.put(i, other.map(o -> all.instead(o, number)).orElse(List.of()));
            } else if (isAltered && entry.isCut() && !entry.isTold()) {
                instead.put(i, asCut(all.own(i), entries.get(i).place(), plan));
            }
        }
        int last = entries.size() - 1;
        List<String> more =
                anew.stream().flatMap(entry -> all.indented(entry, last).stream()).toList();
        PlanLines lines = all.with(instead, more);
        String now = new WrittenAlterations(plan.units()).of(alterations);
        return new Written(
                (isAltered ? lines.with(ALTERED, now, List.of()) : lines).text(),
                entries.size() - letGo.size(),
                written);
    }

    private static Optional<PlanEntry> named(String name, List<PlanEntry> entries) {
        return entries.stream().filter(entry -> entry.name().equals(name)).findFirst();
    }

    /** The lines of a piece that is cut, with the alterations it had when it was pinned. */
    private static List<String> asCut(List<String> own, Place place, PlanFile.Plan plan) {
        String told =
                ALTERED
                        + ": "
                        + plan.altered()
                                .map(new WrittenAlterations(plan.units())::of)
                                .orElse("unknown");
        List<String> lines = new ArrayList<>(own.stream().map(PlanLines::bare).toList());
        boolean isInBraces = own.get(0).startsWith("{", place.column() - 1);
        if (isInBraces) {
            int last = lines.size() - 1;
            String line = lines.get(last);
            int remark = PlanLines.remark(line).map(line::lastIndexOf).orElse(line.length());
            int brace = line.lastIndexOf('}', remark);
            lines.set(last, line.substring(0, brace) + ", " + told + line.substring(brace));
        } else {
            lines.add(" ".repeat(place.column() - 1) + told);
        }
        return lines;
    }

    /**
     * The same plan with nothing in it but what is cut, every line of that where it was.
     *
     * @param old a plan that has no {@link #mistake}
     */
    public static SourceFile onlyCut(SourceFile old, PlanFile.Plan plan) {
        PlanLines lines = EntryLines.of(old, plan.entries()).blank(notCut(plan));
        return SourceFile.of(old.name(), lines.text());
    }

    private static Set<Integer> notCut(PlanFile.Plan plan) {
        return IntStream.range(0, plan.entries().size())
                .filter(i -> !plan.entries().get(i).value().isCut())
                .boxed()
                .collect(Collectors.toSet());
    }

    /** What is laid elsewhere than the plan has it, in the order of laying. */
    private List<PlanEntry> laidAnew(Tape units) {
        List<PlanEntry> anew = new ArrayList<>();
        for (StockLay stock : result.made().stocks()) {
            List<LaidPiece> laid = stock.laid();
            laid.subList(stock.pinned().kept().size(), laid.size())
                    .forEach(l -> anew.add(entry(l, stock.spreads().get(l.cloth()), units)));
        }
        return anew;
    }

    private PlanEntry entry(LaidPiece laid, SpreadCloth spread, Tape units) {
        return new PlanEntry(laid, spread, pieces.keySet(), units, tape);
    }

    /** The places of what does not hold, and of what names nothing. */
    private Set<Place> letGo(List<Placed<PlanFile.Entry>> entries) {
        Set<Place> misfits =
                result.made().stocks().stream()
                        .flatMap(stock -> stock.pinned().misfits().stream())
                        .map(Pinned.Misfit::placing)
                        .map(placing -> placing.piece().place())
                        .collect(Collectors.toSet());
        PinnedNames names = new PinnedNames(result.cloths(), pieces);
        Set<Place> letGo = new HashSet<>();
        for (Placed<PlanFile.Entry> entry : entries) {
            Placing placing = entry.value().placing();
            boolean isNothing = names.whyNothing(placing.namedBy(pieces.keySet())).isPresent();
            boolean isMisfit = misfits.contains(placing.piece().place());
            if (!entry.value().isCut() && (isMisfit || isNothing)) {
                letGo.add(entry.place());
            }
        }
        return letGo;
    }
}
