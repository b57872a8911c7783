package secondbolt.dye.recipe;

import java.util.Collection;
import java.util.Optional;
import secondbolt.dye.plan.Heat;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind.Family;

/**
 * What of the cloths in a bath is tender.
 *
 * @param hasSilk silk
 * @param hasHair wool or other hair
 * @param hasElastane elastane
 * @param hasCellulose cotton, linen, viscose, which salt drives the dye on to
 */
public record Tender(boolean hasSilk, boolean hasHair, boolean hasElastane, boolean hasCellulose) {
    /** Silk is never boiled. Source: dyer's notes on acid dye, 2019. */
    public static final Heat SILK = Heat.ofFahrenheit(186);

    /** Nor is wool. Source: the same. */
    public static final Heat WOOL = Heat.ofFahrenheit(200);

    /** Of cloths made of these. */
    public static Tender of(Collection<Fibre> fibres) {
        return new Tender(
                has(fibres, Family.SILK),
                has(fibres, Family.HAIR),
                has(fibres, Family.ELASTANE),
                has(fibres, Family.PLANT) || has(fibres, Family.REGENERATED));
    }

    private static boolean has(Collection<Fibre> fibres, Family family) {
        return fibres.stream().anyMatch(f -> f.hasAny(kind -> kind.family() == family));
    }

    /** Whether alkali harms it. */
    public boolean isProtein() {
        return hasSilk || hasHair;
    }

    /** The hottest it bears, if it does not bear the boil. */
    public Optional<Heat> ceiling() {
        return hasSilk ? Optional.of(SILK) : hasHair ? Optional.of(WOOL) : Optional.empty();
    }
}
