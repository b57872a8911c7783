package secondbolt.trim;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.garment.Role;
import secondbolt.measure.Tape;
import secondbolt.prepare.heat.Heat;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.trim.fused.InterfacingResult;
import secondbolt.trim.fused.InterfacingResult.OnCloth;
import secondbolt.trim.fused.StiffenedPiece;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know before she buys, cuts and presses interfacing. */
final class InterfacingFindings {
    private static final String SEWN_IN =
            "choose one that is sewn in, `interfacing: {kind: sewn-in}`";

    private final InterfacingResult result;
    private final Tape tape;

    InterfacingFindings(InterfacingResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
    }

    List<Finding> all() {
        Stream<Finding> fused =
                result.isFused()
                        ? result.cloths().stream()
                                .flatMap(
                                        cloth ->
                                                Stream.of(
                                                                unknown(cloth),
                                                                refuses(cloth),
                                                                viscose(cloth),
                                                                pile(cloth))
                                                        .flatMap(Optional::stream))
                        : Stream.empty();
        return Stream.of(
                        noPiece().stream(),
                        fused,
                        result.cloths().stream().flatMap(cloth -> heavier(cloth).stream()),
                        stiff().stream(),
                        block().stream())
                .flatMap(some -> some)
                .toList();
    }

    private Optional<Finding> noPiece() {
        return result.pieces().isEmpty()
                ? Optional.of(
                        about(
                                "interfacing-no-piece",
                                Level.CAUTION,
                                "Interfacing is told of, but no piece is cut of it.",
                                "Write how many of a piece are cut of it, such as `cut: {main: 2,"
                                        + " interfacing: 1}` under `pieces`."))
                : Optional.empty();
    }

    private Optional<Finding> unknown(OnCloth cloth) {
        if (cloth.fibre().isPresent() && cloth.heat().isPresent()) {
            return Optional.empty();
        }
        String found =
                cloth.isGuessed()
                        ? "The fibre of " + cloth.name() + " is only guessed"
                        : "Not every fibre of " + cloth.name() + " is known";
        String remedy =
                cloth.isGuessed()
                        ? "Burn a thread of it first, and write `known by: burn test`; or "
                        : "Find out its `fibre` by the label or by burning a thread; or ";
        return Optional.of(
                about(
                        cloth,
                        "fusible-fibre-unknown",
                        Level.WARNING,
                        found
                                + ", so no heat is told to fuse it with: glue asks for heat that"
                                + " some fibres melt in.",
                        remedy + SEWN_IN + "."));
    }

    private Optional<Finding> refuses(OnCloth cloth) {
        Optional<String> why =
                cloth.fibre()
                        .flatMap(
                                fibre -> {
                                    if (has(fibre, FibreKind.Family.ACETATE)) {
                                        return Optional.of(
                                                "has acetate in it, which is not fused (a household"
                                                        + " sewing page)");
                                    }
                                    boolean isIroned = cloth.heat().flatMap(Heat::iron).isPresent();
                                    if (cloth.heat().isPresent() && !isIroned) {
                                        return Optional.of(
                                                "must not be ironed, as its care label says");
                                    }
                                    return fibre.hasAny(FibreKind.POLYPROPYLENE::equals)
                                            ? Optional.of(
                                                    "has polypropylene in it, which melts before"
                                                            + " the glue holds (from memory)")
                                            : Optional.empty();
                                });
        return why.map(
                words ->
                        about(
                                cloth,
                                "fusible-cloth-refuses",
                                Level.WARNING,
                                "The cloth " + cloth.name() + " " + words + ".",
                                "Do not fuse it: " + SEWN_IN + "."));
    }

    private static boolean has(Fibre fibre, FibreKind.Family family) {
        return fibre.hasAny(kind -> kind.family() == family);
    }

    private Optional<Finding> viscose(OnCloth cloth) {
        return cloth.fibre()
                .filter(fibre -> has(fibre, FibreKind.Family.REGENERATED))
                .map(
                        fibre ->
                                about(
                                        cloth,
                                        "fusible-on-viscose",
                                        Level.CAUTION,
                                        "Some cloth of regenerated cellulose, as "
                                                + cloth.name()
                                                + " has in it, does not take a fusible: it shrinks"
                                                + " or bubbles (a household sewing page).",
                                        "Decide on it only from the cold, washed test piece."));
    }

    private Optional<Finding> pile(OnCloth cloth) {
        return cloth.hasNap()
                ? Optional.of(
                        about(
                                cloth,
                                "fusible-on-pile",
                                Level.CAUTION,
                                "The cloth "
                                        + cloth.name()
                                        + " is laid one way: if that is for a pile, the iron"
                                        + " crushes it, and velvet is not fused (a household sewing"
                                        + " page).",
                                "If it has a pile, "
                                        + SEWN_IN
                                        + "; if it is a print with a top, all is well."))
                : Optional.empty();
    }

    private Optional<Finding> heavier(OnCloth cloth) {
        return result.interfacing()
                .weight()
                .filter(weight -> !result.pieces().isEmpty())
                .filter(weight -> cloth.weight().filter(w -> weight.compareTo(w) >= 0).isPresent())
                .map(
                        weight ->
                                about(
                                        cloth,
                                        "interfacing-not-lighter",
                                        Level.WARNING,
                                        "Interfacing of "
                                                + tape.print(weight)
                                                + " is not lighter than "
                                                + cloth.name()
                                                + " with "
                                                + tape.print(cloth.weight().orElseThrow())
                                                + ": the cloth hangs on it, and not it on the"
                                                + " cloth.",
                                        "Choose one lighter than the cloth (Interfacings, EM014,"
                                                + " Washington State University Extension)."));
    }

    private Optional<Finding> stiff() {
        boolean isCutBack =
                result.interfacing().isStiff()
                        && result.pieces().stream().anyMatch(piece -> !piece.cutBack().isEmpty());
        if (!isCutBack) {
            return Optional.empty();
        }
        String back =
                result.pieces().stream()
                        .map(piece -> piece.name() + " " + InterfacingPage.cutBack(piece, tape))
                        .collect(Collectors.joining("; "));
        return Optional.of(
                about(
                        "interfacing-cut-back",
                        Level.NOTE,
                        "A stiff kind goes into no seam: " + back + ".",
                        "Cut the allowances off the interfacing alone, to the sewing line, before"
                                + " you lay it on the cloth (American Sewing Guild, fusing"
                                + " facts)."));
    }

    private Optional<Finding> block() {
        if (!result.isFused() || result.small().isEmpty() || result.interfacing().isStiff()) {
            return Optional.empty();
        }
        String names =
                result.small().stream().map(StiffenedPiece::name).collect(Collectors.joining(", "));
        return Optional.of(
                about(
                        "fuse-a-block",
                        Level.NOTE,
                        "Small pieces shift and shrink out of shape under the iron: " + names + ".",
                        "If they lie side by side in the lay, cut the cloth round them as one block,"
                                + " fuse that, and cut each on its line when it is cold (American"
                                + " Sewing Guild, fusing facts). Where they lie apart, cut each with"
                                + " what room the lay gives, fuse it and trim it to its line."));
    }

    private static Finding about(
            OnCloth cloth, String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Cloth(cloth.name()), level, text, remedy);
    }

    private static Finding about(String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Stock(Role.INTERFACING), level, text, remedy);
    }
}
