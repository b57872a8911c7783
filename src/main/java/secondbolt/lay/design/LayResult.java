package secondbolt.lay.design;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.garment.Role;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;
import secondbolt.worksheet.Finding;

/**
 * All designs worked out.
 *
 * @param plan as the maker wrote it
 * @param made the design the notebook works out
 * @param others the other designs, looked at quickly
 * @param together every two designs that fit each by itself, made both
 * @param remedies what was tried because not all pieces fit
 * @param log what is wrong with what is cut so far
 * @param lacking how much longer the largest cloth of a role would have to be for all pieces of the
 *     design, where each has room alone but not all have it together
 * @param cloths all there are
 * @param open names of cloths whose size or shrinkage is not known
 */
public record LayResult(
        LayPlan plan,
        DesignLay made,
        List<DesignLay> others,
        List<DesignPair> together,
        List<Remedy> remedies,
        List<Finding> log,
        Map<Role, Length> lacking,
        List<ClothResult> cloths,
        List<String> open) {
    /** Copies the lists. */
    public LayResult {
        others = List.copyOf(others);
        together = List.copyOf(together);
        remedies = List.copyOf(remedies);
        log = List.copyOf(log);
        lacking = Map.copyOf(lacking);
        cloths = List.copyOf(cloths);
        open = List.copyOf(open);
    }

    /** All designs, the chosen one first. */
    public List<DesignLay> designs() {
        return Stream.concat(Stream.of(made), others.stream()).toList();
    }

    /**
     * The cloths whose size or shrinkage must be known before it can be told whether a design fits:
     * those of a role that it has pieces of, and no cloth to lay them on.
     */
    public List<ClothResult> waitsFor(DesignLay design) {
        List<Role> laid = design.stocks().stream().map(StockLay::role).toList();
        List<Role> wanted = design.bolts().stream().map(BoltLength::role).distinct().toList();
        return cloths.stream()
                .filter(cloth -> cloth.finished().isEmpty())
                .filter(cloth -> wanted.contains(cloth.cloth().textile().roleOrMain()))
                .filter(cloth -> !laid.contains(cloth.cloth().textile().roleOrMain()))
                .toList();
    }

    /**
     * Two designs made from the same cloth.
     *
     * @param first its name
     * @param second its name
     * @param stocks their lays, by role; empty if there is plainly not so much cloth
     * @param remnants what stays over of each of these cloths
     */
    public record DesignPair(
            String first, String second, List<StockLay> stocks, Remnants remnants) {
        /** Copies the lists. */
        public DesignPair {
            stocks = List.copyOf(stocks);
        }

        /** Whether both can be made. */
        public boolean fits() {
            return !stocks.isEmpty() && stocks.stream().allMatch(StockLay::fits);
        }
    }

    /**
     * Something that was tried because not all pieces fit.
     *
     * @param role of the cloth
     * @param words what was tried
     * @param leftOver what is left out then; none if it helps
     */
    public record Remedy(Role role, String words, List<String> leftOver) {
        /** Copies the list. */
        public Remedy {
            leftOver = List.copyOf(leftOver);
        }
    }
}
