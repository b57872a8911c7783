package secondbolt.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * Lays small pieces on shared pages, in rows, each where the first row has room.
 *
 * <p>The page is what every paper of A4 or larger and Letter has inside the margins, less two in a
 * hundred for a printer that prints too large; so the same pieces share a page on any paper.
 */
final class PagePacking {
    /**
     * Derived: the part that A4 and Letter share is 210 by 279.4 mm; less 10 mm all round and two
     * in a hundred.
     */
    static final double ACROSS_MM = 186;

    /** Derived: likewise along. */
    static final double ALONG_MM = 254;

    private static final double GAP_MM = 4;

    private final List<OpenPage> pages = new ArrayList<>();

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
    }

    /**
     * A piece on a page.
     *
     * @param number which piece
     * @param at where the left top corner of its frame lies
     */
    record Laid(int number, Point at) {}

    private static final class OpenPage {
        private final double acrossMm;
        private final double alongMm;
        private final List<Laid> laid = new ArrayList<>();
        private final List<OpenRow> rows = new ArrayList<>();

        OpenPage(double acrossMm, double alongMm) {
            this.acrossMm = acrossMm;
            this.alongMm = alongMm;
        }

        boolean lay(int number, Box frame) {
            Optional<OpenRow> row =
                    rows.stream()
                            .filter(r -> r.usedMm + frame.widthMm() <= acrossMm)
                            .filter(r -> frame.heightMm() <= r.highMm)
                            .findFirst()
                            .or(() -> newRow(frame));
            row.ifPresent(
                    r -> {
                        laid.add(new Laid(number, new Point(r.usedMm, r.topMm)));
                        r.usedMm += frame.widthMm() + GAP_MM;
                    });
            return row.isPresent();
        }

        private Optional<OpenRow> newRow(Box frame) {
            double topMm =
                    rows.isEmpty()
                            ? 0
                            : rows.get(rows.size() - 1).topMm
                                    + rows.get(rows.size() - 1).highMm
                                    + GAP_MM;
            if (topMm + frame.heightMm() > alongMm || frame.widthMm() > acrossMm) {
                return Optional.empty();
            }
            OpenRow row = new OpenRow(topMm, frame.heightMm());
            rows.add(row);
            return Optional.of(row);
        }
    }

    private static final class OpenRow {
        private final double topMm;
        private final double highMm;
        private double usedMm;

        OpenRow(double topMm, double highMm) {
            this.topMm = topMm;
            this.highMm = highMm;
        }
    }

    /** Whether a frame fits on a page, upright or turned. */
    static boolean fits(Box frame) {
        double shorter = Math.min(frame.widthMm(), frame.heightMm());
        double longer = Math.max(frame.widthMm(), frame.heightMm());
        return shorter <= ACROSS_MM && longer <= ALONG_MM;
    }

    /** The pages for these frames, each of which {@link #fits}. */
    static List<SharedPage> of(List<Box> frames) {
        PagePacking packing = new PagePacking();
        for (int i = 0; i < frames.size(); i++) {
            packing.lay(i, frames.get(i));
        }
        return packing.pages.stream()
                .map(page -> new SharedPage(page.acrossMm, page.alongMm, page.laid))
                .toList();
    }

    private void lay(int number, Box frame) {
        for (OpenPage page : pages) {
            if (page.lay(number, frame)) {
                return;
            }
        }
        OpenPage page =
                frame.widthMm() > ACROSS_MM
                        ? new OpenPage(ALONG_MM, ACROSS_MM)
                        : new OpenPage(ACROSS_MM, ALONG_MM);
        pages.add(page);
        if (!page.lay(number, frame)) {
            throw new IllegalArgumentException("frame must fit on a page, was " + frame);
        }
    }
}
