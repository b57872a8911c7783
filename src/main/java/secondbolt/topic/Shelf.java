package secondbolt.topic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What steps came to, with what they read; what a run did not use is forgotten at its end. */
final class Shelf {
    private final Map<String, List<Kept>> kept = new HashMap<>();
    private final Set<Kept> used = new HashSet<>();

    /** What a step came to, and what it read, in order. */
    static final class Kept {
        private final List<Read> reads;
        private final Outcome<?> outcome;

        Kept(List<Read> reads, Outcome<?> outcome) {
            this.reads = List.copyOf(reads);
            this.outcome = outcome;
        }

        List<Read> reads() {
            return reads;
        }

        Outcome<?> outcome() {
            return outcome;
        }
    }

    void begin() {
        used.clear();
    }

    void end() {
        kept.values().forEach(list -> list.retainAll(used));
    }

    /** What a topic came to when it read what it would read now. */
    Optional<Outcome<?>> find(Topic<?> topic, WorkingOut run, Supposed supposed) {
        // A reading may ask for this very topic under a supposition, which is then kept as well.
        for (Kept one : List.copyOf(kept.getOrDefault(topic.name().word(), List.of()))) {
            if (one.reads().stream().allMatch(read -> read.isAsBefore(topic, run, supposed))) {
                used.add(one);
                return Optional.of(one.outcome());
            }
        }
        return Optional.empty();
    }

    void keep(Topic<?> topic, List<Read> reads, Outcome<?> outcome) {
        Kept one = new Kept(reads, outcome);
        kept.computeIfAbsent(topic.name().word(), name -> new ArrayList<>()).add(one);
        used.add(one);
    }
}
