package secondbolt.hem;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.hem.guide.HemWords;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemCalculation;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.shape.cut.TurnedEdge;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/**
 * Whether a turned edge is longer or shorter than the line it lands on, and what to do about it.
 */
final class FullnessFindings {
    private static final String FACED =
            "Baldt, Clothing for Women, 1916: a facing for very wide circular skirts";
    private static final String ROLLED =
            "4-H bulletin L-87: a narrow or rolled hem for a full circle";

    /** Three quarters of a circle and more count as full; common practice, no source. */
    private static final double FULL_RADIANS = 1.5 * Math.PI - 1e-6;

    /** A hem that were less deep is no choice. */
    private static final Length LEAST_DEPTH = Length.ofMillimetres(2);

    /** How far apart the clips of a hollow edge are at most. */
    private static final Convention CLIP_EVERY =
            Convention.common(Length.ofInches(1, 1), Length.ofMillimetres(25));

    /** How near to the fold a clip ends. */
    private static final Convention CLIP_TO_WITHIN =
            Convention.common(Length.ofInches(1, 8), Length.ofMillimetres(3));

    private final AboutHem about;
    private final HemResult result;

    private FullnessFindings(AboutHem about) {
        this.about = about;
        this.result = about.result();
    }

    static Stream<Finding> of(AboutHem about) {
        FullnessFindings all = new FullnessFindings(about);
        return Stream.of(all.tooFull(), all.tooShort(), all.ease(), all.tooTight())
                .flatMap(Optional::stream);
    }

    private Optional<Finding> tooFull() {
        List<HemEdge> edges =
                result.handled(HemEdge.Handling.TOO_FULL).stream()
                        .filter(e -> e.fullness().isPresent())
                        .toList();
        if (edges.isEmpty()) {
            return Optional.empty();
        }
        Finding found =
                about.finding(
                        "hem-too-full",
                        Level.WARNING,
                        "The turned edge is far longer than the line it lands on: "
                                + about.each(edges, about::surplus)
                                + ". More than about 5 % will not shrink flat in firm cotton ("
                                + Convention.COMMON_PRACTICE
                                + ").",
                        eased(edges)
                                + ". Or keep the depth with `turned: faced`, a facing cut to the"
                                + " shape of the edge, as for very wide circular skirts."
                                + circle()
                                + gentler(edges));
        return Optional.of(found.citing(isCircle() ? List.of(FACED, ROLLED) : List.of(FACED)));
    }

    private String eased(List<HemEdge> edges) {
        Length shrinks = deepest(edges, HemCalculation.SHRINKS_IN);
        return "Up to "
                + about.print(shrinks)
                + " deep it can be eased in"
                + flat(edges)
                + (shrinks.isShorterThan(LEAST_DEPTH) ? "" : ": write such a `depth`" + narrow());
    }

    private String narrow() {
        return result.hem().turned() == Hem.Turned.NARROW ? "" : ", or a `narrow` hem";
    }

    private String flat(List<HemEdge> edges) {
        Length flat = deepest(edges, HemCalculation.PRESSES_FLAT);
        return flat.isShorterThan(LEAST_DEPTH)
                ? ""
                : ", up to " + about.print(flat) + " it lies flat by itself";
    }

    private String circle() {
        return isCircle() ? " A full circle takes " + about.rawEdge() + ", or a rolled hem." : "";
    }

    private boolean isCircle() {
        return result.turnsAllRound() >= FULL_RADIANS;
    }

    /** What the design itself would have to be for this depth. */
    private String gentler(List<HemEdge> edges) {
        boolean arc = edges.stream().allMatch(e -> e.turned().get().radiusMm().isPresent());
        double factor = (2 + HemCalculation.SHRINKS_IN) / HemCalculation.SHRINKS_IN;
        double needed = result.hem().depth().orElseThrow().millimetres() * factor;
        return arc
                ? " This depth itself would want a fold that curves with a radius of "
                        + about.tape().print(HemEdge.mm(needed))
                        + " or more."
                : "";
    }

    /**
     * The depth at which the fullness comes to a share, rounded down.
     *
     * <p>Derived: a fold of length F whose turned edge grows by k for each depth, and whose line is
     * shorter by as much, has the surplus 2dk over a line of F − dk; that is the share r of it at d
     * = rF / (k(2 + r)). k is how far the fold turns, and what mirrored ends let out.
     */
    private Length deepest(List<HemEdge> edges, double share) {
        double depthMm = result.hem().depth().orElseThrow().millimetres();
        double least =
                edges.stream()
                        .map(e -> e.turned().orElseThrow())
                        .mapToDouble(
                                t -> {
                                    double grows = t.surplusMm() / (2 * depthMm);
                                    return share * t.foldMm() / (grows * (2 + share));
                                })
                        .min()
                        .orElseThrow();
        return HemEdge.mm(Math.max(0, least)).roundedDownTo(about.tape().mark());
    }

    private Optional<Finding> tooShort() {
        List<HemEdge> edges = result.handled(HemEdge.Handling.SHORT);
        if (edges.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-hollow",
                        Level.CAUTION,
                        "The "
                                + (edges.stream().anyMatch(FullnessFindings::isHollow)
                                        ? "edge is hollow"
                                        : "piece narrows towards the fold, and its sides run"
                                                + " straight on past it")
                                + ", so the turned edge is shorter than the line it lands on: "
                                + about.each(edges, about::surplus)
                                + ".",
                        "Clip the turned-up cloth every "
                                + about.tape().print(CLIP_EVERY.on(about.tape()))
                                + " or closer, to within "
                                + about.tape().printSmall(CLIP_TO_WITHIN.on(about.tape()))
                                + " of the fold, so that it spreads, or write `turned: faced` and"
                                + " sew on a facing of its shape ("
                                + CLIP_EVERY.source()
                                + ")."));
    }

    private static boolean isHollow(HemEdge edge) {
        return edge.turned().filter(turned -> turned.turnsRadians() < 0).isPresent();
    }

    private Optional<Finding> ease() {
        List<HemEdge> edges = result.handled(HemEdge.Handling.EASE);
        if (edges.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-eased",
                        Level.NOTE,
                        "The turned edge is longer than the line it lands on: "
                                + about.each(edges, about::surplus)
                                + ".",
                        "Ease-stitch "
                                + about.rawEdge()
                                + " from the raw edge, draw "
                                + (HemWords.isOnePanel(edges)
                                        ? "it up by that much"
                                                + (HemWords.isOnFold(edges) ? " on each half" : "")
                                        : "each panel up by its own surplus")
                                + ", and shrink the fullness away with steam over the pressing"
                                + " card."));
    }

    private Optional<Finding> tooTight() {
        List<HemEdge> tight =
                result.edges().stream()
                        .filter(e -> e.turned().filter(TurnedEdge::isTooTight).isPresent())
                        .toList();
        if (tight.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-too-tight",
                        Level.WARNING,
                        "It bends more sharply than it is deep: " + about.names(tight) + ".",
                        "Write a smaller `depth`, or face it; no pressing card of that shape is"
                                + " printed."));
    }
}
