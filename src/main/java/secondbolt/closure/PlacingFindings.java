package secondbolt.closure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Machine;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.closure.row.FastenerRow;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** What of a closure could not be placed as asked, and what would serve. */
final class PlacingFindings {
    private final ClosureResult result;
    private final Fastening fastening;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();
    private final String remedy;

    PlacingFindings(ClosureResult result) {
        this.result = result;
        this.fastening = result.closure().fastening();
        this.tape = result.tape();
        this.remedy = String.join(" ", result.advice().remedies());
    }

    List<Finding> findings() {
        if (fastening.hasHoles()) {
            tooLong(result.input().machine());
        }
        List<Integer> clashing =
                result.row().byHand().stream()
                        .filter(i -> result.marks().get(i).why().isPresent())
                        .toList();
        clashing.forEach(i -> clash(result.marks().get(i)));
        blocked(result.row().byHand().stream().filter(i -> !clashing.contains(i)).toList());
        result.row().unmet().forEach(this::unmet);
        seenUneven();
        added();
        return List.copyOf(findings);
    }

    private void tooLong(Machine machine) {
        if (!machine.stitches(result.hole())) {
            String hole = tape.printSmall(result.hole());
            String longest = tape.printSmall(machine.longestHole().orElseThrow());
            tell(
                    "buttonhole-too-long",
                    Level.WARNING,
                    "The holes of "
                            + (hole.equals(longest) ? "a little more than " : "")
                            + hole
                            + " are longer than the machine stitches, "
                            + longest
                            + ".",
                    "Work them by hand, or take a smaller button.");
        }
    }

    private void blocked(List<Integer> blocked) {
        if (!blocked.isEmpty()) {
            String numbers =
                    blocked.stream()
                            .map(i -> Integer.toString(i + 1))
                            .collect(Collectors.joining(", "));
            tell(
                    "fastener-on-bulk",
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
    }

    private void unmet(PlacketSpot unmet) {
        tell(
                "fastener-place-unmet",
                Level.WARNING,
                "No "
                        + fastening.kind().one()
                        + " comes at "
                        + unmet.why()
                        + ", "
                        + tape.print(unmet.at())
                        + " from the top: the others"
                        + (result.closure().spread().largestGap().isPresent()
                                ? ", and the largest gap between them,"
                                : "")
                        + " leave no room for it.",
                remedy);
    }

    /** A place to meet on a place of bulk: no count and no shift can serve both. */
    private void clash(FastenerMark mark) {
        PlacketSpot bulk =
                result.plan().bulks().stream()
                        .min(Comparator.comparing(b -> b.at().minus(mark.fromTop()).size()))
                        .orElseThrow();
        String one = fastening.kind().one();
        String place = mark.why().orElseThrow();
        tell(
                "fastener-clash",
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

    private void seenUneven() {
        FastenerRow row = result.row();
        if (row.isSeenUneven()) {
            tell(
                    "fastener-gaps-uneven",
                    Level.CAUTION,
                    "A gap differs from the mean of "
                            + tape.print(row.gap().orElseThrow())
                            + " by "
                            + tape.print(row.uneven())
                            + ", which will be seen.",
                    row.byHand().isEmpty() && row.unmet().isEmpty()
                            ? remedy
                            : "See above what would serve.");
        }
    }

    private void added() {
        if (result.added() > 0) {
            String largest = tape.print(result.closure().spread().largestGap().orElseThrow());
            tell(
                    "fastener-count-raised",
                    Level.NOTE,
                    result.added()
                            + " more than told, so that "
                            + (keptAsTold()
                                    ? "all are clear and no gap is wider than "
                                    : "no gap is wider than ")
                            + largest
                            + ".",
                    "Buy "
                            + result.toBuy()
                            + " altogether, or "
                            + (keptAsTold()
                                    ? "leave `largest gap` out to keep to the count."
                                    : "allow a wider gap."));
        }
    }

    /** Whether the count told keeps the largest gap, but with something in the way. */
    private boolean keptAsTold() {
        int told = result.marks().size() - result.added();
        return result.advice().counts().stream()
                .anyMatch(c -> c.count() == told && c.row().unmet().isEmpty());
    }

    private String bulkThere(List<Integer> blocked) {
        return result.plan().bulks().stream()
                .filter(bulk -> blocked.stream().anyMatch(i -> isNear(bulk, result.marks().get(i))))
                .map(PlacketSpot::why)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private boolean isNear(PlacketSpot bulk, FastenerMark mark) {
        Length far = result.hole().plus(bulk.clear()).plus(Length.ofMillimetres(50));
        return bulk.at().minus(mark.fromTop()).size().isShorterThan(far);
    }

    private void tell(String code, Level level, String text, String served) {
        findings.add(ClosureFindings.found(result, code, level, text, served));
    }
}
