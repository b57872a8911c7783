package secondbolt.tools;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;

/** A grey picture of a page, measured in millimetres of paper. */
public final class Raster {
    private static final double MM_PER_INCH = 25.4;
    private static final int WHITE = 255;
    private static final int DARK_BELOW = 160;

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
        Path program = Tools.require("pdftoppm");
        Path folder = pdf.toAbsolutePath().getParent();
        String stem = pdf.getFileName() + "-" + dotsPerInch;
        Tools.run(
                folder,
                program.toString(),
                "-r",
                Integer.toString(dotsPerInch),
                "-gray",
                pdf.getFileName().toString(),
                stem);
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> isPage(file, stem))
                    .sorted()
                    .map(file -> read(file, dotsPerInch))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }

    private static boolean isPage(Path file, String stem) {
        String name = file.getFileName().toString();
        return name.startsWith(stem + "-") && name.endsWith(".pgm");
    }

    /** Reads a binary PGM file. */
    public static Raster read(Path pgm, int dotsPerInch) {
        try {
            ByteArrayInputStream in = new ByteArrayInputStream(Files.readAllBytes(pgm));
            if (!word(in).equals("P5")) {
                throw new IllegalArgumentException("not a binary PGM file: " + pgm);
            }
            int width = Integer.parseInt(word(in));
            int height = Integer.parseInt(word(in));
            word(in);
            return new Raster(width, height, in.readAllBytes(), dotsPerInch / MM_PER_INCH);
        } catch (IOException e) {
            throw new UncheckedIOException(pgm.toString(), e);
        }
    }

    private static String word(ByteArrayInputStream in) {
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
        return runs(x -> grey(x, y), fromMm, toMm);
    }

    /** What is dark along a line down, from top to bottom. */
    public List<Run> down(double xMm, double fromMm, double toMm) {
        int x = (int) (xMm * pixelsPerMm);
        return runs(y -> grey(x, y), fromMm, toMm);
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

    private List<Run> runs(IntUnaryOperator grey, double fromMm, double toMm) {
        List<Run> runs = new ArrayList<>();
        int to = (int) (toMm * pixelsPerMm);
        for (int i = (int) (fromMm * pixelsPerMm); i < to; i++) {
            if (grey.applyAsInt(i) < DARK_BELOW) {
                int start = i;
                while (i < to && grey.applyAsInt(i) < WHITE) {
                    i++;
                }
                runs.add(run(grey, start - 1, i));
            }
        }
        return runs;
    }

    private Run run(IntUnaryOperator grey, int from, int to) {
        double weight = 0;
        double moment = 0;
        for (int i = from; i < to; i++) {
            double dark = (WHITE - grey.applyAsInt(i)) / (double) WHITE;
            weight += dark;
            moment += dark * (i + 0.5);
        }
        return new Run(moment / weight / pixelsPerMm, weight / pixelsPerMm);
    }

    private int grey(int x, int y) {
        boolean inside = x >= 0 && x < width && y >= 0 && y < height;
        return inside ? pixels[y * width + x] & 0xFF : WHITE;
    }
}
