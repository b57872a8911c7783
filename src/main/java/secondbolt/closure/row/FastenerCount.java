package secondbolt.closure.row;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.placket.PlacketSpot;

/**
 * How many fasteners a closure takes: as told; more where the largest gap asks for it; the fewest
 * that keep it if none is told.
 *
 * @param spread as written
 * @param spacing places them
 */
record FastenerCount(FastenerSpread spread, ClosureSpacing spacing) {
    /** How many counts are tried for one that leaves no hole to be worked by hand. */
    private static final int CHOICE = 3;

    /** As many as it takes; as told, or 2, where nothing keeps the largest gap. */
    int taken() {
        int told = spread.count().orElse(2);
        if (spread.largestGap().isEmpty()) {
            return told;
        }
        return spacing.fewestLeftOut().stream()
                .map(meets -> keeping(Math.max(2, told), meets))
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(told);
    }

    private Optional<Integer> keeping(int least, List<PlacketSpot> meets) {
        List<Integer> possible =
                IntStream.rangeClosed(least, FastenerSpread.MOST)
                        .filter(count -> spacing.isPossible(count, meets))
                        .limit(CHOICE)
                        .boxed()
                        .toList();
        return possible.stream()
                .filter(count -> spacing.isClear(count, meets))
                .findFirst()
                .or(() -> possible.stream().findFirst());
    }
}
