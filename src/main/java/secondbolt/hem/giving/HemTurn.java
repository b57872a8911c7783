package secondbolt.hem.giving;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.hem.plan.Garment;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;

/**
 * When the turn of a hem comes.
 *
 * <p>Published orders disagree: last on skirts (K. H. Watson, Textiles and Clothing, 1907; Every
 * Woman's Encyclopaedia, vol. 1), before the band on straight aprons (Text-Book on Domestic Art;
 * Scientific Sewing and Garment Cutting). Derived: both hold, each for its kind. What is shaped, on
 * the bias or fitted to a wearer is hemmed last; a straight edge that is gathered, before that.
 */
public enum HemTurn {
    /** Last, for its length is judged on what is sewn. */
    LAST,
    /** Straight, and its cloth is gathered above it. */
    BEFORE_GATHERING,
    /** Of a small piece that is sewn onto another whole, such as a patch pocket. */
    BEFORE_SEWN_ON;

    /** A piece is small beside the largest that is hemmed: our own mark. */
    private static final double SMALL = 0.25;

    /** What is measured on a wearer; a garment that is not told may be anything. */
    private static final Set<Garment> FITTED =
            Set.of(
                    Garment.SKIRT,
                    Garment.DRESS,
                    Garment.SHIRT,
                    Garment.BLOUSE,
                    Garment.COAT,
                    Garment.TROUSERS,
                    Garment.SLEEVE);

    /**
     * That of a hem.
     *
     * @param seams of the pattern
     * @param all hems of the garment
     */
    public static HemTurn of(HemResult hem, List<Seam> seams, List<HemResult> all) {
        if (whyLast(hem).isPresent()) {
            return LAST;
        }
        if (isGathered(hem, seams)) {
            return BEFORE_GATHERING;
        }
        return isSewnOn(hem, seams, all) ? BEFORE_SEWN_ON : LAST;
    }

    /** Seams that are not written yet are no sign: a small piece alone is one that is sewn on. */
    private static boolean isSewnOn(HemResult hem, List<Seam> seams, List<HemResult> all) {
        boolean isFree =
                seams.stream()
                        .flatMap(seam -> seam.edges().stream())
                        .noneMatch(edge -> hem.edges().stream().anyMatch(e -> is(e, edge.piece())));
        double largest =
                all.stream()
                        .flatMap(one -> one.edges().stream())
                        .mapToDouble(HemTurn::areaMm2)
                        .max()
                        .orElse(0);
        return isFree && hem.edges().stream().allMatch(e -> areaMm2(e) <= SMALL * largest);
    }

    private static double areaMm2(HemEdge edge) {
        return edge.piece()
                .shape()
                .accept(
                        new PieceShape.Visitor<>() {
                            @Override
                            public Double drawn(PieceShape.Drawn drawn) {
                                return drawn.box().areaMm2();
                            }

                            @Override
                            public Double taped(PieceShape.Taped taped) {
                                return taped.across().millimetres() * taped.along().millimetres();
                            }
                        });
    }

    /** What about a hem asks that it comes last, in a few words. */
    static Optional<String> whyLast(HemResult hem) {
        if (hem.edges().stream().anyMatch(e -> e.piece().grain() == Piece.Grain.BIAS)) {
            return Optional.of("it lies on the bias");
        }
        if (hem.hang().first()) {
            return Optional.of("it drops as it hangs");
        }
        if (hem.edges().stream().anyMatch(HemTurn::isShaped)) {
            return Optional.of("its edge is shaped");
        }
        if (hem.level().isPresent() || hem.hem().garment().filter(FITTED::contains).isPresent()) {
            return Optional.of("its length is judged on the wearer");
        }
        return hem.edges().stream().allMatch(e -> e.turned().isPresent())
                ? Optional.empty()
                : Optional.of("its shape is not known");
    }

    private static boolean isShaped(HemEdge edge) {
        return edge.turned().filter(turned -> !turned.fold().isStraight()).isPresent();
    }

    /** Whether a piece of it is gathered into another. */
    private static boolean isGathered(HemResult hem, List<Seam> seams) {
        return seams.stream()
                .filter(Seam::isGathered)
                .flatMap(seam -> seam.first().value().terms().stream())
                .anyMatch(term -> hem.edges().stream().anyMatch(e -> is(e, term.piece())));
    }

    private static boolean is(HemEdge edge, String piece) {
        return edge.piece().name().equals(piece);
    }
}
