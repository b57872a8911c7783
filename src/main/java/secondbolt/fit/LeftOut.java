package secondbolt.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.fit.alter.Altered;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.SeamRemedy;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * The piece that an alteration left out, so that a seam no longer meets.
 *
 * @param text names it; empty if none can be named
 * @param remedy the line to add
 */
record LeftOut(String text, String remedy) {
    /** A change that is none. */
    private static final double NOTHING_MM = 0.05;

    private static final LeftOut UNKNOWN =
            new LeftOut(
                    "",
                    "Alter the other side by as much, or write what is meant as `ease` or"
                            + " `gather`.");

    /**
     * A piece that may have been left out.
     *
     * @param leftOut which
     * @param mends whether the seam would meet if it followed
     */
    record Guess(LeftOut leftOut, boolean mends) {}

    /**
     * The first whose following would mend the seam, else what the alteration did that put it off
     * by most; one that moved neither side, or both alike, is not to blame.
     */
    static LeftOut of(SeamCheck check, FitResult result, Tape tape) {
        List<Altered> toBlame =
                result.altered().stream()
                        .filter(altered -> Math.abs(offMm(check, altered)) > NOTHING_MM)
                        .sorted(Comparator.comparing(a -> -Math.abs(offMm(check, a))))
                        .toList();
        Optional<LeftOut> first = Optional.empty();
        for (Altered altered : toBlame) {
            Guess guess = guess(check, result, altered, tape);
            if (guess.mends()) {
                return guess.leftOut();
            }
            first = first.or(() -> Optional.of(guess.leftOut()));
        }
        return first.orElse(UNKNOWN);
    }

    private static Guess guess(SeamCheck check, FitResult result, Altered altered, Tape tape) {
        SeamRemedy remedy = new SeamRemedy(check, result.pattern(), tape);
        return altered.alteration()
                .accept(
                        new Alteration.Visitor<Guess>() {
                            @Override
                            public Guess lengthen(Alteration.Lengthen lengthen) {
                                return LackingLine.of(check, result, lengthen, tape)
                                        .or(() -> ofAnotherAmount(remedy, result, lengthen))
                                        .orElseGet(() -> ofSides(remedy, altered));
                            }

                            @Override
                            public Guess widen(Alteration.Widen widen) {
                                return ofSides(remedy, altered);
                            }
                        });
    }

    /** By how much an alteration lengthened the first side beyond what the second asks of it. */
    private static double offMm(SeamCheck check, Altered altered) {
        Seam seam = check.seam();
        return gainMm(seam.first().value(), altered)
                - gainMm(seam.second().value(), altered) * seam.gather().doubleValue();
    }

    private static double gainMm(EdgeSum side, Altered altered) {
        double gainMm = 0;
        for (EdgeSum.Term term : side.terms()) {
            for (Altered.Change change : altered.changes()) {
                if (change.edge().equals(term.edge())) {
                    gainMm += term.count() * change.after().minus(change.before()).millimetres();
                }
            }
        }
        return gainMm;
    }

    /** A piece that is lengthened by an amount of its own, if the seam would meet without it. */
    private static Optional<Guess> ofAnotherAmount(
            SeamRemedy remedy, FitResult result, Alteration.Lengthen lengthen) {
        SeamCheck check = remedy.check();
        List<EdgeSum.Term> own = new ArrayList<>();
        double changeMm = 0;
        for (EdgeSum.Term term : terms(check)) {
            Piece piece = result.pattern().find(term.piece()).orElseThrow();
            Length differs = lengthen.by().minus(lengthen.on(piece));
            if (lengthen.pieces().containsKey(piece.name()) && !differs.equals(Length.ZERO)) {
                own.add(term);
                changeMm += signedMm(check, term, differs);
            }
        }
        double leftMm = Math.abs(check.after().difference().millimetres() + changeMm);
        boolean mends = leftMm <= check.allowed().millimetres();
        return own.isEmpty()
                ? Optional.empty()
                : Optional.of(new Guess(ownAmount(remedy, lengthen, own), mends));
    }

    private static LeftOut ownAmount(
            SeamRemedy remedy, Alteration.Lengthen lengthen, List<EdgeSum.Term> own) {
        Tape tape = remedy.tape();
        String amounts =
                own.stream()
                        .map(EdgeSum.Term::piece)
                        .distinct()
                        .map(p -> p + " " + tape.print(lengthen.pieces().get(p).size()))
                        .collect(Collectors.joining(", "));
        String names =
                own.stream().map(EdgeSum.Term::piece).distinct().collect(Collectors.joining(", "));
        return new LeftOut(
                " `"
                        + lengthen.words()
                        + "` gives "
                        + amounts
                        + " of its own under `pieces`, and "
                        + tape.print(lengthen.by().size())
                        + " to the others.",
                "Take "
                        + names
                        + " out of its `pieces`; or, if the difference is meant, "
                        + remedy.asMeant()
                        + ".");
    }

    /** What became of both sides, where no piece can be named that lacks a line. */
    private static Guess ofSides(SeamRemedy remedy, Altered altered) {
        Tape tape = remedy.tape();
        Seam seam = remedy.check().seam();
        double firstMm = gainMm(seam.first().value(), altered);
        double secondMm = gainMm(seam.second().value(), altered);
        boolean isFirstStill = Math.abs(firstMm) < Math.abs(secondMm);
        EdgeSum moved = (isFirstStill ? seam.second() : seam.first()).value();
        EdgeSum still = (isFirstStill ? seam.first() : seam.second()).value();
        double stillMm = isFirstStill ? firstMm : secondMm;
        String words = "`" + altered.alteration().words() + "`";
        if (Math.abs(stillMm) > NOTHING_MM) {
            return new Guess(
                    new LeftOut(
                            " With "
                                    + words
                                    + " "
                                    + changed(seam.first().value(), firstMm, tape)
                                    + ", "
                                    + changed(seam.second().value(), secondMm, tape)
                                    + ".",
                            "Change both by as much; or, if the difference is meant, "
                                    + remedy.asMeant()
                                    + "."),
                    false);
        }
        return new Guess(followed(moved, still, words, altered, remedy), false);
    }

    private static LeftOut followed(
            EdgeSum moved, EdgeSum still, String words, Altered altered, SeamRemedy remedy) {
        String piece = still.terms().get(0).piece();
        return altered.alteration()
                .accept(
                        new Alteration.Visitor<LeftOut>() {
                            @Override
                            public LeftOut lengthen(Alteration.Lengthen lengthen) {
                                return new LeftOut(
                                        " "
                                                + moved
                                                + " followed "
                                                + words
                                                + "; "
                                                + still
                                                + " did not.",
                                        "Change "
                                                + still
                                                + " by as much; or, if the difference is"
                                                + " meant, "
                                                + remedy.asMeant()
                                                + ".");
                            }

                            @Override
                            public LeftOut widen(Alteration.Widen widen) {
                                return new LeftOut(
                                        " "
                                                + moved
                                                + " followed "
                                                + words
                                                + "; "
                                                + piece
                                                + " was left out.",
                                        "Change "
                                                + piece
                                                + " by as much (name its edge in the alteration, or"
                                                + " give it one of that name), or write the"
                                                + " difference as `ease`.");
                            }
                        });
    }

    private static String changed(EdgeSum side, double gainMm, Tape tape) {
        String by = tape.printSmall(Length.ofComputedMillimetres(Math.abs(gainMm)));
        return side + (gainMm < 0 ? " lost " : " gained ") + by;
    }

    /** What an edge longer by so much does to the difference of the sides. */
    static double signedMm(SeamCheck check, EdgeSum.Term term, Length by) {
        double changeMm = by.millimetres() * term.count();
        boolean isFirst = check.seam().first().value().terms().contains(term);
        return isFirst ? changeMm : -changeMm * check.seam().gather().doubleValue();
    }

    static List<EdgeSum.Term> terms(SeamCheck check) {
        List<EdgeSum.Term> terms = new ArrayList<>(check.seam().first().value().terms());
        terms.addAll(check.seam().second().value().terms());
        return terms;
    }
}
