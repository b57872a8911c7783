package secondbolt.dye.bath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;

/** Shares parts out over as few baths as hold them, as evenly by dry mass as they allow. */
final class Loads {
    private Loads() {}

    /**
     * The loads, each no heavier than the most.
     *
     * <p>The heaviest part goes first, each into the bath that is lightest so far; if a bath then
     * holds too much, one more is taken. With as many baths as parts each has its own, so that
     * ends.
     *
     * @param most what one bath holds, dry; no part is heavier
     */
    static List<List<Part>> of(List<Part> parts, Mass most) {
        int count = Math.max(1, Load.sum(parts, Part::dry).of(most).roundedUp());
        while (count < parts.size()) {
            List<List<Part>> loads = even(parts, count);
            if (loads.stream().allMatch(load -> fits(load, most))) {
                return loads;
            }
            count++;
        }
        return even(parts, Math.min(count, parts.size()));
    }

    private static boolean fits(List<Part> load, Mass most) {
        return Load.sum(load, Part::dry).compareTo(most) <= 0;
    }

    private static List<List<Part>> even(List<Part> parts, int count) {
        List<List<Part>> loads = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            loads.add(new ArrayList<>());
        }
        List<Part> heaviestFirst = new ArrayList<>(parts);
        heaviestFirst.sort(Comparator.comparing(Part::dry).reversed());
        for (Part part : heaviestFirst) {
            loads.stream()
                    .min(Comparator.comparing(load -> Load.sum(load, Part::dry)))
                    .orElseThrow()
                    .add(part);
        }
        return loads.stream().filter(load -> !load.isEmpty()).map(List::copyOf).toList();
    }

    /** The mass that a bath of so much holds at a ratio. */
    static Mass holds(Share litres, Share ratio) {
        return Mass.KILOGRAM.times(litres.dividedBy(ratio));
    }
}
