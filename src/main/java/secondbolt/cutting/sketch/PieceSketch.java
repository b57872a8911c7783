package secondbolt.cutting.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.SewingLine;
import secondbolt.draw.Drawing;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.cut.Allowance;

/** Draws one piece with all that is marked on it, full size or as a picture. */
public final class PieceSketch {
    private static final double FRAME_MM = 3;

    /** Room in a picture for what stands outside the piece. */
    private static final double PICTURE_FRAME_MM = 12;

    /** All pictures are so wide, so that their letters come out alike. */
    private static final double PICTURE_ACROSS_MM = 150;

    private static final double SEWN_STEP_MM = 1;

    private final CutPiece piece;
    private final List<String> words;
    private final SketchStyle style;
    private final Sketch sketch = new Sketch();
    private final LabelRoom room;
    private final PieceSigns signs;
    private final PieceWords labels;

    private PieceSketch(CutPiece piece, List<String> words, SketchStyle style) {
        this.piece = piece;
        this.words = List.copyOf(words);
        this.style = style;
        this.room = new LabelRoom(style.isPicture() ? Optional.empty() : Optional.of(piece.cut()));
        this.signs = new PieceSigns(piece, style, sketch, room);
        this.labels = new PieceWords(piece, style, sketch, room);
    }

    /**
     * The drawing of a piece.
     *
     * @param words what stands under its name
     */
    public static Drawing of(CutPiece piece, List<String> words, SketchStyle style) {
        return new PieceSketch(piece, words, style).drawing();
    }

    /** What the drawing of a piece takes up. */
    public static Box frame(CutPiece piece, SketchStyle style) {
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
        piece.piece().fold().map(piece::number).ifPresent(this::fold);
        piece.piece().features().notches().forEach(signs::notch);
        piece.piece().features().darts().forEach(signs::dart);
        piece.piece().features().pleats().forEach(signs::pleat);
        piece.piece().features().marks().forEach(signs::cross);
        if (style.isPicture()) {
            keepLinesClear();
            labels.pointNumbers();
        } else {
            keepSewingLineClear();
        }
        piece.piece().lines().values().forEach(this::line);
        new NameWords(piece, style).write(words, sketch, room);
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

    private void fold(int number) {
        signs.foldBracket(number);
        labels.fold(number);
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
        signs.arrow(chord.at(0.5), chord.from());
        signs.arrow(chord.at(0.5), chord.to());
        room.take(chord.from(), chord.to(), 0.5);
        labels.grain(chord);
    }
}
