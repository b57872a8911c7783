package secondbolt.hem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.shape.cut.TurnedEdge;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** What becomes of a hem at its corners and at its ends. */
final class EndFindings {
    /** Ends that are off by less are sewn without being noticed; common practice, no source. */
    private static final Length NOTICED = Length.ofMillimetres(1);

    /** Less is not seen; common practice, no source. */
    private static final double ASKEW_RADIANS = Math.toRadians(2);

    private final AboutHem about;
    private final HemResult result;

    private EndFindings(AboutHem about) {
        this.about = about;
        this.result = about.result();
    }

    static Stream<Finding> of(AboutHem about) {
        EndFindings all = new EndFindings(about);
        return Stream.of(
                        all.outwardCorners(),
                        all.unmitred(),
                        all.inwardCorners(),
                        all.narrowing(),
                        all.flaring(),
                        all.askew())
                .flatMap(Optional::stream);
    }

    private Optional<Finding> outwardCorners() {
        List<String> where = new ArrayList<>();
        for (HemEdge edge : result.edges()) {
            where.addAll(corners(edge, true));
            where.addAll(meetings(edge, HemEdge.Neighbour.Kind.HEM));
        }
        if (where.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-corner",
                        Level.NOTE,
                        "The hem turns a corner: " + String.join("; ", where) + ".",
                        "Fold a mitre there, from the corner to where the inner edges cross, and"
                                + " trim what lies inside it; the lengths above count to the"
                                + " mitre."));
    }

    private static List<String> meetings(HemEdge edge, HemEdge.Neighbour.Kind kind) {
        return Stream.of(edge.ends().start(), edge.ends().end())
                .filter(next -> next.kind() == kind)
                .map(next -> new PieceEdge(edge.edge().piece(), next.name()))
                .map(other -> edge.edge().words() + ", where it meets " + other.words())
                .toList();
    }

    /** One of both is turned up so deep that a mitre would take all of the other's edge. */
    private Optional<Finding> unmitred() {
        List<String> where =
                result.edges().stream()
                        .flatMap(e -> meetings(e, HemEdge.Neighbour.Kind.HEM_OVER).stream())
                        .toList();
        if (where.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-no-room-for-mitre",
                        Level.CAUTION,
                        "Two hems meet with no room for a mitre, which would leave nothing of the"
                                + " shorter edge: "
                                + String.join("; ", where)
                                + ".",
                        "Turn the shallower hem first, straight to the end of its edge, and fold"
                                + " the deeper one over it; try the corner in scrap, for the cloth"
                                + " lies thick there. Or write a smaller `depth`."));
    }

    private Optional<Finding> inwardCorners() {
        List<String> where =
                result.edges().stream().flatMap(edge -> corners(edge, false).stream()).toList();
        if (where.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-inward-corner",
                        Level.CAUTION,
                        "The hem has an inward corner, where the turned-up cloth does not reach"
                                + " round: "
                                + String.join("; ", where)
                                + ".",
                        "Clip into the corner and set in a piece of cloth, or face it."));
    }

    private List<String> corners(HemEdge edge, boolean pointingOut) {
        return edge.turned().map(TurnedEdge::corners).orElse(List.of()).stream()
                .filter(corner -> corner.turnsRadians() > 0 == pointingOut)
                .map(
                        corner ->
                                edge.edge().words()
                                        + ", "
                                        + about.tape().print(HemEdge.mm(corner.alongMm()))
                                        + " from its start")
                .toList();
    }

    private Optional<Finding> narrowing() {
        List<HemEdge> in = noticed(true);
        if (in.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-takes-in",
                        Level.NOTE,
                        "Sides lean out towards the fold, so the turned-up part is cut mirrored;"
                                + " beside a side that ran straight on it lies farther in at its"
                                + " edge: "
                                + about.each(in, e -> atEnds(e, true))
                                + ".",
                        "Cut on the printed line, and sew each side seam along it, down to the"
                                + " fold and mirrored past it: "
                                + allRound(in, true)
                                + " less all round."));
    }

    private Optional<Finding> flaring() {
        List<HemEdge> out = noticed(false);
        if (out.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-flares",
                        Level.CAUTION,
                        "The piece opens at more than a right angle above the fold, as where it"
                                + " narrows towards it, so the turned-up part is cut mirrored and"
                                + " flares: "
                                + about.each(out, e -> atEnds(e, false))
                                + ".",
                        "Cut and sew the sides mirrored past the fold, as printed; if they run"
                                + " straight on, the turned hem is too tight by "
                                + allRound(out, false)
                                + " all round."));
    }

    /** The edges of which an end takes in, or lets out, by so much that it is noticed. */
    private List<HemEdge> noticed(boolean in) {
        return result.edges().stream()
                .filter(e -> counts(e.takesInAtStart(), in) || counts(e.takesInAtEnd(), in))
                .toList();
    }

    private static boolean counts(Length takes, boolean in) {
        return takes.isNegative() != in && !takes.size().isShorterThan(NOTICED);
    }

    private String atEnds(HemEdge edge, boolean in) {
        List<String> words = new ArrayList<>();
        end(edge.takesInAtStart(), edge.ends().start().name(), in).ifPresent(words::add);
        end(edge.takesInAtEnd(), edge.ends().end().name(), in).ifPresent(words::add);
        return String.join(" and ", words);
    }

    private Optional<String> end(Length takes, String side, boolean in) {
        return counts(takes, in)
                ? Optional.of(about.print(takes.size()) + " at its " + side)
                : Optional.empty();
    }

    private String allRound(List<HemEdge> edges, boolean in) {
        Length all = Length.ZERO;
        for (HemEdge edge : edges) {
            for (Length takes : List.of(edge.takesInAtStart(), edge.takesInAtEnd())) {
                if (takes.isNegative() != in) {
                    all = all.plus(takes.size().times(edge.times()));
                }
            }
        }
        return about.print(all);
    }

    /** Drawn half, a hem that does not meet the fold squarely comes to a point there. */
    private Optional<Finding> askew() {
        List<HemEdge> askew =
                result.edges().stream()
                        .filter(e -> e.turned().isPresent())
                        .filter(this::isAskew)
                        .toList();
        if (askew.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                about.finding(
                        "hem-askew-at-fold",
                        Level.CAUTION,
                        "It does not meet the fold of the cloth squarely, so that the opened piece"
                                + " has a corner there: "
                                + about.names(askew)
                                + ".",
                        "Draw the last of its curve level to the fold, or mean the corner."));
    }

    private boolean isAskew(HemEdge edge) {
        TurnedEdge turned = edge.turned().orElseThrow();
        return isAskew(edge.ends().start(), turned.start())
                || isAskew(edge.ends().end(), turned.end());
    }

    private static boolean isAskew(HemEdge.Neighbour next, TurnedEdge.End end) {
        return next.kind() == HemEdge.Neighbour.Kind.FOLD
                && Math.abs(end.leansRadians()) > ASKEW_RADIANS;
    }
}
