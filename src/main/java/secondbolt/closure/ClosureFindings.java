package secondbolt.closure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.fit.size.Wearer;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** What a maker should know of a closure before she cuts its holes. */
final class ClosureFindings {
    /**
     * Source: dressmakers' association standards: at least half the diameter and a quarter inch.
     */
    private static final Length BEYOND_THE_BUTTON = Length.ofInches(1, 4);

    /** Cloth left between two upright holes, for their bars; common practice, no source. */
    private static final Length BETWEEN_HOLES = Length.ofMillimetres(10);

    private final ClosureResult result;
    private final Fastening fastening;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    private ClosureFindings(ClosureResult result, Tape tape) {
        this.result = result;
        this.fastening = result.closure().fastening();
        this.tape = tape;
    }

    static List<Finding> of(
            ClosureResult result, Optional<Wearer.Age> age, Machine machine, Tape tape) {
        ClosureFindings all = new ClosureFindings(result, tape);
        all.placing(machine);
        if (result.closure().isLapped()) {
            all.extension();
        }
        if (result.closure().fastening().hasHoles()) {
            all.ends();
            all.closeHoles();
            all.trial();
        }
        all.findings.addAll(new ChildSafety(result, age).findings());
        return List.copyOf(all.findings);
    }

    /** What could not be placed as asked, and what would serve. */
    private void placing(Machine machine) {
        String remedy = String.join(" ", result.remedies());
        boolean stitches = machine.stitches(result.hole());
        if (fastening.hasHoles() && !stitches) {
            tell(
                    Level.WARNING,
                    "The holes of "
                            + tape.printSmall(result.hole().roundedUpTo(tape.mark()))
                            + " are longer than the machine stitches, "
                            + tape.printSmall(machine.longestHole().orElseThrow())
                            + ".",
                    "Work them by hand, or take a smaller button.");
        }
        List<Integer> clashing =
                result.solved().byHand().stream()
                        .filter(i -> result.marks().get(i).why().isPresent())
                        .toList();
        clashing.forEach(i -> clash(result.marks().get(i)));
        List<Integer> blocked =
                result.solved().byHand().stream().filter(i -> !clashing.contains(i)).toList();
        if (!blocked.isEmpty()) {
            String numbers =
                    blocked.stream()
                            .map(i -> Integer.toString(i + 1))
                            .collect(Collectors.joining(", "));
            tell(
                    Level.WARNING,
                    (fastening.hasHoles()
                                    ? "No hole can be stitched at number "
                                    : "Bulk lies under number ")
                            + numbers
                            + ": "
                            + bulkThere(blocked)
                            + ".",
                    remedy);
        }
        for (Layout.Spot unmet : result.solved().unmet()) {
            tell(
                    Level.WARNING,
                    "No "
                            + fastening.kind().one()
                            + " comes at "
                            + unmet.why()
                            + ", "
                            + tape.print(unmet.at())
                            + " from the top: the others leave no room for it.",
                    remedy);
        }
        unevenness(remedy);
    }

    /** A place to meet on a place of bulk: no count and no shift can serve both. */
    private void clash(ClosureResult.Mark mark) {
        Layout.Spot bulk =
                result.layout().bulks().stream()
                        .min(Comparator.comparing(b -> b.at().minus(mark.fromTop()).size()))
                        .orElseThrow();
        String one = fastening.kind().one();
        String place = mark.why().orElseThrow();
        tell(
                Level.WARNING,
                "A "
                        + one
                        + " must come at "
                        + place
                        + ", "
                        + tape.print(mark.fromTop())
                        + " from the top, but "
                        + bulk.why()
                        + ", "
                        + tape.print(bulk.at())
                        + " from the top, leaves no room there"
                        + (fastening.hasHoles() ? " to stitch its hole." : "."),
                "Move or trim the bulk of "
                        + bulk.why()
                        + ", or leave "
                        + place
                        + " out of `meet` and let the "
                        + fastening.kind().word()
                        + " keep clear of it"
                        + (fastening.hasHoles()
                                ? "; or work number " + mark.number() + " by hand."
                                : "."));
    }

    private void unevenness(String remedy) {
        Solved solved = result.solved();
        if (solved.isSeenUneven()) {
            tell(
                    Level.CAUTION,
                    "A gap differs from the mean of "
                            + tape.print(solved.gap().orElseThrow())
                            + " by "
                            + tape.print(solved.uneven())
                            + ", which will be seen.",
                    solved.byHand().isEmpty() && solved.unmet().isEmpty()
                            ? remedy
                            : "See above what would serve.");
        }
        if (result.added() > 0) {
            tell(
                    Level.NOTE,
                    result.added()
                            + " more than told, so that no gap is wider than "
                            + tape.print(result.closure().spread().largestGap().orElseThrow())
                            + ".",
                    "Buy " + result.toBuy() + " in all, or allow a wider gap.");
        }
    }

    private String bulkThere(List<Integer> blocked) {
        return result.layout().bulks().stream()
                .filter(bulk -> blocked.stream().anyMatch(i -> isNear(bulk, result.marks().get(i))))
                .map(Layout.Spot::why)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private boolean isNear(Layout.Spot bulk, ClosureResult.Mark mark) {
        Length far = result.hole().plus(bulk.clear()).plus(Length.ofMillimetres(50));
        return bulk.at().minus(mark.fromTop()).size().isShorterThan(far);
    }

    private void tell(Level level, String text, String remedy) {
        findings.add(new Finding(result.name(), level, text, remedy));
    }

    private void extension() {
        Optional<Length> across = fastening.width();
        if (across.isEmpty()) {
            tell(
                    Level.NOTE,
                    "The "
                            + fastening.kind().one()
                            + "'s diameter is not told, so whether the extension carries it is not"
                            + " checked.",
                    fastening.hasHoles() ? "Write `across` beside `girth`." : "Write `wide`.");
            return;
        }
        Length half = across.get().dividedBy(2);
        Length wanted = half.plus(BEYOND_THE_BUTTON);
        Overlap overlap = result.closure().overlap();
        Length has = overlap.extension().minus(overlap.rowOut());
        if (has.isShorterThan(half)) {
            tell(
                    Level.WARNING,
                    "The "
                            + fastening.kind().one()
                            + " reaches past the finished edge: half of it is "
                            + tape.printSmall(half)
                            + ", "
                            + room()
                            + " only "
                            + tape.printSmall(has)
                            + ".",
                    widen(wanted, has));
        } else if (has.isShorterThan(wanted)) {
            tell(
                    Level.CAUTION,
                    PageWords.capital(room())
                            + " of "
                            + tape.printSmall(has)
                            + " is narrow for this "
                            + fastening.kind().one()
                            + ": half its diameter and "
                            + tape.printSmall(BEYOND_THE_BUTTON)
                            + " make "
                            + tape.printSmall(wanted)
                            + ".",
                    widen(wanted, has));
        }
    }

    private String room() {
        return result.closure().overlap().rowsApart().isPresent()
                ? "the cloth outside the outer row"
                : "the extension";
    }

    private String widen(Length wanted, Length has) {
        return "Widen the extension by "
                + tape.printSmall(wanted.minus(has))
                + " on both sides, and facing and interfacing with it, which takes more cloth; or"
                + " take a smaller "
                + fastening.kind().one()
                + ".";
    }

    /** How near each end of the placket, and the finished edge, the holes come. */
    private void ends() {
        ClosureResult.Mark first = result.marks().get(0);
        ClosureResult.Mark last = result.marks().get(result.marks().size() - 1);
        boolean isOne = result.marks().size() == 1;
        Length lacking = roomNeeded().minus(result.length());
        if (lacking.isPositive()) {
            tooShort(lacking);
        } else {
            topAndFoot(first, last, isOne);
        }
        result.marks().stream()
                .filter(mark -> !mark.isUpright())
                .findFirst()
                .ifPresent(this::level);
    }

    /**
     * All holes as close as they may be, with the usual cloth above the first and below the last.
     */
    private Length roomNeeded() {
        boolean isUpright = result.closure().isUpright();
        return usualToEdge()
                .times(2)
                .plus(ClosureSpacing.needed(fastening).times(result.marks().size() - 1L))
                .plus(isUpright ? result.hole() : Length.ZERO);
    }

    /** No place suits: to move a hole away from one end would bring it nearer to the other. */
    private void tooShort(Length lacking) {
        boolean isOne = result.marks().size() == 1;
        boolean isUpright = result.closure().isUpright();
        tell(
                result.hole().isShorterThan(result.length()) && isOne
                        ? Level.CAUTION
                        : Level.WARNING,
                (isOne ? "The " : result.marks().size() + " ")
                        + (isUpright ? "" : "level ")
                        + (isOne ? "hole" : "holes")
                        + (isUpright
                                ? " of " + tape.printSmall(result.hole().roundedUpTo(tape.mark()))
                                : "")
                        + (isOne ? " does" : " do")
                        + " not fit between the ends of a placket of "
                        + tape.printSmall(result.length())
                        + ": with the usual "
                        + tape.printSmall(usualToEdge())
                        + " of cloth to each end "
                        + tape.printSmall(lacking.roundedUpTo(tape.mark()))
                        + " are lacking.",
                (isUpright ? "Work a level hole, take " : "Take ")
                        + (isOne ? "" : "fewer buttons or ")
                        + "a smaller button, or make the placket "
                        + tape.printSmall(lacking.roundedUpTo(tape.mark()))
                        + " longer.");
    }

    private void topAndFoot(ClosureResult.Mark first, ClosureResult.Mark last, boolean isOne) {
        near(
                isOne ? "The hole" : "The first hole",
                "top edge",
                first.isUpright() ? first.start() : first.fromTop(),
                "Set the button lower: a `first` larger by ");
        near(
                isOne ? "The hole" : "The last hole",
                "bottom edge",
                result.length().minus(last.isUpright() ? last.end() : last.fromTop()),
                isOne
                        ? "Set the button higher: a `first` smaller by "
                        : "Set the last button higher: a `last` larger by ");
    }

    private void level(ClosureResult.Mark mark) {
        Overlap overlap = result.closure().overlap();
        near(
                result.closure().isUpright() ? "The level hole" : "Each level hole",
                "finished edge",
                overlap.extension().minus(overlap.rowOut()).minus(mark.start().size()),
                "Widen the extension on both sides, and the facing with it: an extension larger by ");
    }

    /** A hole that ends less than the usual distance inside an edge. */
    private void near(String hole, String edge, Length left, String remedy) {
        Length wanted = usualToEdge();
        if (!left.isShorterThan(wanted)) {
            return;
        }
        boolean isCut = !left.isLongerThan(Length.ZERO);
        String text =
                !isCut
                        ? hole + " leaves only " + tape.printSmall(left) + " of cloth to the "
                        : left.isNegative()
                                ? hole + " would run " + tape.printSmall(left.size()) + " past the "
                                : hole + " would cut into the ";
        tell(
                isCut ? Level.WARNING : Level.CAUTION,
                text + edge + ".",
                remedy
                        + tape.printSmall(wanted.minus(left).roundedUpTo(tape.mark()))
                        + " leaves the usual "
                        + tape.printSmall(wanted)
                        + ".");
    }

    /**
     * A quarter of an inch from the end of a hole to the edge. Source: Textiles and Clothing, K. H.
     * Watson, American School of Home Economics, 1907.
     */
    private Length usualToEdge() {
        return tape == Tape.INCH ? Length.ofInches(1, 4) : Length.ofMillimetres(6);
    }

    private void closeHoles() {
        Optional<Length> between = Optional.empty();
        for (int i = 1; i < result.marks().size(); i++) {
            ClosureResult.Mark above = result.marks().get(i - 1);
            ClosureResult.Mark below = result.marks().get(i);
            if (above.isUpright() && below.isUpright()) {
                Length cloth = below.start().minus(above.end());
                between = Optional.of(between.map(cloth::orShorter).orElse(cloth));
            }
        }
        if (between.filter(b -> b.isShorterThan(BETWEEN_HOLES)).isPresent()) {
            tell(
                    Level.CAUTION,
                    "Only "
                            + tape.printSmall(between.get())
                            + " of cloth is left between one hole and the next.",
                    "Take fewer buttons, or work the holes level.");
        }
    }

    private void trial() {
        tell(
                Level.NOTE,
                "The hole of "
                        + tape.printSmallBoth(result.hole().roundedUpTo(tape.mark()))
                        + " is what the button needs to pass, between the bars"
                        + (fastening.ease().isPresent() ? ", with your working ease." : "."),
                "Work a trial hole on a scrap with the same layers and interfacing, open it, and"
                        + " button it before you mark the garment."
                        + (fastening.button().orElseThrow().shape() == Button.Shape.FLAT
                                ? ""
                                : " Wrap a strip of paper round the button: half of it is the hole."));
    }
}
