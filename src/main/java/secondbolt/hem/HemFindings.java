package secondbolt.hem;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Tape;
import secondbolt.textile.Cloth;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know of a hem before she cuts its allowance. */
final class HemFindings {
    private final AboutHem about;
    private final HemResult result;

    private HemFindings(AboutHem about) {
        this.about = about;
        this.result = about.result();
    }

    /**
     * All findings about a hem.
     *
     * @param cloths by name, whatever their role
     */
    static List<Finding> of(HemResult result, Map<String, Cloth> cloths, Tape tape) {
        AboutHem about = new AboutHem(result, tape);
        HemFindings all = new HemFindings(about);
        Stream<Finding> turned =
                result.hem().turned() == Hem.Turned.FACED
                        ? Stream.empty()
                        : Stream.of(
                                        FullnessFindings.of(about),
                                        EndFindings.of(about),
                                        all.included().stream(),
                                        HemClothFindings.of(about, cloths))
                                .flatMap(some -> some);
        return Stream.of(
                        all.taken().stream(),
                        all.open(),
                        all.noRoom().stream(),
                        turned,
                        all.hang().stream())
                .flatMap(some -> some)
                .toList();
    }

    /** Edges known by tape of which it is not known whether the alterations changed them. */
    private Stream<Finding> open() {
        return result.edges().stream()
                .filter(edge -> edge.piece().shape().isOpen(edge.edge().edge()))
                .map(
                        edge ->
                                about.finding(
                                        "hem-fold-open",
                                        Level.WARNING,
                                        "Whether the alterations change "
                                                + edge.edge().words()
                                                + " is not known: its fold is told as it was"
                                                + " taped.",
                                        "Write which edges the moved lines of "
                                                + edge.edge().piece()
                                                + " cross; what to write stands with the fit."));
    }

    /** What she does not know, and what is cut by meanwhile. */
    private Optional<Finding> taken() {
        return result.hem()
                .takenMeanwhile()
                .map(
                        taken ->
                                new Finding(
                                        "hem-taken-meanwhile",
                                        new Subject.Edges(result.name(), edges(result.edges())),
                                        Level.WARNING,
                                        "Not known yet, and only taken meanwhile: " + taken + ".",
                                        "Decide it before you cut: a hem that was cut too deep can"
                                                + " be cut back, a shallow one cannot be"
                                                + " deepened."));
    }

    /** Only the pieces of such edges may not be cut. */
    private Optional<Finding> noRoom() {
        List<HemEdge> none =
                result.edges().stream()
                        .filter(e -> e.turned().filter(t -> t.landingMm() <= 0).isPresent())
                        .toList();
        if (none.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Finding(
                        "hem-no-room",
                        new Subject.Edges(result.name(), edges(none)),
                        Level.STOP,
                        "At its depth from the fold nothing is left of the piece to sew it to: "
                                + about.names(none)
                                + ".",
                        "Write a smaller `depth`; a facing of this depth has no room either."));
    }

    private static Set<PieceEdge> edges(List<HemEdge> edges) {
        return edges.stream().map(HemEdge::edge).collect(Collectors.toUnmodifiableSet());
    }

    private Optional<Finding> included() {
        if (result.edges().stream().noneMatch(HemEdge::isIncluded)) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-allowance-included",
                        Level.CAUTION,
                        "The outlines include the allowances, so the fold is taken to lie "
                                + about.print(result.turnedUp())
                                + " inside them, and the ends of the hem to be cut as they are"
                                + " drawn.",
                        "Measure on the pattern that so much is left below its hem line, and fold"
                                + " the paper there: its sides must lie on themselves."));
    }

    private Optional<Finding> hang() {
        if (!result.hang().first()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-hangs-first",
                        Level.NOTE,
                        "Let it hang "
                                + result.hang().words()
                                + ", before the hem is marked: cloth on the bias drops.",
                        result.level().isPresent()
                                ? "Then level it with the printed strip."
                                : "Then mark it level from the floor; `from floor` prints a strip"
                                        + " to do it with."));
    }
}
