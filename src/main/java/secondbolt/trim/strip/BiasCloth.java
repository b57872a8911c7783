package secondbolt.trim.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.shape.Box;

/**
 * A rectangle of cloth, of which bias strips are cut.
 *
 * <p>Every cut runs at 45 degrees, so that strips lie one beside the other from one corner of the
 * cloth to the opposite one. A cut is told by where it meets the long side, counted from a corner:
 * from 0 to the short side lies the triangle at that corner, from there to the long side the cuts
 * run from side to side, and beyond lies the triangle at the other corner. Derived.
 *
 * @param shortMm the short side
 * @param longMm the long side
 * @param free where nothing is cut yet
 */
public record BiasCloth(double shortMm, double longMm, List<Span> free) {
    private static final double ROOT_OF_TWO = Math.sqrt(2);

    /** A strip that lacks less of the full length is a whole one. */
    private static final double WHOLE_MM = 0.05;

    /** Two cuts nearer to each other are one. */
    private static final double NO_SPAN_MM = 1e-6;

    /** More strips are no binding. */
    private static final int MOST_STRIPS = 500;

    /** Copies the spans. */
    public BiasCloth {
        free = List.copyOf(free);
    }

    /**
     * What lies between two cuts.
     *
     * @param fromMm along the long side
     * @param toMm along the long side
     */
    public record Span(double fromMm, double toMm) {
        double mm() {
            return toMm - fromMm;
        }
    }

    /**
     * Strips and what is left.
     *
     * @param cut the strips
     * @param rest of the cloth
     */
    public record Taken(StripCut cut, BiasCloth rest) {}

    /** A whole rectangle. */
    public static BiasCloth of(Box box) {
        double shortMm = Math.min(box.widthMm(), box.heightMm());
        double longMm = Math.max(box.widthMm(), box.heightMm());
        return new BiasCloth(shortMm, longMm, List.of(new Span(0, shortMm + longMm)));
    }

    /**
     * Cuts strips, the longest first, until they reach once they are joined.
     *
     * @param wish what is wanted
     * @param seam the allowance of a join: it runs with the threads, at 45 degrees to the strip, so
     *     two allowances take their root of two times of the length (derived)
     */
    public Taken take(StripWish wish, Length seam) {
        double widthMm = wish.width().millimetres() * ROOT_OF_TWO;
        double perJoinMm = 2 * seam.millimetres() * ROOT_OF_TWO;
        List<Span> left = new ArrayList<>(free);
        List<Length> strips = new ArrayList<>();
        int whole = 0;
        double joinedMm = 0;
        while (joinedMm < wish.need().millimetres() && strips.size() < MOST_STRIPS) {
            Optional<Span> best = longest(left, widthMm);
            if (best.isEmpty() || lengthMm(best.get()) < wish.shortest().millimetres()) {
                break;
            }
            double lengthMm = lengthMm(best.get());
            whole += lengthMm > shortMm * ROOT_OF_TWO - WHOLE_MM ? 1 : 0;
            joinedMm += lengthMm - (strips.isEmpty() ? 0 : perJoinMm);
            strips.add(Length.ofComputedMillimetres(lengthMm));
            left = without(left, best.get());
        }
        StripCut cut = new StripCut(wish, strips, whole, Length.ofComputedMillimetres(perJoinMm));
        return new Taken(cut, new BiasCloth(shortMm, longMm, left));
    }

    /**
     * How long the strip between two cuts is, its ends cut along the long sides so that strips can
     * be joined: as long as the shorter of its edges.
     */
    private double lengthMm(Span strip) {
        double fromMm = Math.max(0, strip.toMm() - longMm);
        return ROOT_OF_TWO * (Math.min(shortMm, strip.fromMm()) - fromMm);
    }

    private Optional<Span> longest(List<Span> spans, double widthMm) {
        return spans.stream()
                .filter(span -> span.mm() >= widthMm - NO_SPAN_MM)
                .map(span -> best(span, widthMm))
                .max(Comparator.comparingDouble(this::lengthMm));
    }

    /** The longest strip of a span: from the corner's cut on, or as near to it as can be. */
    private Span best(Span span, double widthMm) {
        double atMm = Math.max(span.fromMm(), Math.min(shortMm, span.toMm() - widthMm));
        return new Span(atMm, atMm + widthMm);
    }

    private static List<Span> without(List<Span> spans, Span strip) {
        List<Span> left = new ArrayList<>();
        for (Span span : spans) {
            if (strip.fromMm() < span.fromMm() - NO_SPAN_MM
                    || strip.toMm() > span.toMm() + NO_SPAN_MM) {
                left.add(span);
                continue;
            }
            Span before = new Span(span.fromMm(), strip.fromMm());
            Span after = new Span(strip.toMm(), span.toMm());
            left.addAll(List.of(before, after).stream().filter(s -> s.mm() > NO_SPAN_MM).toList());
        }
        return left;
    }
}
