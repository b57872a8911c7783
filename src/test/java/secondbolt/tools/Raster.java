package secondbolt.tools;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import secondbolt.shape.Point;

/** A grey picture of a page, measured in millimetres of paper. */
public final class Raster {
    private static final double MM_PER_INCH = 25.4;
    private static final int WHITE = 255;
    private static final int DARK_BELOW = 160;

    /** Along a slanted line, so that no pixel is passed over. */
    private static final int STEPS_PER_PIXEL = 2;

    private final int width;
    private final int height;
    private final byte[] pixels;
    private final double pixelsPerMm;

    private Raster(int width, int height, byte[] pixels, double pixelsPerMm) {
        this.width = width;
        this.height = height;
        this.pixels = pixels;
        this.pixelsPerMm = pixelsPerMm;
    }

    /**
     * Something dark met along a line.
     *
     * @param middleMm its middle, weighted by how dark each pixel is
     * @param widthMm how much of the line it covers, likewise
     */
    public record Run(double middleMm, double widthMm) {}

    /** Pictures of all pages of a PDF file, made by poppler. */
    public static List<Raster> pages(Path pdf, int dotsPerInch) {
        return pages(pdf, 1, dotsPerInch);
    }

    /**
     * Pictures of the pages of a PDF file from one on, made by poppler; nothing is left in the
     * folder.
     *
     * @param from number of the first page wanted, from 1
     */
    public static List<Raster> pages(Path pdf, int from, int dotsPerInch) {
        return Tools.read(
                pdf.toAbsolutePath().getParent(),
                out -> all(out, dotsPerInch),
                Tools.require("pdftoppm").toString(),
                "-r",
                Integer.toString(dotsPerInch),
                "-gray",
                "-f",
                Integer.toString(from),
                pdf.getFileName().toString());
    }

    /** Reads binary PGM pictures, one after the other. */
    private static List<Raster> all(InputStream in, int dotsPerInch) throws IOException {
        List<Raster> all = new ArrayList<>();
        for (String magic = word(in); !magic.isEmpty(); magic = word(in)) {
            if (!magic.equals("P5")) {
                throw new IOException("not a binary PGM picture: " + magic);
            }
            int width = Integer.parseInt(word(in));
            int height = Integer.parseInt(word(in));
            word(in);
            byte[] pixels = in.readNBytes(width * height);
            all.add(new Raster(width, height, pixels, dotsPerInch / MM_PER_INCH));
        }
        return all;
    }

    private static String word(InputStream in) throws IOException {
        StringBuilder word = new StringBuilder();
        for (int c = in.read(); c > ' '; c = in.read()) {
            word.append((char) c);
        }
        return word.toString();
    }

    /** The page's width. */
    public double widthMm() {
        return width / pixelsPerMm;
    }

    /** The page's height. */
    public double heightMm() {
        return height / pixelsPerMm;
    }

    /** What is dark along a line across, from left to right. */
    public List<Run> across(double yMm, double fromMm, double toMm) {
        int y = (int) (yMm * pixelsPerMm);
        return runs(x -> grey(x, y), pixelsPerMm, fromMm, toMm);
    }

    /** What is dark along a line down, from top to bottom. */
    public List<Run> down(double xMm, double fromMm, double toMm) {
        int x = (int) (xMm * pixelsPerMm);
        return runs(y -> grey(x, y), pixelsPerMm, fromMm, toMm);
    }

    /**
     * What is dark along a line in any direction.
     *
     * @param at a point of the line, from which runs are measured
     * @param across how far across a millimetre of the line leads: its cosine
     * @param along how far along a millimetre of the line leads: its sine
     * @param reachMm how far the line goes to either side of the point
     */
    public List<Run> through(Point at, double across, double along, double reachMm) {
        double steps = STEPS_PER_PIXEL * pixelsPerMm;
        Point start = at.moved(-across * reachMm, -along * reachMm);
        IntUnaryOperator grey =
                i ->
                        (int)
                                Math.round(
                                        between(
                                                start.xMm() + across * (i + 0.5) / steps,
                                                start.yMm() + along * (i + 0.5) / steps));
        return runs(grey, steps, 0, 2 * reachMm).stream()
                .map(run -> new Run(run.middleMm() - reachMm, run.widthMm()))
                .toList();
    }

    /** Whether a point is dark. */
    public boolean isDark(Point at) {
        return grey((int) (at.xMm() * pixelsPerMm), (int) (at.yMm() * pixelsPerMm)) < DARK_BELOW;
    }

    /** The dark pixels: the left top corner of each, and how wide it is. */
    void eachDark(DarkPixel taker) {
        double wideMm = 1 / pixelsPerMm;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if ((pixels[y * width + x] & 0xFF) < DARK_BELOW) {
                    taker.take(x * wideMm, y * wideMm, wideMm);
                }
            }
        }
    }

    /** Takes a dark pixel. */
    interface DarkPixel {
        /** One of them, in millimetres of paper. */
        void take(double leftMm, double topMm, double wideMm);
    }

    /** The grey of a point, from the four pixels whose middles lie round it. */
    private double between(double xMm, double yMm) {
        double x = xMm * pixelsPerMm - 0.5;
        double y = yMm * pixelsPerMm - 0.5;
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        double right = x - left;
        double down = y - top;
        double upper = grey(left, top) * (1 - right) + grey(left + 1, top) * right;
        double lower = grey(left, top + 1) * (1 - right) + grey(left + 1, top + 1) * right;
        return upper * (1 - down) + lower * down;
    }

    /** Whether nothing at all is drawn outside a margin of this width. */
    public boolean isWhiteWithin(double marginMm) {
        int margin = (int) (marginMm * pixelsPerMm);
        for (int y = 0; y < height; y++) {
            boolean inside = y >= margin && y < height - margin;
            for (int x = 0; x < width; x++) {
                boolean live = inside && x >= margin && x < width - margin;
                if (!live && grey(x, y) != WHITE) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<Run> runs(
            IntUnaryOperator grey, double stepsPerMm, double fromMm, double toMm) {
        List<Run> runs = new ArrayList<>(2);
        int from = (int) (fromMm * stepsPerMm);
        int to = (int) (toMm * stepsPerMm);
        for (int i = from; i < to; i++) {
            if (grey.applyAsInt(i) < DARK_BELOW) {
                int start = i;
                while (start > from && grey.applyAsInt(start - 1) < WHITE) {
                    start--;
                }
                while (i < to && grey.applyAsInt(i) < WHITE) {
                    i++;
                }
                runs.add(run(grey, stepsPerMm, start, i));
            }
        }
        return runs;
    }

    private static Run run(IntUnaryOperator grey, double stepsPerMm, int from, int to) {
        double weight = 0;
        double moment = 0;
        for (int i = from; i < to; i++) {
            double dark = (WHITE - grey.applyAsInt(i)) / (double) WHITE;
            weight += dark;
            moment += dark * (i + 0.5);
        }
        return new Run(moment / weight / stepsPerMm, weight / stepsPerMm);
    }

    private int grey(int x, int y) {
        boolean inside = x >= 0 && x < width && y >= 0 && y < height;
        return inside ? pixels[y * width + x] & 0xFF : WHITE;
    }
}
