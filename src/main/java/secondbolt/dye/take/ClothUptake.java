package secondbolt.dye.take;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import secondbolt.dye.plan.DyeClass;
import secondbolt.measure.Share;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;

/**
 * What a class of dye does on a cloth.
 *
 * @param kind the class
 * @param fibre what the cloth is made of
 * @param byFibre what it does on each of its fibres, in their order
 */
public record ClothUptake(DyeClass kind, Fibre fibre, Map<FibreKind, Uptake> byFibre) {
    /** Copies the map in order. */
    public ClothUptake {
        byFibre = Collections.unmodifiableMap(new LinkedHashMap<>(byFibre));
    }

    /** What a class does on a cloth of these fibres. */
    public static ClothUptake of(DyeClass kind, Fibre fibre) {
        Map<FibreKind, Uptake> byFibre = new LinkedHashMap<>();
        fibre.shares()
                .keySet()
                .forEach(one -> byFibre.put(one, UptakeTable.of(kind, one.family())));
        return new ClothUptake(kind, fibre, byFibre);
    }

    /** The share of the cloth that dye is weighed for, from nothing to the whole. */
    public Share taking() {
        return fibre.shareOf(one -> byFibre.get(one).isColoured());
    }

    /** The share that takes without a condition. */
    private Share taker() {
        return shareOf(Uptake.Grade.TAKES);
    }

    private Share shareOf(Uptake.Grade grade) {
        return fibre.shareOf(one -> byFibre.get(one).grade() == grade);
    }

    /** Whether it harms a fibre of the cloth. */
    public boolean harms() {
        return hasAny(Uptake.Grade.HARMS);
    }

    /** Whether it takes on none of its fibres. */
    public boolean takesNowhere() {
        return byFibre.values().stream().noneMatch(Uptake::isColoured);
    }

    /** Whether one of its fibres takes partly, or under a condition. */
    public boolean hasCondition() {
        return hasAny(Uptake.Grade.PARTLY);
    }

    private boolean hasAny(Uptake.Grade grade) {
        return byFibre.values().stream().anyMatch(uptake -> uptake.grade() == grade);
    }

    /** The rough word for what is seen. */
    public SeenColour seen() {
        return SeenColour.of(taking());
    }

    /** Each fibre that is like that, with why: {@code wool: its alkali harms wool (source)}. */
    public String why(Predicate<Uptake> like) {
        return byFibre.entrySet().stream()
                .filter(entry -> like.test(entry.getValue()))
                .map(
                        entry ->
                                entry.getKey().word()
                                        + " "
                                        + entry.getValue().told()
                                        + " ("
                                        + entry.getValue().source()
                                        + ")")
                .collect(Collectors.joining("; "));
    }

    /** The class that takes on the largest share without harm, the simplest first; none may. */
    public static Optional<DyeClass> better(Fibre fibre) {
        return Arrays.stream(DyeClass.values())
                .filter(kind -> kind != DyeClass.VAT)
                .map(kind -> of(kind, fibre))
                .filter(uptake -> !uptake.harms() && !uptake.takesNowhere())
                .min(
                        Comparator.comparing(ClothUptake::taker)
                                .thenComparing(ClothUptake::taking)
                                .reversed()
                                .thenComparing(ClothUptake::kind))
                .map(ClothUptake::kind);
    }
}
