package secondbolt.hem.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.Spelling;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.EdgeLine;

/** Finds hems on edges that are not there or that something else claims, and depths too deep. */
public final class HemCheck {
    private final Pattern pattern;
    private final Tape tape;
    private final Set<PieceEdge> hemmed = new HashSet<>();
    private final List<Trouble> troubles = new ArrayList<>();

    private HemCheck(Pattern pattern, Tape tape) {
        this.pattern = pattern;
        this.tape = tape;
    }

    /** All mistakes; none if the hems suit the pattern. */
    public static List<Trouble> of(Map<String, Hem> hems, Pattern pattern, Tape tape) {
        HemCheck check = new HemCheck(pattern, tape);
        for (Hem hem : hems.values()) {
            int before = check.troubles.size();
            hem.on().forEach(check::isFree);
            if (check.troubles.size() == before) {
                check.hasRoom(hem);
                check.jumpsFromALining(hem);
            }
        }
        return List.copyOf(check.troubles);
    }

    private void isFree(Placed<PieceEdge> placed) {
        PieceEdge edge = placed.value();
        Optional<Piece> piece = pattern.find(edge.piece());
        if (piece.isEmpty()) {
            List<String> pieces = pattern.pieces().stream().map(Piece::name).toList();
            troubles.add(
                    trouble(
                                    placed,
                                    ", which names no piece of the pattern",
                                    "one of its pieces: " + Spelling.listed(pieces))
                            .ofName(edge.piece(), pieces));
        } else if (!piece.get().hasEdge(edge.edge())) {
            Set<String> edges = piece.get().shape().edgeLengths().keySet();
            troubles.add(
                    trouble(
                                    placed,
                                    ", which is no edge of " + edge.piece(),
                                    "one of its edges: " + Spelling.listed(edges))
                            .ofName(edge.edge(), edges));
        } else if (piece.get().fold().filter(edge.edge()::equals).isPresent()) {
            tell(placed, ", an edge that lies on the fold", "an edge that is turned up");
        } else if (piece.get().allowances().containsKey(edge.edge())) {
            tell(
                    placed,
                    ", an edge that has a seam allowance of its own",
                    "one of both: the hem alone sets the allowance of its edges");
        } else if (!hemmed.add(edge)) {
            tell(placed, ", which another hem lies on", "each edge in one hem");
        }
    }

    /** A hem is turned up onto its piece, so the piece must be longer than the hem is deep. */
    private void hasRoom(Hem hem) {
        if (hem.placedDepth().isEmpty()) {
            return;
        }
        Placed<Length> depth = hem.placedDepth().get();
        PieceEdge edge = hem.edges().get(0);
        for (PieceEdge other : hem.edges()) {
            edge = roomAbove(other).isShorterThan(roomAbove(edge)) ? other : edge;
        }
        Length room = roomAbove(edge);
        if (!depth.value().isShorterThan(room)) {
            troubles.add(
                    new Trouble(
                            depth.place(),
                            "a hem of "
                                    + print(depth.value())
                                    + " on "
                                    + edge
                                    + ", whose piece reaches only "
                                    + print(room)
                                    + " from it",
                            "a depth of less than " + print(room)));
        }
    }

    private Length roomAbove(PieceEdge edge) {
        PieceShape shape = pattern.find(edge.piece()).orElseThrow().shape();
        return shape.accept(
                new PieceShape.Visitor<Length>() {
                    @Override
                    public Length drawn(PieceShape.Drawn drawn) {
                        EdgeLine hem = drawn.find(edge.edge()).orElseThrow();
                        double farthestMm =
                                drawn.edges().stream()
                                        .flatMap(e -> e.line().knots().stream())
                                        .mapToDouble(hem::distanceMm)
                                        .max()
                                        .orElseThrow();
                        return Length.ofComputedMillimetres(farthestMm);
                    }

                    @Override
                    public Length taped(PieceShape.Taped taped) {
                        return taped.across().orLonger(taped.along());
                    }
                });
    }

    private void jumpsFromALining(Hem hem) {
        boolean isLining =
                hem.edges().stream()
                        .allMatch(
                                edge ->
                                        pattern.find(edge.piece())
                                                .orElseThrow()
                                                .cuts()
                                                .containsKey(Role.LINING));
        if (hem.placedJump().isPresent() && !isLining) {
            troubles.add(
                    new Trouble(
                            hem.placedJump().get().place(),
                            "`jump` of a hem that is not on lining alone",
                            "`jump` in a hem of its own, on edges of pieces that are cut of"
                                    + " lining"));
        }
    }

    private String print(Length length) {
        return tape.printBoth(length);
    }

    private void tell(Placed<PieceEdge> placed, String found, String right) {
        troubles.add(trouble(placed, found, right));
    }

    private static Trouble trouble(Placed<PieceEdge> placed, String found, String right) {
        return new Trouble(placed.place(), "`" + placed.value() + "`" + found, right);
    }
}
