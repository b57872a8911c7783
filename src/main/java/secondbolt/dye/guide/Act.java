package secondbolt.dye.guide;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Block;
import secondbolt.task.Hazard;

/**
 * Something to do beside the bath.
 *
 * @param title what
 * @param notes how, and why
 * @param isTimed whether she writes down when it began and ended
 * @param hazards where it can hurt
 */
public record Act(String title, List<String> notes, boolean isTimed, List<Hazard> hazards) {
    private static final List<List<String>> TIMES =
            List.of(List.of("began", "……………", "ended", "……………"));

    /** Copies the lists. */
    public Act {
        notes = List.copyOf(notes);
        hazards = List.copyOf(hazards);
    }

    static Act of(String title, String... notes) {
        return new Act(title, List.of(notes), false, List.of());
    }

    /** The same, with lines for the times. */
    Act timed() {
        return new Act(title, notes, true, hazards);
    }

    /** The same, with where it can hurt. */
    Act minding(Hazard... where) {
        return new Act(title, notes, isTimed, List.of(where));
    }

    /** As it is ticked off, its cautions with it. */
    public Block.Ticks.Item tick() {
        List<String> all = new ArrayList<>(notes);
        hazards.forEach(hazard -> all.add(hazard.words()));
        return Block.Ticks.Item.open(title, all, isTimed ? TIMES : List.of());
    }
}
