package secondbolt.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.draw.Drawing;
import secondbolt.draw.Pen;
import secondbolt.draw.Shade;
import secondbolt.draw.Sketch;
import secondbolt.fit.DartShape;
import secondbolt.fit.NamedEdge;
import secondbolt.fit.Piece;
import secondbolt.fit.PieceShape;
import secondbolt.measure.Length;
import secondbolt.shape.Allowance;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** Draws one piece with all that is marked on it, full size or as a picture. */
final class PieceSketch {
    private static final double FRAME_MM = 3;

    /** Room in a picture for what stands outside the piece. */
    private static final double PICTURE_FRAME_MM = 12;

    /** All pictures are so wide, so that their letters come out alike. */
    private static final double PICTURE_ACROSS_MM = 150;

    private static final double SEWN_STEP_MM = 1;

    private static final Pen FINE = Pen.FINE;

    private final CutPiece piece;
    private final List<String> words;
    private final SketchStyle style;
    private final Sketch sketch = new Sketch();
    private final LabelRoom room;
    private final PieceWords labels;

    private PieceSketch(CutPiece piece, List<String> words, SketchStyle style) {
        this.piece = piece;
        this.words = List.copyOf(words);
        this.style = style;
        this.room = new LabelRoom(style.isPicture() ? Optional.empty() : Optional.of(piece.cut()));
        this.labels = new PieceWords(piece, style, sketch, room);
    }

    /**
     * The drawing of a piece.
     *
     * @param words what stands under its name
     */
    static Drawing of(CutPiece piece, List<String> words, SketchStyle style) {
        return new PieceSketch(piece, words, style).drawing();
    }

    /** What the drawing of a piece takes up. */
    static Box frame(CutPiece piece, SketchStyle style) {
        Box box = piece.cut().box();
        box = piece.before().map(PieceShape.Drawn::box).map(box::with).orElse(box);
        return style.isPicture() ? pictureFrame(box) : box.grown(FRAME_MM);
    }

    private static Box pictureFrame(Box box) {
        return new Box(
                box.middle().xMm() - PICTURE_ACROSS_MM / 2,
                box.topMm() - PICTURE_FRAME_MM,
                PICTURE_ACROSS_MM,
                box.heightMm() + 2 * PICTURE_FRAME_MM);
    }

    private Drawing drawing() {
        piece.before().ifPresent(this::before);
        SewingLine.of(piece).forEach(path -> sketch.line(path, style.sewn()));
        sketch.line(piece.cut().path(), style.cut());
        piece.piece().fold().ifPresent(this::foldBracket);
        piece.piece().features().notches().forEach(this::notch);
        piece.piece().features().darts().forEach(this::dart);
        piece.piece().features().pleats().forEach(this::pleat);
        piece.piece().features().marks().forEach(this::cross);
        if (style.isPicture()) {
            keepLinesClear();
            labels.pointNumbers();
        } else {
            keepSewingLineClear();
        }
        piece.piece().lines().values().forEach(this::line);
        labels.name(words);
        grain();
        labels.ofMarks();
        labels.ofLines();
        labels.ofDarts();
        labels.ofEdges();
        return sketch.drawing("Piece: " + piece.name(), frame(piece, style));
    }

    private void keepLinesClear() {
        keepClear(piece.cut().corners(), true);
        piece.shape().edges().forEach(edge -> keepClear(edge.line().flattened(0.2), false));
    }

    /** So that neither arrow nor name lies on it. */
    private void keepSewingLineClear() {
        for (int i = 0; i < piece.edges().size(); i++) {
            if (piece.edges().get(i).kind() != Allowance.Kind.FOLD && piece.widthMm(i) > 0) {
                double lengthMm = piece.edge(i).lengthMm();
                for (double alongMm = 0; alongMm <= lengthMm; alongMm += SEWN_STEP_MM) {
                    Point at = piece.onSewingLine(i, alongMm);
                    room.take(at, at, SEWN_STEP_MM / 2);
                }
            }
        }
    }

    private void keepClear(List<Point> points, boolean closed) {
        for (int i = closed ? 0 : 1; i < points.size(); i++) {
            room.take(points.get((i + points.size() - 1) % points.size()), points.get(i), 0.1);
        }
    }

    private void before(PieceShape.Drawn before) {
        before.edges().stream()
                .filter(edge -> !piece.shape().edges().contains(edge))
                .forEach(edge -> sketch.line(edge.line().path(), style.before()));
    }

    /** Stands inside the fold, its arrows pointing at it. */
    private void foldBracket(String edge) {
        int number = piece.number(edge);
        double longMm = piece.edge(number).lengthMm();
        double inMm = -2.5 * style.signMm();
        Point first = piece.beside(number, longMm * 0.12, 0);
        Point second = piece.beside(number, longMm * 0.88, 0);
        Point from = piece.beside(number, longMm * 0.12, inMm);
        Point to = piece.beside(number, longMm * 0.88, inMm);
        sketch.line(from, to, Pen.PLAIN);
        arrow(from, first);
        arrow(to, second);
        room.take(from, to, 0.3);
        room.take(from, first, style.signMm() / 3);
        room.take(to, second, style.signMm() / 3);
        labels.fold(number);
    }

    private void arrow(Point from, Point to) {
        sketch.line(from, to, Pen.PLAIN);
        double longMm = from.distanceMm(to);
        double x = (to.xMm() - from.xMm()) / longMm;
        double y = (to.yMm() - from.yMm()) / longMm;
        double headMm = Math.min(style.signMm(), longMm / 2);
        Point neck = to.moved(-x * headMm, -y * headMm);
        double halfMm = headMm / 3;
        sketch.fill(
                Path.polygon(
                        List.of(
                                to,
                                neck.moved(-y * halfMm, x * halfMm),
                                neck.moved(y * halfMm, -x * halfMm))),
                Shade.BLACK);
    }

    /** A wedge on the cutting line, and a stroke through the sewing line. */
    private void notch(Piece.Notch notch) {
        int number = piece.number(notch.edge());
        double alongMm = piece.alongMm(notch);
        Point cut = piece.onCuttingLine(number, alongMm);
        Point sewn = piece.onSewingLine(number, alongMm);
        double signMm = style.signMm();
        Point in = inward(number, alongMm);
        double deepMm = Math.max(signMm * 0.75, Math.min(signMm, piece.widthMm(number) * 0.6));
        double half = signMm / 2;
        sketch.fill(
                Path.polygon(
                        List.of(
                                cut.moved(-in.yMm() * half, in.xMm() * half),
                                cut.moved(in.xMm() * deepMm, in.yMm() * deepMm),
                                cut.moved(in.yMm() * half, -in.xMm() * half))),
                Shade.BLACK);
        Point inner = sewn.moved(in.xMm() * half, in.yMm() * half);
        sketch.line(cut, inner, Pen.PLAIN);
        room.take(cut, inner, half);
    }

    private Point inward(int number, double alongMm) {
        Point out = piece.line().outward(number, alongMm);
        return new Point(-out.xMm(), -out.yMm());
    }

    private void dart(Piece.Dart dart) {
        DartShape shape = DartShape.of(piece.shape(), dart);
        sketch.line(shape.first(), shape.point(), style.sewn());
        sketch.line(shape.second(), shape.point(), style.sewn());
        sketch.line(Path.circle(shape.point(), style.signMm() / 3), Pen.PLAIN);
        room.take(shape.first(), shape.point(), 0.5);
        room.take(shape.second(), shape.point(), 0.5);
        ends(dart);
    }

    /** Where the legs of a dart or a pleat reach the cutting line. */
    private void ends(Piece.Dart dart) {
        int number = piece.number(dart.edge());
        double halfMm = dart.takes().millimetres() / 2;
        for (double alongMm :
                List.of(dart.at().millimetres() - halfMm, dart.at().millimetres() + halfMm)) {
            Point cut = piece.onCuttingLine(number, alongMm);
            Point sewn = piece.onSewingLine(number, alongMm);
            if (cut.distanceMm(sewn) > 0) {
                sketch.line(cut, sewn, Pen.PLAIN);
            }
        }
    }

    /** Two fold lines from the edge into the piece, and an arrow from one to the other. */
    private void pleat(Piece.Dart pleat) {
        int number = piece.number(pleat.edge());
        double deepMm = 12 * style.signMm();
        double halfMm = pleat.takes().millimetres() / 2;
        double from = pleat.at().millimetres() - halfMm;
        double to = pleat.at().millimetres() + halfMm;
        for (double alongMm : List.of(from, to)) {
            Point edge = piece.onCuttingLine(number, alongMm);
            Point inner = piece.beside(number, alongMm, -deepMm);
            sketch.line(edge, inner, Pen.PLAIN);
            room.take(edge, inner, 0.5);
        }
        arrow(piece.beside(number, from, -deepMm * 0.6), piece.beside(number, to, -deepMm * 0.6));
    }

    private void cross(Piece.MarkPoint mark) {
        Point at = mark.at();
        double arm = style.signMm() * 0.75;
        sketch.line(at.moved(-arm, 0), at.moved(arm, 0), FINE);
        sketch.line(at.moved(0, -arm), at.moved(0, arm), FINE);
        sketch.line(Path.circle(at, arm / 2), FINE);
        room.take(at, at, arm);
    }

    private void line(Length at) {
        double yMm = piece.shape().box().topMm() + at.millimetres();
        for (Chords.Chord chord : chords().level(yMm)) {
            sketch.line(chord.from(), chord.to(), Pen.CENTRE);
            room.take(chord.from(), chord.to(), 0.3);
        }
    }

    private Chords chords() {
        Outline cut = piece.cut();
        return new Chords(cut, style.isPicture() ? 0.5 : 2);
    }

    private void grain() {
        Optional<Double> turn =
                switch (piece.piece().grain()) {
                    case ALONG -> Optional.of(Math.PI / 2);
                    case ACROSS -> Optional.of(0.0);
                    case BIAS -> Optional.of(Math.PI / 4);
                    case ANY -> Optional.empty();
                };
        turn.flatMap(
                        radians ->
                                new Chords(sewn(), chords().stepMm())
                                        .longest(radians, room)
                                        .or(() -> chords().longest(radians, room)))
                .ifPresent(this::grain);
    }

    /** What the arrow lies in: the piece within its seams. */
    private Outline sewn() {
        if (piece.isIncluded()) {
            return piece.cut();
        }
        List<Point> corners = new ArrayList<>();
        for (NamedEdge edge : piece.shape().edges()) {
            List<Point> line = edge.line().flattened(0.2);
            corners.addAll(line.subList(0, line.size() - 1));
        }
        return new Outline(corners);
    }

    private void grain(Chords.Chord free) {
        double marginMm = 5 * style.signMm();
        double mostMm = 60 * style.signMm();
        double longMm = Math.max(free.lengthMm() * 0.5, free.lengthMm() - 2 * marginMm);
        Chords.Chord chord = free.shortened(Math.min(longMm, mostMm));
        arrow(chord.at(0.5), chord.from());
        arrow(chord.at(0.5), chord.to());
        room.take(chord.from(), chord.to(), 0.5);
        labels.grain(chord);
    }
}
