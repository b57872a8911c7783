package secondbolt.tools;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.shape.Point;

/**
 * A printed sheet as the maker has it on her table: the lead sheets laid aside, the tiles glued by
 * the join marks that are found on their pixels.
 *
 * <p>Points are in millimetres of paper from the left top corner of the first tile. Tiles are moved
 * to where the crosses meet, never turned or stretched.
 */
public final class GluedSheet {
    /** What a sheet keeps clear all round. */
    private static final double MARGIN_MM = 10;

    /** Crosses, and neighbours at two sides, must agree on a tile's place; a pixel is 0.085 mm. */
    private static final double MEET_MM = 0.1;

    private static final Pattern PLACE = Pattern.compile("row (\\d+) of \\d+, column (\\d+) of ");

    private final List<Tile> tiles = new ArrayList<>();
    private final String text;
    private DarkSquares darkSquares = new DarkSquares(0, 0);

    /** A page, and where its left top corner lies. */
    private record Tile(Place place, Raster page, Point corner) {
        Point onPage(Point at) {
            return at.moved(-corner.xMm(), -corner.yMm());
        }

        /** How far inside the drawn part of the page a point lies; below zero outside of it. */
        double depthMm(Point at) {
            Point on = onPage(at);
            double across = Math.min(on.xMm(), page.widthMm() - on.xMm());
            double along = Math.min(on.yMm(), page.heightMm() - on.yMm());
            return Math.min(across, along) - MARGIN_MM;
        }
    }

    /** Where a tile lies among the others, as is printed above it. */
    private record Place(int row, int column) {
        /** The side of this tile at which another lies, if they touch. */
        Optional<JoinCross.Side> sideOf(Place other) {
            int down = other.row - row;
            int right = other.column - column;
            if (Math.abs(down) + Math.abs(right) != 1) {
                return Optional.empty();
            }
            if (down == 0) {
                return Optional.of(right > 0 ? JoinCross.Side.RIGHT : JoinCross.Side.LEFT);
            }
            return Optional.of(down > 0 ? JoinCross.Side.BOTTOM : JoinCross.Side.TOP);
        }
    }

    private record Loose(Place place, Raster page) {}

    private GluedSheet(String text) {
        this.text = text.replaceAll("\\s+", " ");
    }

    /** The sheet in a PDF file, drawn by poppler. */
    public static GluedSheet of(Path pdf, int dotsPerInch) {
        String program = Tools.require("pdftotext").toString();
        String[] texts = Tools.run(pdf.getParent(), program, pdf.toString(), "-").split("\f", -1);
        // Behind the last page nothing follows but its form feed.
        List<String> pages = List.of(texts).subList(0, texts.length - 1);
        int first = 0;
        while (isLead(pages.get(first))) {
            first++;
        }
        List<Raster> pictures = Raster.pages(pdf, first + 1, dotsPerInch);
        List<Loose> loose = new ArrayList<>();
        for (int i = first; i < pages.size(); i++) {
            if (!isLead(pages.get(i))) {
                loose.add(new Loose(place(pages.get(i)), pictures.get(i - first)));
            }
        }
        GluedSheet sheet = new GluedSheet(String.join(" ", texts));
        sheet.glue(loose);
        sheet.lookOver();
        return sheet;
    }

    private static boolean isLead(String text) {
        return text.contains("lead sheet");
    }

    private static Place place(String text) {
        Matcher matcher = PLACE.matcher(text);
        if (matcher.find()) {
            return new Place(
                    Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
        }
        assertTrue(text.contains("one sheet"), () -> "no place is printed on " + text);
        return new Place(1, 1);
    }

    private void glue(List<Loose> all) {
        List<Loose> loose = new ArrayList<>(all);
        Loose first = loose.remove(0);
        tiles.add(new Tile(first.place, first.page, Point.ORIGIN));
        while (!loose.isEmpty()) {
            Loose next =
                    loose.stream()
                            .filter(tile -> tiles.stream().anyMatch(laid -> touch(tile, laid)))
                            .findFirst()
                            .orElseThrow(() -> new AssertionError("no neighbour for " + loose));
            loose.remove(next);
            tiles.add(new Tile(next.place, next.page, corner(next)));
        }
    }

    private void lookOver() {
        darkSquares = new DarkSquares(widthMm(), heightMm());
        tiles.forEach(tile -> darkSquares.add(tile.page, tile.corner));
    }

    private static boolean touch(Loose tile, Tile laid) {
        return tile.place.sideOf(laid.place).isPresent();
    }

    /** In the middle of what the crosses on all sides ask for, which must be the same. */
    private Point corner(Loose tile) {
        List<Point> corners = new ArrayList<>();
        for (Tile laid : tiles) {
            tile.place
                    .sideOf(laid.place)
                    .ifPresent(
                            side -> {
                                JoinCross.Side theirs = laid.place.sideOf(tile.place).orElseThrow();
                                corners.addAll(corners(tile.page, side, laid, theirs));
                            });
        }
        Point middle =
                new Point(
                        corners.stream().mapToDouble(Point::xMm).average().orElseThrow(),
                        corners.stream().mapToDouble(Point::yMm).average().orElseThrow());
        corners.forEach(
                corner ->
                        assertTrue(
                                corner.distanceMm(middle) < MEET_MM,
                                () -> "crosses do not meet on " + tile.place + ": " + corners));
        return middle;
    }

    /** Where the page's corner comes to lie if it is glued by one cross or the other. */
    private static List<Point> corners(
            Raster page, JoinCross.Side side, Tile laid, JoinCross.Side theirs) {
        List<Optional<Point>> here = JoinCross.on(page, side);
        List<Optional<Point>> there = JoinCross.on(laid.page, theirs);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < here.size(); i++) {
            if (here.get(i).isPresent() && there.get(i).isPresent()) {
                Point mine = here.get(i).orElseThrow();
                Point met = there.get(i).orElseThrow();
                corners.add(laid.corner.moved(met.xMm() - mine.xMm(), met.yMm() - mine.yMm()));
            }
        }
        assertTrue(!corners.isEmpty(), () -> "no cross can be read at the " + side);
        return corners;
    }

    /** Whether these words stand on the sheet, on its lead sheets or its tiles. */
    public boolean says(String words) {
        return text.contains(words);
    }

    /** How far it reaches across, from the left edge of the first tile. */
    public double widthMm() {
        return tiles.stream().mapToDouble(t -> t.corner.xMm() + t.page.widthMm()).max().orElse(0);
    }

    /** How far it reaches along, from the top edge of the first tile. */
    public double heightMm() {
        return tiles.stream().mapToDouble(t -> t.corner.yMm() + t.page.heightMm()).max().orElse(0);
    }

    /** Whether a point is dark on the tile that shows it. */
    public boolean isDark(Point at) {
        return showing(at).map(tile -> tile.page.isDark(tile.onPage(at))).orElse(false);
    }

    /** Whether there may be a dark point in a square; never false where there is one. */
    boolean hasDarkWithin(double leftMm, double topMm, double wideMm) {
        return darkSquares.hasDarkWithin(leftMm, topMm, wideMm);
    }

    /**
     * What is dark along a line through a point, on the tile that shows the point.
     *
     * @param across how far across a millimetre of the line leads
     * @param along how far along a millimetre of the line leads
     * @param reachMm how far the line goes to either side
     * @return the runs, measured from the point; none where no tile shows it
     */
    public List<Raster.Run> through(Point at, double across, double along, double reachMm) {
        return showing(at)
                .map(tile -> tile.page.through(tile.onPage(at), across, along, reachMm))
                .orElse(List.of());
    }

    /** In a band that tiles share they are cut in the middle: the one farther from its edge. */
    private Optional<Tile> showing(Point at) {
        Tile deepest = tiles.get(0);
        for (Tile tile : tiles) {
            deepest = tile.depthMm(at) > deepest.depthMm(at) ? tile : deepest;
        }
        return deepest.depthMm(at) >= 0 ? Optional.of(deepest) : Optional.empty();
    }
}
