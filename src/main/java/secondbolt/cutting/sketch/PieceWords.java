package secondbolt.cutting.sketch;

import java.util.ArrayList;
import java.util.List;
import secondbolt.cutting.line.CutPiece;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.DartShape;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Writes the words beside the signs, the lines and the edges of a piece, each where it has room.
 *
 * @param piece the piece
 * @param style how large
 * @param sketch where they are written
 * @param room what is taken
 */
record PieceWords(CutPiece piece, SketchStyle style, Sketch sketch, LabelRoom room) {
    private static final List<Double> ALONG =
            List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78, 0.14, 0.86);
    private static final List<Double> OFF = List.of(0.9, 1.4, 2.0, 3.0);

    void grain(Chords.Chord chord) {
        double turn = upright(chord.from(), chord.to());
        List<List<Mark.Label>> candidates = new ArrayList<>();
        for (double share : List.of(0.5, 0.25, 0.75)) {
            for (double aside : List.of(-1.0, 1.0)) {
                candidates.add(List.of(aside("grain", chord.at(share), turn, aside)));
            }
        }
        room.writeFirst(sketch, candidates);
    }

    /** A label along a line, so far above it or below. */
    private Mark.Label aside(String text, Point at, double turn, double side) {
        double radians = Math.toRadians(turn);
        double size = style.wordsMm();
        double offMm = side < 0 ? size * 0.8 : -size * 1.4;
        return new Mark.Label(
                text,
                at.moved(Math.sin(radians) * offMm, -Math.cos(radians) * offMm),
                Lettering.plain(size).turned(turn),
                Align.MIDDLE);
    }

    private static double upright(Point from, Point to) {
        double turn = Math.toDegrees(Math.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm()));
        if (turn > 90 - 1e-6) {
            return turn - 180;
        }
        return turn < -90 - 1e-6 ? turn + 180 : turn;
    }

    void fold(int number) {
        double offMm = -(2.5 * style.signMm() + style.wordsMm() * 0.9);
        List<String> texts =
                style.isPicture() ? List.of("fold") : List.of("place on the fold", "fold");
        List<List<Mark.Label>> candidates = new ArrayList<>();
        for (String text : texts) {
            for (double share : ALONG) {
                candidates.add(List.of(along(text, number, share, offMm)));
            }
        }
        room.writeFirst(sketch, candidates);
    }

    /** A label along an edge, its middle line so far outside it. */
    private Mark.Label along(String text, int number, double share, double offMm) {
        EdgeLine edge = piece.edge(number);
        double alongMm = edge.lengthMm() * share;
        Point direction = edge.directionAt(alongMm);
        double turn = upright(Point.ORIGIN, direction);
        double radians = Math.toRadians(turn);
        double downMm = style.wordsMm() * 0.3;
        Point at = piece.beside(number, alongMm, offMm);
        return new Mark.Label(
                text,
                at.moved(-Math.sin(radians) * downMm, Math.cos(radians) * downMm),
                Lettering.plain(style.wordsMm()).turned(turn),
                Align.MIDDLE);
    }

    /** Along each edge: inside its sewing line full size, outside its cutting line in a picture. */
    void ofEdges() {
        for (int i = 0; i < piece.edges().size(); i++) {
            String name = piece.edges().get(i).edge();
            if (piece.piece().fold().filter(name::equals).isPresent() && !style.isPicture()) {
                continue;
            }
            int number = i;
            room.writeFirst(
                    sketch,
                    () ->
                            ALONG.stream()
                                    .flatMap(
                                            share ->
                                                    OFF.stream()
                                                            .map(off -> offMm(number, off))
                                                            .map(
                                                                    off ->
                                                                            along(
                                                                                    name, number,
                                                                                    share, off))
                                                            .map(List::of)));
        }
    }

    private double offMm(int number, double more) {
        double gapMm = style.wordsMm() * more;
        if (style.isPicture()) {
            return gapMm + (piece.isIncluded() ? 0 : piece.widthMm(number));
        }
        return -gapMm - (piece.isIncluded() ? piece.widthMm(number) : 0);
    }

    void ofMarks() {
        for (Piece.MarkPoint mark : piece.piece().features().marks()) {
            room.writeFirst(sketch, round(mark.what(), mark.at(), style.signMm() * 1.1));
        }
    }

    private List<List<Mark.Label>> round(String text, Point at, double offMm) {
        Lettering lettering = Lettering.plain(style.wordsMm());
        double third = style.wordsMm() * 0.35;
        List<List<Mark.Label>> labels = new ArrayList<>();
        for (double far : List.of(1.0, 1.6, 2.4, 3.2, 4.2)) {
            double off = offMm * far;
            labels.add(List.of(new Mark.Label(text, at.moved(off, third), lettering, Align.START)));
            labels.add(List.of(new Mark.Label(text, at.moved(-off, third), lettering, Align.END)));
            labels.add(
                    List.of(
                            new Mark.Label(
                                    text, at.moved(0, off + 2 * third), lettering, Align.MIDDLE)));
            labels.add(List.of(new Mark.Label(text, at.moved(0, -off), lettering, Align.MIDDLE)));
            double slant = off * 0.75;
            for (double up : List.of(-slant, slant + 2 * third)) {
                labels.add(
                        List.of(new Mark.Label(text, at.moved(slant, up), lettering, Align.START)));
                labels.add(
                        List.of(new Mark.Label(text, at.moved(-slant, up), lettering, Align.END)));
            }
        }
        return labels;
    }

    void ofLines() {
        piece.piece().lines().forEach(this::ofLine);
    }

    private void ofLine(String name, Length at) {
        double yMm = piece.shape().box().topMm() + at.millimetres();
        List<Chords.Chord> chords = new Chords(piece.cut(), 2).level(yMm);
        List<String> texts =
                style.isPicture()
                        ? List.of(name)
                        : List.of("lengthen or shorten here: " + name, name);
        List<List<Mark.Label>> candidates = new ArrayList<>();
        for (String text : texts) {
            for (Chords.Chord chord : chords) {
                for (double share : ALONG) {
                    candidates.add(List.of(aside(text, chord.at(share), 0, -1)));
                    candidates.add(List.of(aside(text, chord.at(share), 0, 1)));
                }
            }
        }
        room.writeFirst(sketch, candidates);
    }

    void ofDarts() {
        for (Piece.Dart dart : piece.piece().features().darts()) {
            DartShape shape = DartShape.of(piece.shape(), dart);
            room.writeFirst(sketch, round("dart", shape.point(), style.signMm() * 0.7));
        }
        for (Piece.Dart pleat : piece.piece().features().pleats()) {
            int number = piece.number(pleat.edge());
            Point at = piece.beside(number, pleat.at().millimetres(), -13 * style.signMm());
            room.writeFirst(sketch, round("pleat", at, style.signMm() * 0.5));
        }
    }

    /** Numbers each point as the maker wrote them, the start being 1. */
    void pointNumbers() {
        List<Point> points =
                piece.shape().edges().stream()
                        .flatMap(edge -> withoutLast(edge.line().knots()).stream())
                        .toList();
        for (int i = 0; i < points.size(); i++) {
            Point at = points.get(i);
            sketch.line(Path.circle(at, 0.6), Pen.PLAIN);
            room.take(at, at, 0.6);
        }
        for (int i = 0; i < points.size(); i++) {
            room.writeFirst(sketch, round(Integer.toString(i + 1), points.get(i), 1.1));
        }
    }

    private static List<Point> withoutLast(List<Point> points) {
        return points.subList(0, points.size() - 1);
    }
}
