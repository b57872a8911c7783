package secondbolt.dye.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;

/**
 * What goes into a bath of one class of dye: of each thing all published figures side by side, or
 * hers alone.
 *
 * @param kind the class
 * @param lines what goes in
 * @param heats how hot
 * @param times how long
 */
public record Recipe(
        DyeClass kind, List<RecipeLine> lines, List<BathHeat> heats, List<BathTime> times) {
    /** Copies the lists. */
    public Recipe {
        lines = List.copyOf(lines);
        heats = List.copyOf(heats);
        times = List.copyOf(times);
    }

    /**
     * The recipe for what a maker wrote.
     *
     * @param kind the class she wrote
     * @param tender what of the cloth is tender
     */
    public static Recipe of(DyePlan plan, DyeClass kind, Tender tender) {
        return HerRecipe.over(published(plan.dye().depth(), kind, tender), plan);
    }

    /** What is published, whatever her leaflet says; no lines where the depth is not known. */
    public static Recipe published(Optional<Depth> depth, DyeClass kind, Tender tender) {
        return switch (kind) {
            case REACTIVE -> ReactiveRecipe.of(depth, tender);
            case DIRECT -> DirectRecipe.of(depth, tender);
            case ACID -> AcidRecipe.of(depth, tender);
            case BLEND -> BlendRecipe.of(tender);
            case DISPERSE, VAT, BASIC -> new Recipe(kind, List.of(), List.of(), List.of());
        };
    }

    /** The lines of one thing. */
    public List<RecipeLine> of(Substance what) {
        return lines.stream().filter(line -> line.what() == what).toList();
    }

    /** Whether a thing goes in by any of the sources. */
    public boolean has(Substance what) {
        return of(what).stream().anyMatch(line -> !line.isNothing());
    }

    /** Whether sources disagree on how much of a thing goes in. */
    public boolean isDisputed(Substance what) {
        return of(what).size() > 1;
    }

    /**
     * The same with these lines in place of its own for the same thing; an acid of hers replaces
     * the vinegar.
     */
    Recipe replacing(List<RecipeLine> hers) {
        List<RecipeLine> all = new ArrayList<>();
        boolean hasAcid = hers.stream().anyMatch(line -> line.what() == Substance.ACID);
        for (Substance what : Substance.values()) {
            List<RecipeLine> own = hers.stream().filter(line -> line.what() == what).toList();
            if (!(hasAcid && what == Substance.VINEGAR)) {
                all.addAll(own.isEmpty() ? of(what) : own);
            }
        }
        return new Recipe(kind, all, heats, times);
    }
}
