package secondbolt.draw.paper;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** Lays slices one below the other, on as many pages as they need; nothing is cut off. */
final class Flow {
    private static final double NOTHING_MM = 1e-6;

    private final Box live;
    private final List<Sketch> pages = new ArrayList<>();
    private double usedMm;

    private Flow(Box live) {
        this.live = live;
    }

    static List<Sketch> pages(List<Slice> slices, Box live) {
        Flow flow = new Flow(live);
        flow.pages.add(new Sketch());
        int from = 0;
        while (from < slices.size()) {
            int to = from + 1;
            while (to < slices.size() && slices.get(to - 1).keepsNext()) {
                to++;
            }
            flow.place(slices.subList(from, to));
            from = to;
        }
        return flow.pages;
    }

    /** All on this page, or all on the next; only what no page can hold is parted. */
    private void place(List<Slice> together) {
        double height = together.stream().mapToDouble(Slice::heightMm).sum();
        if (!fits(height) && height <= live.heightMm() && usedMm > 0) {
            turnPage();
        }
        for (Slice slice : together) {
            if (!fits(slice.heightMm()) && usedMm > 0) {
                turnPage();
            }
            Point leftTop = new Point(live.leftMm(), live.topMm() + usedMm);
            slice.painter().paint(pages.get(pages.size() - 1), leftTop);
            usedMm += slice.heightMm();
        }
    }

    private boolean fits(double heightMm) {
        return usedMm + heightMm <= live.heightMm() + NOTHING_MM;
    }

    private void turnPage() {
        pages.add(new Sketch());
        usedMm = 0;
    }
}
