package secondbolt.fit.result;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import secondbolt.file.value.BareLength;
import secondbolt.file.value.Quoted;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Bulge;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * What to write for a seam whose sides are meant to differ as they do.
 *
 * @param check the seam
 * @param pattern it is of
 * @param tape to print with
 */
public record SeamRemedy(SeamCheck check, Pattern pattern, Tape tape) {
    /** An edge so many times as long as its piece is deep is a band's; common practice. */
    private static final int BAND = 4;

    /** The key that makes the seam meet as it is, as an order. */
    public String asMeant() {
        Seam seam = check.seam();
        if (seam.isLapped()) {
            return asLapped();
        }
        if (seam.isGathered()) {
            return gathered();
        }
        return lap().map(join -> "write the join as " + join).orElseGet(this::eased);
    }

    /** The key that makes a plain seam meet by ease, the longer side written first. */
    public String eased() {
        Seam seam = check.seam();
        Length longer = longer();
        return longer.isNegative()
                ? "write the join as `{join: ["
                        + Quoted.of(seam.second().value().toString())
                        + ", "
                        + Quoted.of(seam.first().value().toString())
                        + "], ease: "
                        + BareLength.of(tape, longer.size())
                        + "}`"
                : "write `ease: " + BareLength.of(tape, longer) + "` on this join";
    }

    /** As many times as the first is now what it is sewn to; another can only be measured. */
    private String gathered() {
        Length sewn = check.after().second().minus(check.seam().laps());
        Length first = check.after().first().minus(check.seam().ease());
        if (!sewn.isPositive() || first.isShorterThan(sewn)) {
            return "measure again, for there is nothing to gather";
        }
        return "write `gather: "
                + BigDecimal.valueOf(first.millimetres() / sewn.millimetres())
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + "` on this join";
    }

    /** By how much the first is longer than the second; negative if it is shorter. */
    private Length longer() {
        return check.seam().ease().plus(check.after().difference());
    }

    /** The join with a lap, where the longer side is a band. */
    public Optional<String> lap() {
        Seam seam = check.seam();
        if (seam.isGathered() || seam.isLapped() || seam.ease().isPositive()) {
            return Optional.empty();
        }
        boolean isFirst = longer().isPositive();
        EdgeSum band = (isFirst ? seam.first() : seam.second()).value();
        EdgeSum other = (isFirst ? seam.second() : seam.first()).value();
        return isOfBands(band) && !isOfBands(other)
                ? Optional.of(join(other, band, longer().size()))
                : Optional.empty();
    }

    private String join(EdgeSum other, EdgeSum band, Length laps) {
        return "`{join: ["
                + Quoted.of(other.toString())
                + ", "
                + Quoted.of(band.toString())
                + "], laps: "
                + BareLength.of(tape, laps)
                + "}`";
    }

    /** The side that is written first may be the band, or the lap be another than is written. */
    private String asLapped() {
        Seam seam = check.seam();
        Length other = check.after().first().minus(seam.laps()).minus(check.after().second());
        if (!other.size().isLongerThan(check.allowed())) {
            return "write what laps second: "
                    + join(seam.second().value(), seam.first().value(), seam.laps());
        }
        double off = check.after().difference().millimetres() / seam.gather().doubleValue();
        Length laps = seam.laps().minus(Length.ofComputedMillimetres(off));
        String lap = "write `laps: " + BareLength.of(tape, laps) + "` on this join";
        if (seam.isGathered()) {
            return gathered() + (laps.isPositive() ? ", or " + lap : "");
        }
        return laps.isNegative() ? "measure again, for nothing of it would lap" : lap;
    }

    private boolean isOfBands(EdgeSum side) {
        return side.terms().stream()
                .allMatch(
                        term ->
                                pattern.find(term.piece())
                                        .filter(p -> isBand(p, term.edge().edge()))
                                        .isPresent());
    }

    /** Called so, or straight on all sides, as far as it is drawn, and far longer than deep. */
    private static boolean isBand(Piece piece, String edge) {
        boolean isStraight = piece.shape().asDrawn().isEmpty() || Bulge.isStraightAllRound(piece);
        Length along =
                Optional.ofNullable(piece.shape().edgeLengths().get(edge)).orElse(Length.ZERO);
        boolean isLong =
                piece.shape().edgeLengths().values().stream()
                        .anyMatch(deep -> !deep.times(BAND).isLongerThan(along));
        return piece.name().contains("band") || (isStraight && isLong);
    }
}
