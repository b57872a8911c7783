package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.bound.BindingResult.Bends;
import secondbolt.trim.bound.BindingResult.BoundEdge;
import secondbolt.trim.guide.Counted;
import secondbolt.trim.guide.StripWords;
import secondbolt.trim.plan.Binding;
import secondbolt.trim.strip.StripCut;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know before she cuts a strip and the edge it binds. */
final class BindingFindings {
    private static final String BOUGHT = "write `from: bought` under `binding`";

    private final BindingResult result;
    private final boolean isLaid;
    private final Tape tape;

    BindingFindings(BindingResult result, boolean isLaid, Tape tape) {
        this.result = result;
        this.isLaid = isLaid;
        this.tape = tape;
    }

    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        Stream.of(countedLess(), straightOnCurve(), noRemnant(), unsettled(), tooShort())
                .flatMap(Optional::stream)
                .forEach(findings::add);
        result.edges().forEach(edge -> allowance(edge).ifPresent(findings::add));
        return findings;
    }

    private Finding about(String code, Level level, String text, String remedy) {
        return new Finding(code, subject(result), level, text, remedy);
    }

    /** The binding with its edges. */
    static Subject subject(BindingResult result) {
        return new Subject.Edges(
                "binding " + result.name(),
                result.edges().stream().map(BoundEdge::edge).collect(Collectors.toSet()));
    }

    private Optional<Finding> countedLess() {
        return Counted.less(result.edges())
                .map(
                        found ->
                                about(
                                        "binding-counted-less",
                                        Level.CAUTION,
                                        found,
                                        "If all of them are bound, write `on: ["
                                                + Counted.line(result.edges())
                                                + "]` under `binding`; the strip is too short otherwise."));
    }

    private Optional<Finding> straightOnCurve() {
        List<BoundEdge> curved =
                result.binding().cut() == Binding.Cut.STRAIGHT
                        ? result.edges().stream().filter(e -> e.bends() == Bends.CURVED).toList()
                        : List.of();
        if (curved.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about(
                        "binding-straight-on-curve",
                        Level.WARNING,
                        "A straight strip does not go round a curve, it puckers or stands off: "
                                + curved.stream()
                                        .map(edge -> edge.edge().words())
                                        .collect(Collectors.joining(", "))
                                + ".",
                        "Write `cut: bias` under `binding`."));
    }

    private Optional<Finding> noRemnant() {
        boolean isWanted = result.binding().from() == Binding.From.REMNANT;
        if (!isWanted || !isLaid || result.remnant().isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                about(
                        "binding-no-remnant",
                        Level.WARNING,
                        "The strip for "
                                + result.name()
                                + " is to be cut from what the lay leaves, and nothing is left in"
                                + " one piece.",
                        "Cut it of another cloth, or " + BOUGHT + "."));
    }

    private Optional<Finding> unsettled() {
        boolean isUnsettled = result.remnant().filter(left -> !left.isSettled()).isPresent();
        if (!isUnsettled) {
            return Optional.empty();
        }
        return Optional.of(
                about(
                        "binding-not-left-yet",
                        Level.WARNING,
                        "Not every piece has found its place, so what the strip for "
                                + result.name()
                                + " is cut from may yet be needed for them.",
                        "Cut no strip before the lay is settled, or " + BOUGHT + "."));
    }

    private Optional<Finding> tooShort() {
        return result.cut().flatMap(cut -> cut.lack().map(lack -> tooShort(cut, lack)));
    }

    private Finding tooShort(StripCut cut, Length lack) {
        String have =
                cut.strips().isEmpty()
                        ? "no strip of this width fits"
                        : Plural.of(cut.strips().size(), "strip")
                                + " with "
                                + Plural.of(cut.joins(), "join")
                                + " make "
                                + tape.print(StripWords.down(cut.joined(), tape));
        return about(
                "binding-too-short",
                Level.WARNING,
                "The strip for "
                        + result.name()
                        + " must be "
                        + tape.print(StripWords.up(result.need(), tape))
                        + " long; of what the lay leaves, "
                        + have
                        + ", "
                        + tape.print(StripWords.up(lack, tape))
                        + " too short.",
                "Make it narrower, add strips of another cloth, or " + BOUGHT + ".");
    }

    private Optional<Finding> allowance(BoundEdge edge) {
        if (!result.binding().closesOverTheEdge() || !edge.allowance().isPositive()) {
            return Optional.empty();
        }
        return Optional.of(
                new Finding(
                        "binding-edge-has-allowance",
                        new Subject.Edge(edge.edge()),
                        Level.CAUTION,
                        "A bound edge is cut on its sewing line, and "
                                + edge.edge().words()
                                + " has a seam allowance of "
                                + tape.print(edge.allowance())
                                + ": bound as it is, the garment grows by that much there.",
                        "Write `allowance: {"
                                + edge.edge().edge()
                                + ": none}` with the piece, or trim it to the sewing line before"
                                + " you bind it."));
    }
}
