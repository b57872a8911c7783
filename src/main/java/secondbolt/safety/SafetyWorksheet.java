package secondbolt.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.figure.Figures;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Worksheet;

/**
 * Cautions for the child who wears it, on a page.
 *
 * @param result what it has
 * @param rule what is told of a cord
 * @param isAGarment whether there are pieces or closures to ask about
 */
record SafetyWorksheet(SafetyResult result, CordRule rule, boolean isAGarment) {
    /** The worksheet; nothing if there is nothing to say. */
    Optional<Worksheet> worksheet(Tape tape) {
        Notes notes = notes(tape);
        if (notes.equals(Notes.NONE)) {
            return Optional.empty();
        }
        return Optional.of(
                Worksheet.of("safety", "Safe for a child", () -> notes)
                        .showing(() -> blocks(tape))
                        .telling(this::figures)
                        .giving(CordStep.of(result.cords(), rule)));
    }

    private Notes notes(Tape tape) {
        List<Finding> findings = new ArrayList<>();
        List<Assumed> assumed = new ArrayList<>();
        List<Open> open = new ArrayList<>();
        for (Cord cord : result.cords()) {
            Optional<Finding> found = rule.of(cord);
            found.ifPresent(f -> findings.addAll(everywhere(cord, f)));
            if (found.isPresent()) {
                assumed.addAll(assumed(cord, tape));
                open.addAll(open(cord, tape));
            }
        }
        result.cords().forEach(cord -> rule.ofCalled(cord).ifPresent(findings::add));
        result.neckLoops().forEach(piece -> rule.ofLoop(piece).ifPresent(findings::add));
        if (isAGarment) {
            result.spokenOf().flatMap(rule::ofSpoken).ifPresent(findings::add);
            result.nightwear().finding().ifPresent(findings::add);
            result.nightwear().open().ifPresent(open::add);
        }
        return new Notes(findings, assumed, open);
    }

    /** A stop must stand on the sheets of all that the cord is. */
    private static List<Finding> everywhere(Cord cord, Finding first) {
        return first.isStop()
                ? cord.about().stream()
                        .map(
                                about ->
                                        new Finding(
                                                first.code(),
                                                about,
                                                first.level(),
                                                first.text(),
                                                first.remedy(),
                                                first.sources()))
                        .toList()
                : List.of(first);
    }

    private static List<Assumed> assumed(Cord cord, Tape tape) {
        List<Assumed> assumed = new ArrayList<>();
        if (cord.isPlaceNamed()) {
            assumed.add(
                    new Assumed(
                            cord.name() + ": where it lies",
                            cord.place().orElseThrow().word(),
                            "by its name and what it is sewn to; `cords` tells it"));
        }
        if (cord.isFreeCut()) {
            assumed.add(
                    new Assumed(
                            cord.name() + ": its free end",
                            tape.print(cord.free().orElseThrow()),
                            "all of its piece, the longest it can be; `cords` tells it"));
        }
        return assumed;
    }

    private static List<Open> open(Cord cord, Tape tape) {
        List<String> open = new ArrayList<>();
        if (cord.place().isEmpty()) {
            open.add("where " + cord.name() + " lies");
        }
        if (cord.free().isEmpty()) {
            open.add("how far the ends of " + cord.name() + " hang free");
        }
        return open.stream()
                .map(
                        what ->
                                new Open(
                                        what,
                                        "whether a child may wear it",
                                        "Write `"
                                                + CordLine.of(cord.name(), "waist", tape)
                                                + "`, with its"
                                                + " own place and length."))
                .toList();
    }

    private List<Block> blocks(Tape tape) {
        if (result.cords().isEmpty()) {
            return List.of();
        }
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (Cord cord : result.cords()) {
            rows.add(
                    List.of(
                            Table.Cell.of(cord.name()),
                            Table.Cell.of(cord.place().map(CordPlace::word).orElse("not told")),
                            Table.Cell.of(free(cord, tape))));
        }
        return List.of(
                new Block.Rows(
                        new Table(
                                "Cords",
                                "Cords, ties and drawstrings",
                                List.of("Which", "Where", "Each free end"),
                                rows)));
    }

    private static Both free(Cord cord, Tape tape) {
        boolean isNone = cord.free().filter(f -> !f.isPositive()).isPresent();
        return isNone ? Both.words("none") : Both.of(tape, cord.free(), "not told");
    }

    private Figures figures() {
        return new Figures()
                .list("cords", result.cords().stream().map(SafetyWorksheet::figures).toList());
    }

    private static Figures figures(Cord cord) {
        Optional<Length> free = cord.free();
        return new Figures()
                .text("name", cord.name())
                .text("place", cord.place().map(CordPlace::word))
                .length("free", free);
    }
}
