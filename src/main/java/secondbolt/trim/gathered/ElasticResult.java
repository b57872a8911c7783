package secondbolt.trim.gathered;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.trim.plan.CountedEdge;
import secondbolt.trim.plan.Elastic;
import secondbolt.wearer.BodyMeasure;

/**
 * An elastic worked out.
 *
 * @param name the maker's name for it
 * @param elastic as she wrote it
 * @param body what it sits on, if the wearer's is known
 * @param passes what it is pulled over, if the wearer's is known
 * @param loop how long it is round at rest, joined; nothing if that is not known
 * @param overlap of its ends
 * @param sides what each published rule gives
 * @param casing how wide its casing is
 * @param cloth how long the edges are that it draws in, after the alterations; if told
 * @param clothReach how long they become at most, if the cloth stretches
 * @param edges each of them
 */
public record ElasticResult(
        String name,
        Elastic elastic,
        Optional<Length> body,
        Optional<Length> passes,
        Optional<Length> loop,
        Length overlap,
        List<Side> sides,
        Casing casing,
        Optional<Length> cloth,
        Optional<Length> clothReach,
        List<DrawnIn> edges) {
    /** What a body has two of. */
    private static final Set<BodyMeasure> LIMBS =
            EnumSet.of(
                    BodyMeasure.UPPER_ARM,
                    BodyMeasure.WRIST,
                    BodyMeasure.THIGH,
                    BodyMeasure.KNEE,
                    BodyMeasure.CALF,
                    BodyMeasure.ANKLE);

    /** Copies the lists. */
    public ElasticResult {
        sides = List.copyOf(sides);
        edges = List.copyOf(edges);
    }

    /**
     * What one published rule gives.
     *
     * @param rule which
     * @param longest loop
     * @param shortest loop
     */
    public record Side(ElasticLength rule, Length longest, Length shortest) {}

    /**
     * An edge that is drawn in.
     *
     * @param edge which
     * @param count how often it is counted
     * @param rounds how often the garment has it
     * @param room how much cloth lies outside its line
     * @param hem whether a hem gives that
     * @param isOpen whether it is not known if the alterations changed it
     */
    public record DrawnIn(
            PieceEdge edge, int count, int rounds, Length room, boolean hem, boolean isOpen)
            implements CountedEdge {}

    /** How long it is cut. */
    public Optional<Length> cut() {
        return loop.map(round -> round.plus(overlap));
    }

    /** To what share of its rest a loop must stretch to pass; nothing if either is not known. */
    public Optional<Share> mustReach(Optional<Length> round) {
        return round.flatMap(rest -> passes.map(girth -> Share.left(girth.orLonger(rest), rest)));
    }

    /** How long a loop becomes at most when it is pulled. */
    public Optional<Length> reaches() {
        return loop.flatMap(round -> elastic.stretched().map(round::times));
    }

    /** Whether it passes what it must pass; nothing if that is not known. */
    public Optional<Boolean> isPassing() {
        return reaches().flatMap(most -> passes.map(girth -> !most.isShorterThan(girth)));
    }

    /**
     * How many are cut: one, but as many as the garment has wrists or ankles where the edge of one
     * is written.
     */
    public int loops() {
        boolean isLimb = elastic.round().filter(LIMBS::contains).isPresent();
        return isLimb
                ? edges.stream()
                        .filter(edge -> edge.count() > 0 && edge.rounds() % edge.count() == 0)
                        .mapToInt(edge -> edge.rounds() / edge.count())
                        .min()
                        .orElse(1)
                : 1;
    }

    /** How much must be bought at least, for one loop, if anything is known of it. */
    public Optional<Length> toBuy() {
        return cut().or(() -> body.map(round -> round.plus(overlap)));
    }
}
