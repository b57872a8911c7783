package secondbolt.fit.made;

import java.util.List;
import secondbolt.fit.result.FitResult;

/**
 * What the finished garment measures, as far as its pieces are drawn.
 *
 * @param lengths how long it is
 * @param girths how far round it goes
 */
public record MadeMeasures(List<Made> lengths, List<Made> girths) {
    /** Copies the lists. */
    public MadeMeasures {
        lengths = List.copyOf(lengths);
        girths = List.copyOf(girths);
    }

    /** Of a pattern, altered. */
    public static MadeMeasures of(FitResult result) {
        return new MadeMeasures(new MadeLengths(result).all(), new MadeGirths(result).all());
    }
}
