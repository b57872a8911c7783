package secondbolt.hem.turned;

import java.util.Collection;
import java.util.Optional;
import secondbolt.file.value.Answer;
import secondbolt.measure.ClothWeight;
import secondbolt.textile.Cloth;
import secondbolt.textile.Textile;
import secondbolt.textile.extent.Extent;

/** Which cloths are heavy. */
public final class HeavyCloth {
    /** Source: a shop's article on cloth weights: heavy is over 350 g/m². */
    private static final double HEAVY_G_PER_M2 = 350;

    private HeavyCloth() {}

    /** Whether a cloth is; not while its weight is not known. */
    public static boolean is(Cloth cloth) {
        Textile textile = cloth.textile();
        Optional<ClothWeight> told = textile.weight().flatMap(Answer::toOptional);
        return told.or(() -> weighed(cloth))
                .filter(w -> w.gramsPerSquareMetre() > HEAVY_G_PER_M2)
                .isPresent();
    }

    /** Whether any cloth that one of these edges is cut of is heavy. */
    static boolean isAny(Collection<HemEdge> edges, Collection<Cloth> cloths) {
        return cloths.stream()
                .filter(HeavyCloth::is)
                .map(cloth -> cloth.textile().roleOrMain())
                .anyMatch(role -> edges.stream().anyMatch(e -> e.piece().copies(role) > 0));
    }

    private static Optional<ClothWeight> weighed(Cloth cloth) {
        return cloth.textile()
                .mass()
                .flatMap(Answer::toOptional)
                .flatMap(mass -> cloth.extent().toOptional().map(Extent::area).map(mass::over));
    }
}
