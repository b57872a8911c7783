package secondbolt.fit.made;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.garment.Serves;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.FinishedMeasure;
import secondbolt.wearer.GarmentLength;

/**
 * How long the garment is: from the shoulder, down the back, from the waist, along the leg, down
 * the sleeve, over all pieces of the outside that are sewn one below the other. Common practice, no
 * source, where each is taken.
 */
final class MadeLengths {
    private final FitResult result;
    private final SewnBelow joins;
    private final List<Made> all = new ArrayList<>();

    MadeLengths(FitResult result) {
        this.result = result;
        this.joins = new SewnBelow(result.pattern(), result.before());
    }

    List<Made> all() {
        for (Piece piece : pattern().pieces()) {
            boolean isOutside = piece.cuts().containsKey(Role.MAIN);
            if (isOutside && piece.shape().asDrawn().isPresent()) {
                add(new SewnPiece(piece, pattern()));
            }
        }
        return List.copyOf(all);
    }

    private Pattern pattern() {
        return result.pattern();
    }

    private void add(SewnPiece piece) {
        Optional<String> shoulder = piece.edge(Serves.SHOULDER);
        Optional<String> cap = piece.edge(Serves.CAP);
        if (cap.isPresent()) {
            LowerEdge.of(piece, cap.get())
                    .ifPresent(
                            end ->
                                    told(
                                            down(piece, cap.get(), end),
                                            "from the top of the cap straight down",
                                            List.of(
                                                    BodyMeasure.ARM_LENGTH,
                                                    GarmentLength.SLEEVE_LENGTH)));
        } else if (shoulder.isPresent()) {
            LowerEdge.of(piece, shoulder.get())
                    .ifPresent(end -> fromTheShoulder(piece, shoulder.get(), end));
            downTheBack(piece);
        } else {
            fromTheWaist(piece);
        }
    }

    private static Way down(SewnPiece piece, String from, String end) {
        return new Way(List.of(new Way.Step(Way.Kind.DOWN, piece.piece().name(), from, end)));
    }

    private void fromTheShoulder(SewnPiece piece, String shoulder, String end) {
        Way way = down(piece, shoulder, end);
        boolean isToTheWaist = piece.serves(end, Serves.WAIST);
        List<FinishedMeasure> measures =
                isToTheWaist && piece.edge(Serves.CENTRE_FRONT).isPresent()
                        ? List.of(BodyMeasure.FRONT_WAIST_LENGTH)
                        : List.of();
        toldWithWaist(way, isToTheWaist, "from the shoulder straight down", measures, List.of());
    }

    /** Down the centre of a back that begins at its neckline. */
    private void downTheBack(SewnPiece piece) {
        Optional<String> centre = piece.edge(Serves.CENTRE_BACK);
        Optional<String> neck = piece.edge(Serves.NECKLINE);
        if (centre.isEmpty() || neck.isEmpty() || !piece.meet(centre.get(), neck.get())) {
            return;
        }
        List<String> side = piece.side(centre.get(), neck.get());
        piece.edges()
                .filter(e -> !side.contains(e) && !e.equals(neck.get()))
                .filter(e -> !side.isEmpty() && piece.meet(side.get(side.size() - 1), e))
                .findFirst()
                .ifPresent(
                        end ->
                                toldWithWaist(
                                        along(piece, side, end),
                                        piece.serves(end, Serves.WAIST),
                                        "from the neck along its " + words(side),
                                        List.of(BodyMeasure.BACK_WAIST_LENGTH),
                                        List.of(GarmentLength.BACK_LENGTH)));
    }

    private static Way along(SewnPiece piece, List<String> side, String end) {
        return new Way(
                side.stream()
                        .map(e -> new Way.Step(Way.Kind.ALONG, piece.piece().name(), e, end))
                        .toList());
    }

    private void toldWithWaist(
            Way way,
            boolean isToTheWaist,
            String words,
            List<FinishedMeasure> toTheWaist,
            List<FinishedMeasure> whole) {
        boolean goesOn = joins.followed(way).steps().size() > way.steps().size();
        if (isToTheWaist) {
            one(way, words, toTheWaist);
        }
        if (!isToTheWaist || goesOn) {
            told(way, words, whole);
        }
    }

    private void fromTheWaist(SewnPiece piece) {
        Optional<String> waist = piece.edge(Serves.WAIST);
        Optional<String> top = waist.or(new CalledWaist(piece.piece(), pattern())::topOfARing);
        Optional<String> hem =
                top.or(() -> piece.edge(Serves.CROTCH)).flatMap(w -> LowerEdge.of(piece, w));
        if (hem.isEmpty()) {
            return;
        }
        for (String edge : piece.edges().filter(e -> !hem.get().equals(e)).toList()) {
            if (piece.serves(edge, Serves.INSEAM) && piece.meet(edge, hem.get())) {
                List<String> up = new ArrayList<>(piece.side(edge, hem.get()));
                up.removeIf(e -> !piece.serves(e, Serves.INSEAM));
                Collections.reverse(up);
                told(
                        along(piece, up, hem.get()),
                        "from the crotch along its " + words(up),
                        List.of(BodyMeasure.INSIDE_LEG));
            } else if (top.filter(t -> piece.meet(edge, t)).isPresent()) {
                fromTheTop(piece, edge, top.get(), hem.get());
            }
        }
    }

    private void fromTheTop(SewnPiece piece, String edge, String top, String hem) {
        List<String> side = piece.meet(edge, hem) ? List.of(edge) : piece.side(edge, top);
        if (side.isEmpty() || !piece.meet(side.get(side.size() - 1), hem)) {
            return;
        }
        Way way = along(piece, side, hem);
        if (!piece.serves(top, Serves.WAIST)) {
            String where = piece.serves(top, Serves.NECKLINE) ? "neckline" : "upper edge";
            told(way, "from the " + where + " along its " + words(side), List.of());
            return;
        }
        List<FinishedMeasure> measures = measures(piece, edge, false);
        told(way, "from the waist along its " + words(side), measures);
        withBand(way, top, words(side), measures);
    }

    /** One side may be drawn as several edges. */
    private static String words(List<String> side) {
        return String.join(" and ", side);
    }

    private List<FinishedMeasure> measures(SewnPiece piece, String edge, boolean isInside) {
        if (isInside) {
            return List.of(BodyMeasure.INSIDE_LEG);
        }
        boolean isLeg = Limb.of(piece.piece(), pattern().meanings()).equals(Optional.of(Limb.LEG));
        if (isLeg) {
            return piece.serves(edge, Serves.OUTSEAM) || piece.serves(edge, Serves.SIDE)
                    ? List.of(BodyMeasure.OUTSIDE_LEG)
                    : List.of();
        }
        return List.of(GarmentLength.SKIRT_LENGTH);
    }

    private void withBand(Way way, String waist, String edge, List<FinishedMeasure> measures) {
        Way whole = joins.followed(way);
        PieceEdge top = new PieceEdge(way.last().piece(), waist);
        Optional<Way.Step> band = joins.above(top, whole.pieces());
        if (band.isPresent()) {
            String words = "from the top of the band along its " + edge;
            Way banded = whole.after(band.get());
            one(banded, words, measures);
            if (joins.mayBeFolded(band.get())) {
                String name = band.get().piece();
                made(banded.folded(name), words, folded(name), measures).ifPresent(all::add);
            }
        }
    }

    private static String folded(String piece) {
        return ", if the " + piece + " is folded in two";
    }

    /** With all that is sewn on below. */
    private void told(Way way, String words, List<FinishedMeasure> measures) {
        Way whole = joins.followed(way);
        one(whole, words, measures);
        if (joins.mayBeFolded(whole.last())) {
            String name = whole.last().piece();
            made(whole.folded(name), words, folded(name), measures).ifPresent(all::add);
        }
    }

    private void one(Way way, String words, List<FinishedMeasure> measures) {
        made(way, words, "", measures).ifPresent(all::add);
    }

    private Optional<Made> made(
            Way way, String words, String rest, List<FinishedMeasure> measures) {
        String what =
                way.pieceWords()
                        + ", "
                        + words
                        + " to the "
                        + LowerEdge.words(way.last().end(), pattern())
                        + rest;
        return way.length(name -> pattern().find(name).orElseThrow(), result.before(), pattern())
                .flatMap(
                        before ->
                                way.length(
                                                name -> result.find(name).orElseThrow(),
                                                result.after(),
                                                pattern())
                                        .map(
                                                after ->
                                                        new Made(
                                                                what, measures, before, after,
                                                                List.of())));
    }
}
