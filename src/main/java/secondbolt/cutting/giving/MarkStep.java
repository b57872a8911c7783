package secondbolt.cutting.giving;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import secondbolt.measure.Plural;
import secondbolt.pattern.piece.Piece;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/** Carrying the marks of the paper over to the cloth; common practice, no source. */
final class MarkStep {
    /** How many marks are told by name; the pictures of the pieces show all. */
    private static final int NAMED = 8;

    private MarkStep() {}

    /** The step; nothing if nothing is marked. */
    static Optional<WorkStep> of(List<Piece> pieces) {
        List<String> all = new ArrayList<>();
        count(pieces, f -> f.notches().size(), "notch", "notches").ifPresent(all::add);
        count(pieces, f -> f.darts().size(), "dart", "darts").ifPresent(all::add);
        count(pieces, f -> f.pleats().size(), "pleat", "pleats").ifPresent(all::add);
        names(pieces).ifPresent(all::add);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                WorkStep.of(
                                "mark",
                                Stage.CUTTING,
                                "Before the paper comes off, mark on every copy, as drawn on its"
                                        + " piece: "
                                        + String.join("; ", all)
                                        + ". On the wrong side, and tried on a scrap first: chalk and"
                                        + " pens may stay. Notches outward or as a thread; no cut"
                                        + " deeper than half the seam allowance.")
                        .after("cut", "Marks go through the paper onto the piece that is cut.")
                        .minding(Hazard.NEEDLE));
    }

    private static Optional<String> count(
            List<Piece> pieces, ToIntFunction<Piece.Features> of, String one, String many) {
        int count = pieces.stream().map(Piece::features).mapToInt(of).sum();
        return count == 0 ? Optional.empty() : Optional.of(Plural.of(count, one, many));
    }

    private static Optional<String> names(List<Piece> pieces) {
        Set<String> names = new LinkedHashSet<>();
        pieces.forEach(
                piece ->
                        piece.features()
                                .marks()
                                .forEach(m -> names.add(piece.name() + ", " + m.what())));
        if (names.isEmpty()) {
            return Optional.empty();
        }
        List<String> all = List.copyOf(names);
        return Optional.of(
                all.size() <= NAMED
                        ? String.join("; ", all)
                        : String.join("; ", all.subList(0, NAMED))
                                + "; and "
                                + (all.size() - NAMED)
                                + " more");
    }
}
