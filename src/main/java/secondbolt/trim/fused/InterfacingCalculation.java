package secondbolt.trim.fused;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.cutting.line.TapedCut;
import secondbolt.file.value.Answer;
import secondbolt.garment.Role;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.plan.Interfacing;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Box;
import secondbolt.textile.Textile;
import secondbolt.worksheet.Convention;

/** Which pieces are stiffened, with how much interfacing, and what their cloth bears. */
public final class InterfacingCalculation {
    /** A narrower piece shifts and shrinks out of shape under the iron. */
    public static final Convention SMALL =
            Convention.common(Length.ofInches(4, 1), Length.ofMillimetres(100));

    private InterfacingCalculation() {}

    /**
     * The interfacing of what is made.
     *
     * @param told what the maker tells of it, if anything
     * @param cutting the cutting lines
     * @param made the design that is made, if it was laid
     * @param cloths all there are
     */
    public static InterfacingResult work(
            Optional<Interfacing> told,
            CuttingResult cutting,
            Optional<DesignLay> made,
            List<ClothResult> cloths,
            Tape tape) {
        List<StiffenedPiece> pieces = pieces(cutting, made);
        Length narrow = SMALL.on(tape);
        List<StiffenedPiece> small =
                pieces.stream().filter(piece -> piece.isNarrowerThan(narrow)).toList();
        boolean areSeveral = small.stream().mapToInt(StiffenedPiece::copies).sum() > 1;
        Set<Role> stiffened =
                pieces.stream()
                        .flatMap(piece -> piece.piece().cuts().keySet().stream())
                        .filter(role -> !role.isBetween())
                        .collect(Collectors.toSet());
        return new InterfacingResult(
                told.orElse(Interfacing.NOT_TOLD),
                told.isPresent(),
                pieces,
                areSeveral ? small : List.of(),
                bolts(made),
                own(cloths),
                cloths.stream()
                        .filter(cloth -> stiffened.contains(cloth.cloth().textile().roleOrMain()))
                        .map(InterfacingCalculation::onCloth)
                        .toList());
    }

    private static List<String> own(List<ClothResult> cloths) {
        return cloths.stream()
                .filter(cloth -> cloth.cloth().textile().roleOrMain() == Role.INTERFACING)
                .map(ClothResult::name)
                .toList();
    }

    private static List<BoltLength> bolts(Optional<DesignLay> made) {
        return made.map(DesignLay::bolts).orElse(List.of()).stream()
                .filter(bolt -> bolt.role() == Role.INTERFACING)
                .toList();
    }

    private static List<StiffenedPiece> pieces(CuttingResult cutting, Optional<DesignLay> made) {
        List<StiffenedPiece> pieces = new ArrayList<>();
        for (CutPiece cut : cutting.pieces()) {
            if (isMade(cut.piece(), made)) {
                pieces.add(
                        of(
                                cut.piece(),
                                cut.cut().box(),
                                StiffenedPiece.of(cut.edges(), cut.piece().fold())));
            }
        }
        for (TapedCut taped : cutting.taped()) {
            if (isMade(taped.piece(), made)) {
                pieces.add(of(taped.piece(), taped.half().box(), taped(taped, cutting)));
            }
        }
        return pieces;
    }

    private static StiffenedPiece of(Piece piece, Box box, Map<String, Length> allowances) {
        return new StiffenedPiece(piece, piece.copies(Role.INTERFACING), box, allowances);
    }

    private static Map<String, Length> taped(TapedCut taped, CuttingResult cutting) {
        Map<String, Length> allowances = new LinkedHashMap<>();
        Piece piece = taped.piece();
        for (String edge : piece.shape().edgeNames()) {
            if (piece.fold().filter(edge::equals).isEmpty()) {
                allowances.put(edge, piece.allowance(edge, cutting.allowance()));
            }
        }
        return allowances;
    }

    private static boolean isMade(Piece piece, Optional<DesignLay> made) {
        boolean isUsed =
                made.flatMap(DesignLay::design)
                        .map(design -> design.needs(piece.name()))
                        .orElse(true);
        return isUsed && piece.copies(Role.INTERFACING) > 0;
    }

    private static InterfacingResult.OnCloth onCloth(ClothResult cloth) {
        Textile textile = cloth.cloth().textile();
        boolean isGuessed = textile.knownBy().filter(Textile.KnownBy.GUESS::equals).isPresent();
        return new InterfacingResult.OnCloth(
                cloth.name(),
                textile.fibre().flatMap(Answer::toOptional).filter(fibre -> !isGuessed),
                isGuessed && textile.fibre().flatMap(Answer::toOptional).isPresent(),
                cloth.cloth().state().label(),
                cloth.heaviness().washedWeight().or(() -> cloth.heaviness().weight()),
                textile.isLaidOneWay());
    }
}
