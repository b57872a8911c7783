package secondbolt.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.shape.Box;

/** Lays pieces on shared pages: small ones on pages for a printer at home, all on a large one. */
final class PagePacking {
    /**
     * What every paper of A4 or larger and Letter has inside the margins, less two in a hundred for
     * a printer that prints too large; so the same pieces share a page on any paper.
     *
     * <p>Derived: the part that A4 and Letter share is 210 by 279.4 mm; less 10 mm all round and
     * two in a hundred.
     */
    static final double ACROSS_MM = 186;

    /** Derived: likewise along. */
    static final double ALONG_MM = 254;

    /** Derived: a roll of 36 in, less 10 mm on both sides. */
    static final double LARGE_ACROSS_MM = Length.ofInches(36, 1).millimetres() - 20;

    private static final Comparator<SharedPage> MOST_PIECES_FEWEST_TURNED =
            Comparator.comparingInt((SharedPage page) -> -page.pieces().size())
                    .thenComparingLong(SharedPage::turned);

    private PagePacking() {}

    /**
     * A page of pieces.
     *
     * @param acrossMm its width
     * @param alongMm its height
     * @param pieces what lies on it
     */
    record SharedPage(double acrossMm, double alongMm, List<Laid> pieces) {
        SharedPage {
            pieces = List.copyOf(pieces);
        }

        private long turned() {
            return pieces.stream().filter(laid -> laid.spot().isTurned()).count();
        }
    }

    /**
     * A piece on a page.
     *
     * @param number which piece
     * @param spot where its frame lies
     */
    record Laid(int number, Skyline.Spot spot) {}

    /** Whether a frame fits on a page, upright or turned. */
    static boolean fits(Box frame) {
        double shorter = Math.min(frame.widthMm(), frame.heightMm());
        double longer = Math.max(frame.widthMm(), frame.heightMm());
        return shorter <= ACROSS_MM && longer <= ALONG_MM;
    }

    /**
     * The pages for these frames, each of which {@link #fits}: every page, upright or turned, takes
     * in order what still has room.
     */
    static List<SharedPage> small(List<Box> frames) {
        List<SharedPage> pages = new ArrayList<>();
        List<Integer> left = new ArrayList<>(IntStream.range(0, frames.size()).boxed().toList());
        while (!left.isEmpty()) {
            SharedPage fuller =
                    Stream.of(Skyline.Turns.values())
                            .flatMap(
                                    turns ->
                                            Stream.of(
                                                    filled(
                                                            ACROSS_MM, ALONG_MM, turns, left,
                                                            frames),
                                                    filled(
                                                            ALONG_MM, ACROSS_MM, turns, left,
                                                            frames)))
                            .min(MOST_PIECES_FEWEST_TURNED)
                            .orElseThrow();
            if (fuller.pieces().isEmpty()) {
                throw new IllegalArgumentException("a frame must fit on a page: " + frames);
            }
            fuller.pieces().forEach(laid -> left.remove(Integer.valueOf(laid.number())));
            pages.add(fuller);
        }
        return pages;
    }

    private static SharedPage filled(
            double acrossMm,
            double alongMm,
            Skyline.Turns turns,
            List<Integer> numbers,
            List<Box> frames) {
        Skyline strip = new Skyline(acrossMm, alongMm, turns);
        List<Laid> laid = new ArrayList<>();
        numbers.forEach(
                i -> strip.lay(frames.get(i)).ifPresent(spot -> laid.add(new Laid(i, spot))));
        return new SharedPage(acrossMm, alongMm, laid);
    }

    /** One page for all frames, as wide as a plotter's roll or the narrowest that holds them. */
    static SharedPage large(List<Box> frames) {
        double acrossMm =
                frames.stream()
                        .mapToDouble(frame -> Math.min(frame.widthMm(), frame.heightMm()))
                        .reduce(LARGE_ACROSS_MM, Math::max);
        return Stream.of(Skyline.Turns.values())
                .map(turns -> large(acrossMm, turns, frames))
                .reduce((a, b) -> b.alongMm() < a.alongMm() ? b : a)
                .orElseThrow();
    }

    private static SharedPage large(double acrossMm, Skyline.Turns turns, List<Box> frames) {
        List<Integer> longestFirst =
                IntStream.range(0, frames.size())
                        .boxed()
                        .sorted(Comparator.comparingDouble(i -> -longerMm(frames.get(i))))
                        .toList();
        List<Laid> laid =
                filled(acrossMm, Double.POSITIVE_INFINITY, turns, longestFirst, frames).pieces();
        return new SharedPage(
                furthestMm(laid, Box::rightMm), furthestMm(laid, Box::bottomMm), laid);
    }

    private static double furthestMm(List<Laid> laid, ToDoubleFunction<Box> side) {
        return laid.stream().map(l -> l.spot().box()).mapToDouble(side).max().orElse(0);
    }

    private static double longerMm(Box frame) {
        return Math.max(frame.widthMm(), frame.heightMm());
    }
}
