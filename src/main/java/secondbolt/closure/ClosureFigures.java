package secondbolt.closure;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.closure.row.OtherCount;
import secondbolt.figure.Figures;

/** The figures of closures for other programs. */
final class ClosureFigures {
    private ClosureFigures() {}

    /**
     * The figures of all.
     *
     * @param names of all closures; of those not worked out nothing is told
     */
    static Figures of(Collection<String> names, List<ClosureResult> results) {
        Figures figures = new Figures();
        for (String name : names) {
            figures.inside(
                    name,
                    results.stream()
                            .filter(r -> r.name().equals(name))
                            .findFirst()
                            .map(ClosureFigures::of));
        }
        return figures;
    }

    private static Figures of(ClosureResult result) {
        Fastening fastening = result.closure().fastening();
        Figures figures =
                new Figures()
                        .text("kind", fastening.kind().word())
                        .toldLength(
                                "edge_length", result.length(), result.name() + ": the placket");
        result.gap()
                .ifPresentOrElse(
                        gap ->
                                figures.toldLength(
                                        "even_gap", gap, result.name() + ": from button to button"),
                        () -> figures.length("even_gap", Optional.empty()));
        return figures.length("uneven_by", result.row().uneven())
                .length(
                        "hole",
                        fastening.hasHoles() ? Optional.of(result.hole()) : Optional.empty())
                .length("extension", result.closure().overlap().extension())
                .length("rows_apart", result.closure().overlap().rowsApart())
                .text(
                        "holes",
                        Optional.of(fastening)
                                .filter(Fastening::hasHoles)
                                .map(f -> f.holes().word()))
                .text(
                        "laps",
                        Optional.of(result.closure())
                                .filter(Closure::isLapped)
                                .map(c -> c.overlap().laps().word()))
                .count("to_buy", result.toBuy())
                .list("marks", result.marks().stream().map(mark -> of(result, mark)).toList())
                .listLater(
                        "counts",
                        () -> result.advice().counts().stream().map(ClosureFigures::of).toList());
    }

    /** Of the last one a maker is told when it moves: it tells how the others do. */
    private static Figures of(ClosureResult result, FastenerMark mark) {
        Fastening fastening = result.closure().fastening();
        Figures figures = new Figures().count("number", mark.number());
        if (mark.number() == result.marks().size()) {
            String one = fastening.kind().one() + " " + mark.number();
            figures.toldLength(
                    "from_top", mark.fromTop(), result.name() + ": " + one + ", from the top");
        } else {
            figures.length("from_top", mark.fromTop());
        }
        if (fastening.hasHoles()) {
            figures.length("start", mark.start())
                    .length("end", mark.end())
                    .text("hole", mark.holes().word());
        }
        figures.claim("by_hand", mark.byHand());
        return figures.text("why", mark.why());
    }

    private static Figures of(OtherCount other) {
        return new Figures()
                .count("count", other.count())
                .length("gap", other.row().gap())
                .length("uneven_by", other.row().uneven())
                .count("by_hand", other.row().byHand().size())
                .count("unmet", other.row().unmet().size());
    }
}
