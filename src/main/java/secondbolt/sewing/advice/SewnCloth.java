package secondbolt.sewing.advice;

import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.value.Answer;
import secondbolt.garment.Role;
import secondbolt.measure.ClothWeight;
import secondbolt.textile.Textile;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;

/**
 * A cloth as the needle meets it.
 *
 * @param name the maker's
 * @param role what it is for
 * @param weight by area once it is washed, or else as measured; nothing if it is not known
 * @param isKnit whether it stretches under the hand
 * @param fibre what it is made of, if known
 */
public record SewnCloth(
        String name,
        Role role,
        Optional<ClothWeight> weight,
        boolean isKnit,
        Optional<Fibre> fibre) {
    /** Up to so many grams by the square metre a cloth is light. Source: a shop's article. */
    private static final double LIGHT_G = 150;

    /** The cloths that are sewn for themselves, in the maker's order. */
    public static List<SewnCloth> of(List<ClothResult> cloths) {
        return cloths.stream()
                .filter(cloth -> !cloth.cloth().textile().roleOrMain().isBetween())
                .map(SewnCloth::of)
                .toList();
    }

    private static SewnCloth of(ClothResult cloth) {
        Textile textile = cloth.cloth().textile();
        ClothResult.Heaviness heavy = cloth.heaviness();
        return new SewnCloth(
                cloth.name(),
                textile.roleOrMain(),
                heavy.washedWeight().or(heavy::weight),
                textile.stretchOrNone().isAny(),
                textile.fibre().flatMap(Answer::toOptional));
    }

    /** Whether it is known to be heavier than a light cloth. */
    public boolean isMoreThanLight() {
        return weight.filter(w -> w.gramsPerSquareMetre() > LIGHT_G).isPresent();
    }

    /** Whether it is mostly wool or other hair. */
    public boolean isWool() {
        return fibre.filter(
                        f ->
                                f.shareOf(kind -> kind.family() == FibreKind.Family.HAIR).fraction()
                                        > 0.5)
                .isPresent();
    }

    boolean isMain() {
        return role == Role.MAIN;
    }
}
