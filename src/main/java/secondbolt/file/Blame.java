package secondbolt.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Place;
import secondbolt.file.source.Repair;
import secondbolt.file.source.Repairs;
import secondbolt.file.source.SourceFile;

/**
 * Finds the line to blame where one slip makes others look wrong: the line is guilty with whose
 * repair the rest of the file reads with fewer mistakes.
 *
 * <p>A repair is never taken for what she wrote: it is tried, told, and forgotten. How many are
 * tried is bounded, by their number and by the letters read for them, so that a file takes time in
 * proportion to its size.
 *
 * @param source the file as written
 * @param reader reads a file and tells what is wrong with it
 */
record Blame(SourceFile source, Function<SourceFile, Result> reader) {
    private static final int MOST_TRIALS = 60;
    private static final int MOST_LETTERS = 2_000_000;
    private static final int MOST_REPAIRS = 5;

    /**
     * What a reading told.
     *
     * @param mistakes in the order of the file
     * @param slips of syntax that were passed over
     */
    record Result(List<Mistake> mistakes, int slips) {
        /** Whether one place is blamed, and all was read. */
        boolean isOne() {
            return slips == 0 && mistakes.size() == 1;
        }

        boolean isBetterThan(Result other) {
            return mistakes.size() < other.mistakes.size() && slips <= other.slips;
        }
    }

    /** The mistakes to tell, for those of the file as written. */
    List<Mistake> of(Result asWritten) {
        int trials = Math.min(MOST_TRIALS, MOST_LETTERS / Math.max(1, source.text().length()));
        Result now = asWritten;
        SourceFile file = source;
        List<Repair> made = new ArrayList<>();
        Mistakes told = new Mistakes();
        while (made.size() < MOST_REPAIRS && trials > 0 && !now.mistakes().isEmpty()) {
            List<Repair> near = Repairs.near(file, now.mistakes(), now.isOne());
            List<Repair> tries = near.subList(0, Math.min(trials, near.size()));
            trials -= tries.size();
            Optional<Tried> tried = best(tries, file, now);
            if (tried.isEmpty()) {
                break;
            }
            tried.get().guilt(now, file).forEach(m -> told.add(written(m, made)));
            made.add(tried.get().repair());
            file = tried.get().repair().in(file);
            now = tried.get().result();
        }
        now.mistakes().forEach(m -> told.add(written(m, made)));
        return told.inOrder();
    }

    /** A mistake of the repaired file as one of the file that she wrote. */
    private Mistake written(Mistake mistake, List<Repair> made) {
        Place place = mistake.place();
        if (made.isEmpty() || !place.file().equals(source.name())) {
            return mistake;
        }
        for (int i = made.size() - 1; i >= 0; i--) {
            place = made.get(i).before(place);
        }
        return source.mistake(place, mistake.found(), mistake.right());
    }

    /** A repair and what the file reads as with it. */
    private record Tried(Repair repair, Result result) {
        /**
         * Whether all that is told now was told before: what only hides mistakes in something that
         * is not read any more is no repair.
         */
        boolean bringsNothingNew(Result before) {
            Set<String> told =
                    before.mistakes().stream()
                            .map(m -> m.place().file() + m.place().line() + m.found())
                            .collect(Collectors.toSet());
            return result.mistakes().stream()
                    .allMatch(
                            m -> {
                                Place place = repair.before(m.place());
                                return told.contains(place.file() + place.line() + m.found());
                            });
        }

        /**
         * What is told of the repaired line: what was told of it before, if nothing else was and no
         * slip of syntax lay behind it.
         */
        List<Mistake> guilt(Result before, SourceFile source) {
            List<Mistake> there =
                    before.mistakes().stream()
                            .filter(m -> m.place().line() == repair.line())
                            .toList();
            boolean isKnown =
                    there.size() == before.mistakes().size() && before.slips() == result.slips();
            return isKnown ? there : List.of(repair.mistake(source));
        }
    }

    private Optional<Tried> best(List<Repair> repairs, SourceFile file, Result asIs) {
        Optional<Tried> best = Optional.empty();
        for (Repair repair : repairs) {
            Tried tried = new Tried(repair, reader.apply(repair.in(file)));
            if (tried.result().isBetterThan(best.map(Tried::result).orElse(asIs))
                    && tried.bringsNothingNew(asIs)) {
                best = Optional.of(tried);
            }
            if (best.isPresent() && best.get().result().mistakes().isEmpty()) {
                break;
            }
        }
        return best;
    }
}
