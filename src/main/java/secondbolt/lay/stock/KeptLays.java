package secondbolt.lay.stock;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import secondbolt.lay.search.Bed;
import secondbolt.lay.search.Effort;
import secondbolt.lay.search.Figure;
import secondbolt.lay.search.Lay;
import secondbolt.lay.search.LaySearch;
import secondbolt.lay.search.Placed;
import secondbolt.lay.search.Rail;
import secondbolt.lay.search.Shelf;
import secondbolt.lay.search.Way;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * Searches lays, or takes those that were kept. The key is a hash of all that a lay depends on,
 * coordinates rounded to a ten-thousandth of a millimetre, since the last bits of a double differ
 * between machines. Interrupted searches are not kept.
 */
public final class KeptLays {
    /** Changed whenever the search may come to another lay for the same input. */
    private static final String SEARCH = "lay 6";

    private static final double PARTS_A_MM = 1e4;

    /** How much larger than it is a figure may be taken to be. */
    static final double TOLERANCE_MM = 0.8;

    private final LayDesk desk;
    private final Map<Double, Shelf> shelves = new HashMap<>();

    /** Lays worked out at a desk. */
    public KeptLays(LayDesk desk) {
        this.desk = desk;
    }

    Lay lay(List<Figure> figures, List<Bed> beds, double gapMm, Effort effort) {
        String key = key(figures, beds, gapMm, effort);
        Optional<Lay> kept = desk.keeper().find(key).flatMap(text -> read(text, figures.size()));
        if (kept.isPresent()) {
            return kept.get();
        }
        Lay found =
                LaySearch.lay(
                        figures,
                        beds,
                        shelves.computeIfAbsent(gapMm, gap -> new Shelf(gap, TOLERANCE_MM)),
                        effort,
                        desk.cores(),
                        desk.watch());
        // Read back, so that a lay is the same whether it was kept or not.
        String text = write(found);
        if (found.isFinished()) {
            desk.keeper().keep(key, text);
        }
        Lay same = read(text, figures.size()).orElseThrow();
        return new Lay(same.placed(), same.leftOver(), found.isFinished());
    }

    private static String key(List<Figure> figures, List<Bed> beds, double gapMm, Effort effort) {
        StringBuilder all = new StringBuilder(SEARCH);
        all.append('\n').append(effort.word()).append('\n').append(number(gapMm));
        for (Figure figure : figures) {
            all.append("\nfigure ").append(figure.grade());
            all.append(' ').append(number(figure.worth()));
            figure.ways().forEach(way -> append(all, way));
            append(all, figure.outline());
        }
        for (Bed bed : beds) {
            all.append("\nbed");
            for (Region grade : bed.grades()) {
                all.append("\ngrade");
                grade.outlines().forEach(outline -> append(all, outline));
            }
        }
        return hash(all.toString());
    }

    private static void append(StringBuilder all, Way way) {
        all.append("\nway ").append(way.turnDegrees()).append(way.isMirrored()).append(way.bed());
        append(all, way.across());
        append(all, way.along());
    }

    private static void append(StringBuilder all, Rail rail) {
        for (double mm :
                new double[] {rail.leastMm(), rail.mostMm(), rail.fromMm(), rail.everyMm()}) {
            all.append(' ').append(number(mm));
        }
    }

    private static void append(StringBuilder all, Outline outline) {
        for (Point corner : outline.corners()) {
            all.append(' ').append(Math.round(corner.xMm() * PARTS_A_MM));
            all.append(',').append(Math.round(corner.yMm() * PARTS_A_MM));
        }
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value + 0.0);
    }

    private static String hash(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] hash = digest.digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, 32);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String write(Lay lay) {
        StringBuilder text = new StringBuilder();
        for (Placed placed : lay.placed()) {
            text.append(placed.figure())
                    .append(' ')
                    .append(placed.bed())
                    .append(' ')
                    .append(placed.isMirrored())
                    .append(' ')
                    .append(placed.turnDegrees())
                    .append(' ')
                    .append(number(placed.acrossMm()))
                    .append(' ')
                    .append(number(placed.alongMm()))
                    .append('\n');
        }
        return text.append("end\n").toString();
    }

    /** Nothing if the text is not whole. */
    private static Optional<Lay> read(String text, int figures) {
        List<Placed> placed = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < figures; i++) {
            left.add(i);
        }
        if (!text.endsWith("end\n")) {
            return Optional.empty();
        }
        try {
            for (String line : text.lines().toList()) {
                if (line.equals("end")) {
                    return Optional.of(new Lay(placed, left, true));
                }
                List<String> words = List.of(line.split(" ", -1));
                Placed one =
                        new Placed(
                                Integer.parseInt(words.get(0)),
                                Integer.parseInt(words.get(1)),
                                Boolean.parseBoolean(words.get(2)),
                                Integer.parseInt(words.get(3)),
                                Double.parseDouble(words.get(4)),
                                Double.parseDouble(words.get(5)));
                placed.add(one);
                if (!left.remove(Integer.valueOf(one.figure()))) {
                    return Optional.empty();
                }
            }
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }
}
