package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.fit.size.Wearer;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;

/**
 * The values of closures as pages and sheets print them.
 *
 * @param age of the wearer, if told
 * @param machine the maker's
 * @param tape the maker's
 */
record ClosurePage(Optional<Wearer.Age> age, Machine machine, Tape tape) {
    /** Common practice, no source, but for the sentence on size. */
    private static final String USUAL_CM =
            "Usual are 8 to 9 cm on shirts and blouses, 6 to 8 cm on children's, 10 to 12 cm on"
                    + " coats (common practice, no source); larger fasteners stand wider apart.";

    private static final String USUAL_IN =
            "Usual are 3 to 3½ in on shirts and blouses, 2½ to 3 in on children's, 4 to 5 in on"
                    + " coats (common practice, no source); larger fasteners stand wider apart.";

    List<Finding> findings(ClosureResult result) {
        return ClosureFindings.of(result, age, machine, tape);
    }

    ClosureView.One view(ClosureResult result) {
        return new ClosureView.One(
                result.name(),
                result.closure().fastening().kind().one(),
                result.closure().fastening().hasHoles(),
                result.name(),
                seen(result),
                facts(result),
                result.marks().stream().map(mark -> row(result, mark)).toList(),
                result.advice().stream().map(advice -> count(result, advice)).toList(),
                usual(result));
    }

    private String usual(ClosureResult result) {
        boolean isRow = result.closure().isLapped();
        return isRow ? (tape == Tape.INCH ? USUAL_IN : USUAL_CM) : "";
    }

    private static String seen(ClosureResult result) {
        Sides sides = new Sides(result.closure().overlap());
        return "The "
                + sides.over()
                + (result.closure().isLapped() ? ", which lies over" : "")
                + ", seen from outside: top edge to the left, finished edge "
                + (PlacketPicture.edgeIsAbove(result) ? "above." : "below.")
                + (result.layout().bulks().isEmpty()
                        ? ""
                        : " Dotted across: where "
                                + (result.closure().fastening().hasHoles()
                                        ? "no hole can be stitched."
                                        : "bulk lies."));
    }

    private List<ClosureView.Fact> facts(ClosureResult result) {
        Fastening fastening = result.closure().fastening();
        Overlap overlap = result.closure().overlap();
        List<ClosureView.Fact> facts = new ArrayList<>();
        facts.add(fact("Placket, edge to edge", result.length()));
        result.gap().ifPresent(gap -> facts.add(fact("From one to the next, in the mean", gap)));
        if (!result.solved().uneven().isShorterThan(tape.mark())) {
            facts.add(fact("The gap that differs most, by", result.solved().uneven()));
        }
        if (fastening.hasHoles()) {
            facts.add(
                    small("Buttonhole, between its bars", result.hole().roundedUpTo(tape.mark())));
        }
        if (result.closure().isLapped()) {
            facts.add(small("Centre line to finished edge", overlap.extension()));
        }
        overlap.rowsApart().ifPresent(apart -> facts.add(fact("From row to row", apart)));
        if (fastening.hasHoles()) {
            facts.add(plain("Holes", holes(result)));
        }
        if (result.closure().isLapped()) {
            facts.add(plain("Laps", overlap.laps().word() + ", from the wearer's side"));
        }
        facts.add(toBuy(result));
        return facts;
    }

    private ClosureView.Fact toBuy(ClosureResult result) {
        Fastening.Kind kind = result.closure().fastening().kind();
        return kind == Fastening.Kind.TIES
                ? plain(
                        "To sew",
                        result.toBuy() + (result.toBuy() == 1 ? " pair of ties" : " pairs of ties"))
                : plain(
                        "To buy",
                        result.toBuy()
                                + " "
                                + (result.toBuy() == 1 ? kind.one() : kind.word())
                                + ", and one to spare (common practice, no source)");
    }

    private static String holes(ClosureResult result) {
        int count = result.marks().size();
        boolean upright = result.closure().isUpright();
        return count
                + (count == 1 ? " hole, " : " holes, ")
                + result.closure().fastening().holes().word()
                + (result.closure().fastening().differing().isEmpty()
                        ? ""
                        : " but for those marked otherwise")
                + (upright
                        ? ": begin and end are from the top edge"
                        : ": they begin outside the line of the buttons and run inward")
                + (result.closure().overlap().isHidden()
                        ? "; worked in the hidden layer only"
                        : "");
    }

    private ClosureView.Fact plain(String label, String value) {
        return new ClosureView.Fact(label, value, "");
    }

    private ClosureView.Fact fact(String label, Length length) {
        return new ClosureView.Fact(label, tape.print(length), tape.other().print(length));
    }

    private ClosureView.Fact small(String label, Length length) {
        return new ClosureView.Fact(
                label, tape.printSmall(length), tape.other().printSmall(length));
    }

    ClosureView.Row row(ClosureResult result, ClosureResult.Mark mark) {
        List<String> note = new ArrayList<>();
        mark.why().ifPresent(note::add);
        if (mark.holes() != result.closure().fastening().holes()) {
            note.add(mark.holes().word());
        }
        if (mark.byHand()) {
            note.add("work by hand");
        }
        return new ClosureView.Row(
                mark.number(),
                tape.print(mark.fromTop()),
                tape.other().print(mark.fromTop()),
                place(mark.start()),
                place(mark.end()),
                String.join(", ", note));
    }

    /**
     * A place outside what it is counted from is told by a word, which is sooner seen than a sign.
     */
    private String place(Length from) {
        return tape.print(from.size()) + (from.isNegative() ? " outside" : "");
    }

    private ClosureView.Count count(ClosureResult result, ClosureResult.Advice advice) {
        Solved solved = advice.solved();
        List<String> conflicts = new ArrayList<>();
        if (!solved.byHand().isEmpty()) {
            int many = solved.byHand().size();
            conflicts.add(many + (many == 1 ? " hole" : " holes") + " on bulk");
        }
        solved.unmet().forEach(spot -> conflicts.add("none at " + spot.why()));
        if (solved.isSeenUneven()) {
            conflicts.add("uneven");
        }
        boolean isEven = solved.uneven().isShorterThan(tape.mark());
        return new ClosureView.Count(
                advice.count(),
                solved.gap().map(tape::print).orElse(""),
                solved.gap().map(tape.other()::print).orElse(""),
                isEven ? "even" : tape.print(solved.uneven()),
                String.join(", ", conflicts),
                advice.count() == result.marks().size());
    }
}
