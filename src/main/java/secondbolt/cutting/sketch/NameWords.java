package secondbolt.cutting.sketch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.cutting.line.CutPiece;
import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.Mark;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * Writes the name of a piece onto it.
 *
 * @param piece the piece
 * @param style how large
 */
record NameWords(CutPiece piece, SketchStyle style) {
    /** Places are tried so many to a side, less one. */
    private static final int GRID = 14;

    /** How far letters such as g and p reach below their line, a share of the lettering's size. */
    private static final double BELOW_THE_LINE = 0.24;

    /** The name and what stands under it, as large and as near the middle as there is room. */
    void write(List<String> words, Sketch sketch, LabelRoom room) {
        List<Point> places = places();
        room.writeFirst(
                sketch,
                () ->
                        style.nameSizesMm().stream()
                                .flatMap(sizeMm -> blocks(words, places, sizeMm)));
    }

    private Stream<List<Mark.Label>> blocks(List<String> words, List<Point> places, double sizeMm) {
        return Stream.of(0.0, -90.0)
                .flatMap(turn -> places.stream().map(at -> block(words, at, sizeMm, turn)));
    }

    private List<Mark.Label> block(List<String> words, Point at, double sizeMm, double turn) {
        double smallMm = Math.max(2.4, Math.min(style.wordsMm() * 1.25, sizeMm * 0.5));
        if (style.isPicture()) {
            smallMm = style.wordsMm();
        }
        double radians = Math.toRadians(turn);
        double downX = -Math.sin(radians);
        double downY = Math.cos(radians);
        double lineMm = smallMm * 1.4;
        double belowNameMm = Math.max(lineMm, sizeMm * BELOW_THE_LINE + smallMm * 1.05);
        double down = -(belowNameMm + (words.size() - 1) * lineMm) / 2;
        List<Mark.Label> labels = new ArrayList<>();
        labels.add(
                new Mark.Label(
                        piece.name(),
                        at.moved(downX * down, downY * down),
                        Lettering.bold(sizeMm).turned(turn),
                        Align.MIDDLE));
        for (int i = 0; i < words.size(); i++) {
            String line = words.get(i);
            down += i == 0 ? belowNameMm : lineMm;
            labels.add(
                    new Mark.Label(
                            line,
                            at.moved(downX * down, downY * down),
                            Lettering.plain(smallMm).turned(turn),
                            Align.MIDDLE));
        }
        return labels;
    }

    /** Places on a grid over the piece, the ones nearest its middle first. */
    private List<Point> places() {
        Box box = piece.cut().box();
        Point middle = middleOf(box);
        List<Point> places = new ArrayList<>();
        places.add(middle);
        for (int row = 1; row < GRID; row++) {
            for (int column = 1; column < GRID; column++) {
                places.add(
                        new Point(
                                box.leftMm() + box.widthMm() * column / GRID,
                                box.topMm() + box.heightMm() * row / GRID));
            }
        }
        places.removeIf(at -> !piece.cut().contains(at));
        places.sort(Comparator.comparingDouble(middle::distanceMm));
        return places.isEmpty() ? List.of(middle) : places;
    }

    /** The middle of the longest level run through the middle of the box. */
    private Point middleOf(Box box) {
        Point middle = box.middle();
        return new Chords(piece.cut(), Math.max(0.5, box.widthMm() / 200))
                .level(middle.yMm()).stream()
                        .max(Comparator.comparingDouble(Chords.Chord::lengthMm))
                        .map(chord -> chord.at(0.5))
                        .orElse(middle);
    }
}
