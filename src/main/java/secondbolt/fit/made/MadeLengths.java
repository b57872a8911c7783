package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * How long the garment is: from the shoulder, from the waist, along the leg, down the sleeve. Of
 * drawn pieces of the outside only.
 *
 * @param result the pattern, altered
 */
record MadeLengths(FitResult result) {
    private static final List<Serves> ENDS = List.of(Serves.HEM, Serves.WRIST, Serves.WAIST);

    List<Made> all() {
        List<Made> all = new ArrayList<>();
        for (Piece piece : result.pattern().pieces()) {
            boolean isOutside = piece.cuts().containsKey(Role.MAIN);
            if (isOutside && piece.shape().asDrawn().isPresent()) {
                all.addAll(of(new SewnPiece(piece, result.pattern())));
            }
        }
        return all;
    }

    private List<Made> of(SewnPiece piece) {
        Optional<String> shoulder = piece.edge(Serves.SHOULDER);
        Optional<String> cap = piece.edge(Serves.CAP);
        if (cap.isPresent() || shoulder.isPresent()) {
            String from = cap.or(() -> shoulder).orElseThrow();
            String words = cap.isPresent() ? "from the top of the cap" : "from the shoulder";
            return end(piece, from).map(end -> down(piece, words, from, end)).stream().toList();
        }
        List<Made> along = new ArrayList<>();
        Optional<String> hem = piece.edge(Serves.HEM);
        Optional<String> waist = piece.edge(Serves.WAIST);
        if (hem.isEmpty()) {
            return along;
        }
        for (String edge : piece.edges().toList()) {
            boolean isInside = piece.serves(edge, Serves.INSEAM);
            boolean isDown = waist.filter(w -> piece.meet(edge, w)).isPresent();
            if (piece.meet(edge, hem.get()) && (isInside || isDown)) {
                along.add(along(piece, isInside ? "from the crotch" : "from the waist", edge));
            }
        }
        return along;
    }

    private static Optional<String> end(SewnPiece piece, String from) {
        return ENDS.stream()
                .flatMap(serves -> piece.edge(serves).stream())
                .filter(edge -> !edge.equals(from))
                .findFirst();
    }

    private Made down(SewnPiece piece, String words, String from, String end) {
        return made(
                piece.piece().name() + ", " + words + " straight down to the " + word(piece, end),
                piece,
                p -> p.downMm(from, end));
    }

    private static String word(SewnPiece piece, String end) {
        return ENDS.stream()
                .filter(serves -> piece.serves(end, serves))
                .map(Serves::word)
                .findFirst()
                .orElse(end);
    }

    private Made along(SewnPiece piece, String words, String edge) {
        PieceEdge named = new PieceEdge(piece.piece().name(), edge);
        return new Made(
                piece.piece().name() + ", " + words + " along its " + edge + " to the hem",
                Optional.empty(),
                result.before().edge(named).orElseThrow(),
                result.after().edge(named).orElseThrow());
    }

    private Made made(String what, SewnPiece drawn, ToDoubleFunction<SewnPiece> mm) {
        Pattern pattern = result.pattern();
        SewnPiece altered = new SewnPiece(result.find(drawn.piece().name()).orElseThrow(), pattern);
        return new Made(
                what,
                Optional.empty(),
                Length.ofComputedMillimetres(mm.applyAsDouble(drawn)),
                Length.ofComputedMillimetres(mm.applyAsDouble(altered)));
    }
}
