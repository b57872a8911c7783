package secondbolt.draw.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.draw.Drawing;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * How a drawing is cut into tiles of one page each, side by side in rows and columns.
 *
 * <p>Neighbours share a band of {@value #OVERLAP_MM} mm, which both show. All pages of a tiling are
 * read the same way: the one that takes the fewest tiles, then, from a roll, the least paper, then
 * the one with the fewest joins along the drawing's longer side, then upright.
 */
public final class Tiling {
    /** The band that neighbours share. */
    public static final double OVERLAP_MM = 10;

    /** Below what any printer shows; a drawing that is over by less still counts as fitting. */
    private static final double NOTHING_MM = 1e-6;

    private final Drawing drawing;
    private final PageArea area;
    private final int rows;
    private final int columns;
    private final List<Box> marks;

    /**
     * One tile.
     *
     * @param row from the top, from 1
     * @param column from the left, from 1
     * @param window what it shows, in the drawing's millimetres
     */
    public record Tile(int row, int column, Box window) {}

    private Tiling(Drawing drawing, PageArea area) {
        this.drawing = drawing;
        this.area = area;
        this.rows = count(drawing.frame().heightMm(), area.live().heightMm());
        this.columns = count(drawing.frame().widthMm(), area.live().widthMm());
        this.marks = drawing.marks().stream().map(mark -> mark.accept(MarkBox.OF)).toList();
    }

    /** The tiling of a drawing on this paper. */
    public static Tiling of(Drawing drawing, Paper paper, PrintCorrection correction) {
        return Stream.of(PageArea.Way.values())
                .map(way -> of(drawing, PageArea.of(paper, correction, way, drawing.frame())))
                .min(
                        Comparator.comparingInt((Tiling tiling) -> tiling.rows * tiling.columns)
                                .thenComparingDouble(tiling -> tiling.area.paperMm2())
                                .thenComparingInt(Tiling::joinsAlongTheLongSide))
                .orElseThrow();
    }

    /** The tiling on pages of this kind. */
    static Tiling of(Drawing drawing, PageArea area) {
        return new Tiling(drawing, area);
    }

    private static int count(double sideMm, double liveMm) {
        double over = sideMm - liveMm - NOTHING_MM;
        return over <= 0 ? 1 : 1 + (int) Math.ceil(over / (liveMm - OVERLAP_MM));
    }

    private int joinsAlongTheLongSide() {
        Box frame = drawing.frame();
        return frame.heightMm() >= frame.widthMm() ? rows : columns;
    }

    /** How many rows there are. */
    public int rows() {
        return rows;
    }

    /** How many tiles a row has. */
    public int columns() {
        return columns;
    }

    /** The tiles that are printed, row by row; one on which nothing is drawn is left out. */
    public List<Tile> tiles() {
        List<Tile> tiles = new ArrayList<>();
        for (int row = 1; row <= rows; row++) {
            for (int column = 1; column <= columns; column++) {
                if (isPrinted(row, column)) {
                    tiles.add(new Tile(row, column, window(row, column)));
                }
            }
        }
        return List.copyOf(tiles);
    }

    /** Whether there is such a tile and something is drawn on it. */
    public boolean isPrinted(int row, int column) {
        boolean isThere = row >= 1 && row <= rows && column >= 1 && column <= columns;
        return isThere && (rows * columns == 1 || !isEmpty(window(row, column)));
    }

    private boolean isEmpty(Box window) {
        return marks.stream().noneMatch(window::overlaps);
    }

    /** The page each tile is printed on. */
    public PageArea area() {
        return area;
    }

    /** What is cut into tiles. */
    public Drawing drawing() {
        return drawing;
    }

    /** What a tile shows of the drawing, by its row and column from 1. */
    public Box window(int row, int column) {
        Box live = area.live();
        return new Box(
                drawing.frame().leftMm() + (column - 1) * (live.widthMm() - OVERLAP_MM),
                drawing.frame().topMm() + (row - 1) * (live.heightMm() - OVERLAP_MM),
                live.widthMm(),
                live.heightMm());
    }

    /** Where a point of the drawing comes to lie on the page of a tile. */
    public Point onPage(Tile tile, Point point) {
        return point.moved(
                area.live().leftMm() - tile.window().leftMm(),
                area.live().topMm() - tile.window().topMm());
    }
}
