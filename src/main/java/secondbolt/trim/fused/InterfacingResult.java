package secondbolt.trim.fused;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.plan.Interfacing;
import secondbolt.measure.ClothWeight;
import secondbolt.prepare.heat.Heat;
import secondbolt.prepare.heat.IronHeat;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.state.CareLabel;

/**
 * The interfacing worked out.
 *
 * @param interfacing as the maker wrote it
 * @param isWritten whether she wrote of it at all
 * @param pieces that are cut of it
 * @param small those of them that are fused in one block, if there are several
 * @param bolts how long it must be, by its width
 * @param own the names of cloths of hers that serve as interfacing
 * @param cloths what it is laid on
 */
public record InterfacingResult(
        Interfacing interfacing,
        boolean isWritten,
        List<StiffenedPiece> pieces,
        List<StiffenedPiece> small,
        List<BoltLength> bolts,
        List<String> own,
        List<OnCloth> cloths) {
    private static final Comparator<Heat> LEAST_FIRST =
            Comparator.comparing(heat -> heat.iron().map(IronHeat::dots).orElse(0));

    /** Copies the lists. */
    public InterfacingResult {
        pieces = List.copyOf(pieces);
        small = List.copyOf(small);
        bolts = List.copyOf(bolts);
        own = List.copyOf(own);
        cloths = List.copyOf(cloths);
    }

    /**
     * A cloth that is stiffened.
     *
     * @param name the maker's name for it
     * @param fibre if it is known better than by a guess
     * @param isGuessed whether it is only guessed
     * @param label what its care label says, which comes before its fibre
     * @param weight as it is when it is sewn, if known
     * @param hasNap whether it has a pile or may have one
     */
    public record OnCloth(
            String name,
            Optional<Fibre> fibre,
            boolean isGuessed,
            CareLabel label,
            Optional<ClothWeight> weight,
            boolean hasNap) {
        /** How hot it may be pressed; nothing if that is not known. */
        public Optional<Heat> heat() {
            return fibre.filter(f -> !f.hasAny(kind -> kind == FibreKind.OTHER))
                    .map(f -> Heat.of(Optional.of(f), label));
        }
    }

    /** How hot it may be pressed on all its cloths; nothing if that is not known of one. */
    public Optional<Heat> heat() {
        boolean isKnown =
                !cloths.isEmpty() && cloths.stream().allMatch(cloth -> cloth.heat().isPresent());
        return isKnown
                ? cloths.stream().flatMap(cloth -> cloth.heat().stream()).min(LEAST_FIRST)
                : Optional.empty();
    }

    /** Whether any piece is pressed onto its cloth. */
    public boolean isFused() {
        return interfacing.isFusible() && !pieces.isEmpty();
    }

    /** Whether it is held by stitches; not while its kind is not told. */
    public boolean isSewnIn() {
        return interfacing.kind().filter(Interfacing.Kind.SEWN_IN::equals).isPresent()
                && !pieces.isEmpty();
    }
}
