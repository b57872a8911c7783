package secondbolt.worksheet;

import java.util.ArrayList;
import java.util.List;

/**
 * What a maker should read of a topic.
 *
 * @param findings what she should know before she cuts
 * @param assumed what was not written and therefore assumed
 * @param open what stays open because she does not know it yet
 */
public record Notes(List<Finding> findings, List<Assumed> assumed, List<Open> open) {
    /** Nothing to read. */
    public static final Notes NONE = new Notes(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Notes {
        findings = List.copyOf(findings);
        assumed = List.copyOf(assumed);
        open = List.copyOf(open);
    }

    /** The same with more that stays open. */
    public Notes leaving(List<Open> more) {
        List<Open> all = new ArrayList<>(open);
        all.addAll(more);
        return new Notes(findings, assumed, all);
    }
}
