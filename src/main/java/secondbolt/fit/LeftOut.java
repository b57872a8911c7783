package secondbolt.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * The piece that an alteration left out, so that a seam no longer meets.
 *
 * @param text names it; empty if none can be named
 * @param remedy the line to add
 */
record LeftOut(String text, String remedy) {
    static LeftOut of(SeamCheck check, FitResult result, Tape tape) {
        return found(check, result, true, tape)
                .or(() -> found(check, result, false, tape))
                .orElse(
                        new LeftOut(
                                "",
                                "Alter the other side by as much, or write what is meant as `ease`"
                                        + " or `gather`."));
    }

    /** The first alteration that some piece of the seam did not follow. */
    private static Optional<LeftOut> found(
            SeamCheck check, FitResult result, boolean exactly, Tape tape) {
        for (Alteration alteration : result.alterations()) {
            Optional<LeftOut> found =
                    alteration.accept(
                            new Alteration.Visitor<Optional<LeftOut>>() {
                                @Override
                                public Optional<LeftOut> lengthen(Alteration.Lengthen lengthen) {
                                    return ofLine(check, result, lengthen, exactly, tape);
                                }

                                @Override
                                public Optional<LeftOut> widen(Alteration.Widen widen) {
                                    return exactly ? Optional.empty() : ofEdge(check, widen);
                                }
                            });
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<LeftOut> ofLine(
            SeamCheck check,
            FitResult result,
            Alteration.Lengthen lengthen,
            boolean exactly,
            Tape tape) {
        List<EdgeSum.Term> carrying = new ArrayList<>();
        List<EdgeSum.Term> lacking = new ArrayList<>();
        for (EdgeSum.Term term : terms(check)) {
            Piece piece = result.pattern().find(term.piece()).orElseThrow();
            (piece.lines().containsKey(lengthen.line()) ? carrying : lacking).add(term);
        }
        if (carrying.isEmpty() || lacking.isEmpty()) {
            return Optional.empty();
        }
        String line = lengthen.line();
        EdgeSum.Term without =
                lacking.stream()
                        .filter(term -> wouldMend(check, term, lengthen))
                        .min(
                                Comparator.comparing(
                                        term ->
                                                where(result, line, carrying.get(0), term, tape)
                                                        .isEmpty()))
                        .or(() -> nearest(check, lacking, lengthen))
                        .orElse(lacking.get(0));
        if (exactly && !wouldMend(check, without, lengthen)) {
            return Optional.empty();
        }
        Optional<String> where = where(result, lengthen.line(), carrying.get(0), without, tape);
        return Optional.of(
                new LeftOut(
                        " "
                                + without.piece()
                                + " was left out: it carries no line `"
                                + lengthen.line()
                                + "`.",
                        "Add `lines: {"
                                + lengthen.line()
                                + ": "
                                + where.orElse("…")
                                + "}` to "
                                + without.piece()
                                + (where.isPresent()
                                        ? ", level with the one on "
                                                + carrying.get(0).piece()
                                                + " along this seam."
                                        : ", level with the one on "
                                                + carrying.get(0).piece()
                                                + " where they are sewn together.")));
    }

    /** Whether the seam would meet if this edge followed as well. */
    private static boolean wouldMend(
            SeamCheck check, EdgeSum.Term term, Alteration.Lengthen lengthen) {
        return leftMm(check, term, lengthen) <= check.allowed().millimetres();
    }

    /** By how much the seam would still be off. */
    private static double leftMm(SeamCheck check, EdgeSum.Term term, Alteration.Lengthen lengthen) {
        Length by = lengthen.pieces().getOrDefault(term.piece(), lengthen.by()).times(term.count());
        boolean isFirst = check.seam().first().value().terms().contains(term);
        double gather = check.seam().gather().doubleValue();
        double changeMm = isFirst ? by.millimetres() : -by.millimetres() * gather;
        return Math.abs(check.after().difference().millimetres() + changeMm);
    }

    /** The first edge that would bring the seam nearer to meeting. */
    private static Optional<EdgeSum.Term> nearest(
            SeamCheck check, List<EdgeSum.Term> lacking, Alteration.Lengthen lengthen) {
        double nowMm = Math.abs(check.after().difference().millimetres());
        return lacking.stream().filter(t -> leftMm(check, t, lengthen) < nowMm).findFirst();
    }

    private static List<EdgeSum.Term> terms(SeamCheck check) {
        List<EdgeSum.Term> terms = new ArrayList<>(check.seam().first().value().terms());
        terms.addAll(check.seam().second().value().terms());
        return terms;
    }

    /** As far from the lower end of the one edge as the line crosses the other. */
    private static Optional<String> where(
            FitResult result, String line, EdgeSum.Term has, EdgeSum.Term lacks, Tape tape) {
        Piece carrying = result.pattern().find(has.piece()).orElseThrow();
        Piece lacking = result.pattern().find(lacks.piece()).orElseThrow();
        Optional<EdgeLine> from =
                carrying.shape().asDrawn().flatMap(d -> d.find(has.edge().edge()));
        Optional<EdgeLine> to = lacking.shape().asDrawn().flatMap(d -> d.find(lacks.edge().edge()));
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        double lineMm = PieceAlteration.topMm(carrying) + carrying.lines().get(line).millimetres();
        EdgeLine down = downward(from.get());
        if (lineMm <= down.start().yMm() || lineMm >= down.end().yMm()) {
            return Optional.empty();
        }
        double fromBottomMm = down.lengthMm() - down.alongMm(crossing(down, lineMm));
        EdgeLine other = downward(to.get());
        if (fromBottomMm >= other.lengthMm()) {
            return Optional.empty();
        }
        double yMm = other.at(other.lengthMm() - fromBottomMm).yMm();
        Length along = Length.ofComputedMillimetres(yMm - PieceAlteration.topMm(lacking));
        return Optional.of(tape.print(along).replaceAll("\\s*[a-z]+$", ""));
    }

    private static EdgeLine downward(EdgeLine edge) {
        return edge.start().yMm() <= edge.end().yMm() ? edge : edge.reversed();
    }

    private static Point crossing(EdgeLine down, double yMm) {
        double low = 0;
        double high = down.lengthMm();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean above = down.at(middle).yMm() < yMm;
            low = above ? middle : low;
            high = above ? high : middle;
        }
        return down.at(low);
    }

    private static Optional<LeftOut> ofEdge(SeamCheck check, Alteration.Widen widen) {
        Length first = check.after().first().minus(check.before().first()).size();
        Length second = check.after().second().minus(check.before().second()).size();
        Seam seam = check.seam();
        EdgeSum still = first.isShorterThan(second) ? seam.first().value() : seam.second().value();
        EdgeSum moved = first.isShorterThan(second) ? seam.second().value() : seam.first().value();
        return Optional.of(
                new LeftOut(
                        " "
                                + moved
                                + " followed `"
                                + widen.words()
                                + "`; "
                                + still.terms().get(0).piece()
                                + " was left out.",
                        "Change "
                                + still.terms().get(0).piece()
                                + " by as much (name its edge in the alteration, or give it one of"
                                + " that name), or write the difference as `ease`."));
    }
}
