package secondbolt.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.fit.alter.Altered;
import secondbolt.fit.alter.WidenShare;
import secondbolt.fit.made.Limb;
import secondbolt.fit.made.Made;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;

/**
 * What the page shows of the pattern: what each alteration changed, every seam and every opening.
 *
 * @param pattern as written
 * @param tape to print with
 */
record FitPage(Pattern pattern, Tape tape) {
    private static final Both NOT_KNOWN = Both.words("not known");

    /** An alteration with what it changed. */
    List<Block> alteration(Altered altered) {
        List<Block> blocks = new ArrayList<>();
        String words = words(altered);
        blocks.add(new Block.Heading(words));
        altered.alteration()
                .found()
                .ifPresent(found -> blocks.add(new Block.Prose("Found at: " + found + ".")));
        List<List<Table.Cell>> changes =
                altered.changes().stream().filter(this::shows).map(this::row).toList();
        if (!changes.isEmpty()) {
            blocks.add(
                    new Block.Rows(
                            new Table(
                                    "What changed: " + words,
                                    "What it changed",
                                    List.of("Edge", "Before", "After"),
                                    changes)));
        } else if (altered.open().isEmpty()) {
            blocks.add(new Block.Prose("It changes no edge."));
        }
        if (!altered.open().isEmpty()) {
            String open =
                    altered.open().stream().map(PieceEdge::words).collect(Collectors.joining(", "));
            blocks.add(new Block.Prose("Not known by tape, whether it changes: " + open + "."));
        }
        return blocks;
    }

    /** An alteration in words. */
    String words(Altered altered) {
        return altered.alteration()
                .accept(
                        new Alteration.Visitor<String>() {
                            @Override
                            public String lengthen(Alteration.Lengthen lengthen) {
                                return lengthen.words() + " by " + tape.print(lengthen.by().size());
                            }

                            @Override
                            public String widen(Alteration.Widen widen) {
                                return widen.words()
                                        + " by "
                                        + tape.print(widen.by().size())
                                        + round(altered, widen.by());
                            }
                        });
    }

    /** Round the body; or what each limb gets, which the amount in all is shared over. */
    private String round(Altered altered, Length by) {
        Set<String> pieces =
                altered.asked().shares().stream()
                        .findFirst()
                        .map(WidenShare::pieces)
                        .orElse(Set.of());
        int count = Limb.count(pieces, pattern);
        return Limb.of(pieces, pattern)
                .filter(limb -> count > 1)
                .map(
                        limb ->
                                " altogether, "
                                        + tape.print(Limb.each(by.size(), pieces, pattern))
                                        + " round each of "
                                        + Plural.of(count, limb.word()))
                .orElse(" altogether round the body");
    }

    /** What the pieces measure; nothing if none tells. */
    List<Block> made(MadeMeasures made) {
        List<Block> blocks = new ArrayList<>();
        List<Made> all = made.all();
        if (!all.isEmpty()) {
            blocks.add(new Block.Heading("How long and how wide it will be"));
            blocks.add(
                    new Block.Prose(
                            "From the pieces of the outside, along their sewing lines, darts and"
                                    + " pleats taken up, and over every piece that is sewn on"
                                    + " below: a skirt, a tier, a cuff, a band."));
            blocks.add(
                    new Block.Rows(
                            new Table(
                                    "How long and how wide",
                                    "What the pieces measure",
                                    List.of("Measure", "As drawn", "As altered"),
                                    all.stream().map(this::row).toList())));
        }
        return blocks;
    }

    private List<Table.Cell> row(Made made) {
        return List.of(
                Table.Cell.of(made.what()),
                Table.Cell.of(tape, made.before()),
                Table.Cell.of(tape, made.after()));
    }

    /** Whether the tape shows the difference. */
    private boolean shows(Altered.Change change) {
        return !tape.print(change.before()).equals(tape.print(change.after()));
    }

    private List<Table.Cell> row(Altered.Change change) {
        return List.of(
                Table.Cell.of(change.edge().heading()),
                Table.Cell.of(tape, change.before()),
                Table.Cell.of(tape, change.after()));
    }

    /** All seams; nothing if none is declared. */
    List<Block> seams(List<SeamCheck> seams) {
        return seams.isEmpty()
                ? List.of()
                : List.of(
                        new Block.Heading("Seams"),
                        new Block.Rows(
                                new Table(
                                        "Seams",
                                        "Every declared seam after the alterations, darts and"
                                                + " pleats taken up",
                                        List.of(
                                                "One side",
                                                "Length",
                                                "Other side",
                                                "Length",
                                                "Meant",
                                                "It"),
                                        seams.stream().map(this::row).toList())));
    }

    private List<Table.Cell> row(SeamCheck check) {
        Seam seam = check.seam();
        return List.of(
                Table.Cell.of(seam.first().value().heading()),
                Table.Cell.of(side(check.isKnown(seam.first().value()), check.after().first())),
                Table.Cell.of(seam.second().value().heading()),
                Table.Cell.of(side(check.isKnown(seam.second().value()), check.after().second())),
                Table.Cell.of(meant(seam)),
                Table.Cell.of(
                        !check.isKnown()
                                ? "not known"
                                : check.isStretchedOn()
                                        ? "is stretched on"
                                        : check.meets() ? "meets" : "does not meet"));
    }

    private Both side(boolean isKnown, Length length) {
        return isKnown ? Both.of(tape, length) : NOT_KNOWN;
    }

    private String meant(Seam seam) {
        List<String> meant = new ArrayList<>();
        if (seam.ease().isPositive()) {
            meant.add("ease " + tape.print(seam.ease()));
        }
        if (seam.isGathered()) {
            meant.add("gathered " + seam.gather().toPlainString() + " to 1");
        }
        if (seam.isLapped()) {
            meant.add("laps " + tape.print(seam.laps()));
        }
        return String.join(", ", meant);
    }

    /** All openings; nothing if none is declared. */
    List<Block> openings(List<OpeningCheck> openings) {
        return openings.isEmpty()
                ? List.of()
                : List.of(
                        new Block.Heading("Openings"),
                        new Block.Facts(openings.stream().map(this::fact).toList()));
    }

    private Fact fact(OpeningCheck check) {
        boolean stretches = check.stretched().isLongerThan(check.opens());
        return new Fact(
                check.opening().what()
                        + ", over the "
                        + check.opening().over().word()
                        + (stretches ? ", stretched" : ""),
                side(check.open().isEmpty(), check.stretched()));
    }
}
