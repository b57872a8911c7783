package secondbolt.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.effect.AlterationEffects.Change;
import secondbolt.figure.Figures;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Sentence;
import secondbolt.worksheet.Worksheet;

/**
 * What follows from each alteration, so that nothing further down is forgotten.
 *
 * @param effects of each alteration, in the maker's order
 * @param tape to print with
 */
record EffectWorksheet(List<AlterationEffects> effects, Tape tape) {
    private static final List<String> HEAD = List.of("What", "Before", "After", "Change");

    /** In place of them, where they are too many to be told. */
    static Worksheet tooMany(int alterations) {
        return sheet().showing(
                        () ->
                                List.of(
                                        new Block.Prose(
                                                "What follows from each of the "
                                                        + alterations
                                                        + " alterations is not told: there are too"
                                                        + " many of them for so many pieces. Use"
                                                        + " the printed sheets, not the marks of"
                                                        + " the pattern.")))
                .telling(() -> new Figures().list("alterations", List.of()));
    }

    private static Worksheet sheet() {
        return Worksheet.of("effects", "What follows from the alterations", () -> Notes.NONE);
    }

    Worksheet worksheet() {
        return sheet().showing(this::blocks).telling(this::figures);
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.Prose(
                        "Each alteration beside the ones before it. What is listed here moved with"
                                + " it: use the printed sheets, not the marks of the pattern."));
        for (AlterationEffects one : effects) {
            blocks.add(new Block.Heading(Sentence.capital(one.words())));
            List<List<Table.Cell>> rows = rows(one);
            blocks.add(
                    rows.isEmpty()
                            ? new Block.Prose("Nothing further down changes.")
                            : new Block.Rows(
                                    new Table("What follows: " + one.words(), "", HEAD, rows)));
        }
        return blocks;
    }

    private List<List<Table.Cell>> rows(AlterationEffects one) {
        List<List<Table.Cell>> rows = new ArrayList<>();
        one.lengths().stream().filter(this::shows).forEach(change -> rows.add(length(change)));
        one.areas().stream()
                .filter(c -> !tape.print(c.before()).equals(tape.print(c.after())))
                .forEach(change -> rows.add(area(change)));
        return rows;
    }

    /** Whether the tape shows the difference. */
    private boolean shows(Change<Length> change) {
        Length more = change.after().minus(change.before());
        return more.size().roundedTo(tape.mark()).isPositive();
    }

    private List<Table.Cell> length(Change<Length> change) {
        Length more = change.after().minus(change.before());
        return row(
                change.what(),
                Both.of(tape, change.before()),
                Both.of(tape, change.after()),
                signed(more.isNegative(), tape.print(more.size())));
    }

    private List<Table.Cell> area(Change<Area> change) {
        boolean less = change.after().compareTo(change.before()) < 0;
        Area more =
                less
                        ? change.before().minus(change.after())
                        : change.after().minus(change.before());
        return row(
                change.what(),
                Both.of(tape, change.before()),
                Both.of(tape, change.after()),
                signed(less, tape.print(more)));
    }

    private static List<Table.Cell> row(String what, Both before, Both after, String change) {
        return List.of(
                Table.Cell.of(what),
                Table.Cell.of(before.own()),
                Table.Cell.of(new Both(own(before, after), other(before, after))),
                Table.Cell.of(change));
    }

    /** What changes by less than a mark may print alike. */
    private static String own(Both before, Both after) {
        return after.own() + (before.own().equals(after.own()) ? ", to the nearest mark" : "");
    }

    /** Two values that the other tape prints alike are no change from the one to the other. */
    private static String other(Both before, Both after) {
        return before.other().equals(after.other())
                ? "both " + after.other() + ", to the nearest mark"
                : before.other() + " to " + after.other();
    }

    private static String signed(boolean less, String amount) {
        return (less ? "−" : "+") + amount;
    }

    private Figures figures() {
        return new Figures().list("alterations", effects.stream().map(this::figures).toList());
    }

    private Figures figures(AlterationEffects one) {
        return new Figures()
                .text("alteration", one.words())
                .list("followers", one.lengths().stream().map(EffectWorksheet::figure).toList())
                .list("cloth", one.areas().stream().map(EffectWorksheet::surface).toList());
    }

    private static Figures figure(Change<Length> change) {
        return new Figures()
                .text("what", change.what())
                .length("before", change.before())
                .length("after", change.after());
    }

    private static Figures surface(Change<Area> change) {
        return new Figures()
                .text("what", change.what())
                .area("before", Optional.of(change.before()))
                .area("after", Optional.of(change.after()));
    }
}
