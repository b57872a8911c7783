package secondbolt.trim.strip;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;

/**
 * Strips cut for one wish.
 *
 * @param wish what they are cut for
 * @param strips how long each is at its shorter side, in the order they are cut
 * @param whole how many of them, the first ones, run from one side of the cloth to the other
 * @param perJoin what each join takes of the length
 */
public record StripCut(StripWish wish, List<Length> strips, int whole, Length perJoin) {
    /** Copies the strips. */
    public StripCut {
        strips = List.copyOf(strips);
    }

    /** How many joins make one strip of them. */
    public int joins() {
        return Math.max(0, strips.size() - 1);
    }

    /** How long the whole strips are together, before joins. */
    public Length wholeTogether() {
        return sum(strips.subList(0, whole));
    }

    /** What whole strips alone lack of the need, before joins; nothing if they reach. */
    public Optional<Length> wholeLack() {
        return lack(wholeTogether());
    }

    /** How long all of them are once they are joined. */
    public Length joined() {
        return sum(strips).minus(perJoin.times(joins()));
    }

    /** What all of them lack of the need once they are joined; nothing if they reach. */
    public Optional<Length> lack() {
        return lack(joined());
    }

    private Optional<Length> lack(Length have) {
        return Optional.of(wish.need().minus(have)).filter(Length::isPositive);
    }

    private static Length sum(List<Length> lengths) {
        return lengths.stream().reduce(Length.ZERO, Length::plus);
    }
}
