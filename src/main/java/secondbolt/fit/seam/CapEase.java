package secondbolt.fit.seam;

import java.util.List;
import java.util.Optional;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Convention;

/**
 * How much longer a sleeve's cap is than the armhole it is sewn into.
 *
 * @param cap the side of the join that is the cap
 * @param armhole the other
 * @param isCapFirst whether the cap is written first
 * @param ofEach by how much each cap is longer; negative if it is shorter
 * @param ratio how many times the armhole the cap is
 */
public record CapEase(
        EdgeSum cap, EdgeSum armhole, boolean isCapFirst, Length ofEach, double ratio) {
    private static final String SOURCE = "pattern makers' articles on cap ease";

    /** What the articles say, for the list of sources on a page; in inches, as they do. */
    public static final List<String> SOURCES =
            List.of(
                    "pattern makers' articles on cap ease: at least ½ in",
                    "pattern makers' articles on cap ease: ½ to ¾ in in soft cloth, about 1⅜ in in"
                            + " a woven",
                    "pattern makers' articles on cap ease: 1 to 1½ in in many older patterns",
                    "pattern makers' articles on cap ease: one author wants none");

    /** The least that is usual. */
    public static final Convention LEAST =
            new Convention(Length.ofInches(1, 2), Length.ofMillimetres(12), SOURCE);

    /** The most that is usual. */
    public static final Convention MOST =
            new Convention(Length.ofInches(3, 2), Length.ofMillimetres(38), SOURCE);

    /** From here on no cloth can be eased in: twice the most that is usual. */
    public static final Convention FAR =
            Convention.common(Length.ofInches(3, 1), Length.ofMillimetres(76));

    /** The cap's ease in a join as it is after the alterations; nothing if it joins no cap. */
    public static Optional<CapEase> of(SeamCheck check, Pattern pattern) {
        EdgeSum first = check.seam().first().value();
        EdgeSum second = check.seam().second().value();
        boolean isFirst = isCap(first, pattern);
        if (isFirst == isCap(second, pattern) || !check.isKnown()) {
            return Optional.empty();
        }
        EdgeSum cap = isFirst ? first : second;
        Length ofCap = isFirst ? check.after().first() : check.after().second();
        Length ofArmhole = isFirst ? check.after().second() : check.after().first();
        return Optional.of(
                new CapEase(
                        cap,
                        isFirst ? second : first,
                        isFirst,
                        halves(ofCap.minus(ofArmhole), cap, pattern),
                        ofCap.millimetres() / ofArmhole.millimetres()));
    }

    private static boolean isCap(EdgeSum side, Pattern pattern) {
        return side.terms().stream()
                .anyMatch(t -> pattern.meanings().serves(t.piece(), t.edge().edge(), Serves.CAP));
    }

    /** A cap drawn half on the fold counts twice to be whole. */
    private static Length halves(Length all, EdgeSum cap, Pattern pattern) {
        int halves = 2;
        for (EdgeSum.Term term : cap.terms()) {
            boolean isHalf = pattern.find(term.piece()).flatMap(Piece::fold).isPresent();
            halves = Math.max(halves, isHalf ? term.count() : 2 * term.count());
        }
        return all.times(2).dividedBy(halves);
    }

    /** Whether the cap is shorter than its armhole. */
    public boolean isShorter() {
        return ofEach.isNegative();
    }

    /** Whether it is longer by more than is usual. */
    public boolean isMuch(Tape tape) {
        return ofEach.isLongerThan(MOST.on(tape));
    }

    /** Whether it is longer by more than can be eased in. */
    public boolean isFar(Tape tape) {
        return ofEach.isLongerThan(FAR.on(tape));
    }
}
