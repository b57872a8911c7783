package secondbolt.draw.sheet;

import java.util.ArrayList;
import java.util.List;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/** Lays slices one below the other, on as many pages as they need; nothing is cut off. */
final class Flow {
    private static final double NOTHING_MM = 1e-6;

    private Flow() {}

    /** Slices that keep together come on one page; only what no page can hold is parted. */
    static List<Sketch> pages(List<Slice> slices, Box live) {
        List<Sketch> pages = new ArrayList<>(List.of(new Sketch()));
        double room = live.heightMm() + NOTHING_MM;
        double used = 0;
        for (List<Slice> together : groups(slices)) {
            double height = together.stream().mapToDouble(Slice::heightMm).sum();
            boolean turnsFirst = height <= room && used + height > room;
            for (Slice slice : together) {
                if (used > 0 && (turnsFirst || used + slice.heightMm() > room)) {
                    pages.add(new Sketch());
                    used = 0;
                }
                turnsFirst = false;
                Point leftTop = new Point(live.leftMm(), live.topMm() + used);
                slice.painter().paint(pages.get(pages.size() - 1), leftTop);
                used += slice.heightMm();
            }
        }
        return pages;
    }

    private static List<List<Slice>> groups(List<Slice> slices) {
        List<List<Slice>> groups = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < slices.size(); i++) {
            if (!slices.get(i).keepsNext() || i == slices.size() - 1) {
                groups.add(slices.subList(from, i + 1));
                from = i + 1;
            }
        }
        return groups;
    }
}
