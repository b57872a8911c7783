package secondbolt.draw.sheet;

import secondbolt.draw.Align;
import secondbolt.draw.Lettering;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.Tiling;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** A small picture of how the tiles lie, with the lines that are cut and the drawing's edge. */
final class TileMap {
    private static final double NAME_ROOM_MM = 12;
    private static final double HEAD_ROOM_MM = 5;
    private static final double SIZE_MM = 2.8;
    private static final Lettering NAME = Lettering.plain(SIZE_MM);

    private final Tiling tiling;
    private final double scale;

    private TileMap(Tiling tiling, double scale) {
        this.tiling = tiling;
        this.scale = scale;
    }

    /** The map, as large as its place allows. */
    static Slice slice(Tiling tiling, double widthMm, double heightMm) {
        Box all = all(tiling);
        double across = (widthMm - NAME_ROOM_MM) / all.widthMm();
        double along = (heightMm - HEAD_ROOM_MM - 1) / all.heightMm();
        TileMap map = new TileMap(tiling, Math.min(across, along));
        double height = HEAD_ROOM_MM + 1 + all.heightMm() * map.scale;
        return new Slice(height, false, map::paint);
    }

    private static Box all(Tiling tiling) {
        return tiling.window(1, 1).with(tiling.window(tiling.rows(), tiling.columns()));
    }

    private void paint(Sketch sketch, Point leftTop) {
        Point corner = leftTop.moved(NAME_ROOM_MM, HEAD_ROOM_MM);
        names(sketch, corner);
        for (int row = 1; row <= tiling.rows(); row++) {
            for (int column = 1; column <= tiling.columns(); column++) {
                Box cell = small(cell(row, column), corner);
                sketch.box(cell, Pen.FINE);
                if (!tiling.isPrinted(row, column)) {
                    sketch.line(
                            new Point(cell.leftMm(), cell.topMm()),
                            new Point(cell.rightMm(), cell.bottomMm()),
                            Pen.FINE);
                }
            }
        }
        Box all = all(tiling);
        Point origin = corner.moved(-all.leftMm() * scale, -all.topMm() * scale);
        boolean drawn = ScaledDown.cuttingLines(tiling.drawing(), sketch, scale, origin);
        sketch.box(small(tiling.drawing().frame(), corner), drawn ? Pen.FINE : Pen.CUT);
    }

    private void names(Sketch sketch, Point corner) {
        int rowStep = every(cell(1, 1).heightMm(), SIZE_MM);
        for (int row = 1; row <= tiling.rows(); row += rowStep) {
            double base = small(cell(row, 1), corner).middle().yMm() + SIZE_MM / 3;
            String name = "row " + row;
            sketch.label(name, new Point(corner.xMm() - 1, base), NAME, Align.END);
        }
        if (tiling.columns() == 1) {
            return;
        }
        double y = corner.yMm() - 1.5;
        sketch.label("column", new Point(corner.xMm() - 1, y), NAME, Align.END);
        int step = every(cell(1, 1).widthMm(), NAME.widthMm("00") + 1);
        for (int column = 1; column <= tiling.columns(); column += step) {
            double x = small(cell(1, column), corner).middle().xMm();
            sketch.label(Integer.toString(column), new Point(x, y), NAME, Align.MIDDLE);
        }
    }

    /** Names every cell, or every second one and so on where they would run together. */
    private int every(double cellMm, double neededMm) {
        return (int) Math.max(1, Math.ceil(neededMm / (cellMm * scale)));
    }

    /** From the middle of one shared band to the middle of the next. */
    private Box cell(int row, int column) {
        Box window = tiling.window(row, column);
        double half = Tiling.OVERLAP_MM / 2;
        double left = window.leftMm() + (column == 1 ? 0 : half);
        double top = window.topMm() + (row == 1 ? 0 : half);
        double right = window.rightMm() - (column == tiling.columns() ? 0 : half);
        double bottom = window.bottomMm() - (row == tiling.rows() ? 0 : half);
        return Box.between(new Point(left, top), new Point(right, bottom));
    }

    private Box small(Box box, Point corner) {
        Box all = all(tiling);
        return new Box(
                corner.xMm() + (box.leftMm() - all.leftMm()) * scale,
                corner.yMm() + (box.topMm() - all.topMm()) * scale,
                box.widthMm() * scale,
                box.heightMm() * scale);
    }
}
