package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.textile.extent.Flaw;
import secondbolt.textile.extent.Sides;

/**
 * The tables of one cloth.
 *
 * @param name the maker's name for it
 * @param tape to print with
 */
record ClothTables(String name, Tape tape) {
    private static final List<String> FLAWS =
            List.of("Letter", "What", "Across, from the left", "Along, from the top", "Pieces");
    private static final List<String> RECTANGLES =
            List.of("Number", "Begins across", "Begins along", "Width", "Length");
    private static final List<String> LENGTHS = List.of("Bolt width", "By area", "Clear run");

    /** A row for each flaw and feature, lettered as in the picture. */
    Block flaws(List<Flaw> flaws) {
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (Flaw flaw : flaws) {
            Sides<Length> bounds = flaw.patch().bounds();
            rows.add(
                    List.of(
                            Table.Cell.of(FlawLetters.letter(rows.size())),
                            Table.Cell.of(flaw.what()),
                            fromTo(bounds.left(), bounds.right()),
                            fromTo(bounds.top(), bounds.bottom()),
                            Table.Cell.of(use(flaw))));
        }
        String of = "Flaws and features of " + name;
        return new Block.Rows(
                new Table(of, of + ", where they lie on the cloth as measured", FLAWS, rows));
    }

    private Table.Cell fromTo(Length from, Length to) {
        return Table.Cell.of(Both.of(tape, t -> fromTo(t.print(from), t.print(to))));
    }

    /** What is smaller than a mark of the tape lies at one place of it. */
    private static String fromTo(String from, String to) {
        return from.equals(to) ? "at " + to : from + " to " + to;
    }

    private static String use(Flaw flaw) {
        return switch (flaw.kind()) {
            case UNSOUND -> "keep off";
            case HIDDEN_USE -> "hidden pieces only";
            case FEATURE ->
                    flaw.keptFor().map(edge -> "kept for " + edge.value().words()).orElse("avoid");
        };
    }

    /**
     * A row for each clear rectangle, numbered as in the picture.
     *
     * @param rectangles in millimetres from the left top corner of the trimmed cloth
     */
    Block rectangles(List<Box> rectangles) {
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (Box box : rectangles) {
            rows.add(
                    List.of(
                            Table.Cell.of(Integer.toString(rows.size() + 1)),
                            Table.Cell.of(Both.of(tape, t -> t.print(start(t, box.leftMm())))),
                            Table.Cell.of(Both.of(tape, t -> t.print(start(t, box.topMm())))),
                            inside(box.leftMm(), box.rightMm()),
                            inside(box.topMm(), box.bottomMm())));
        }
        return new Block.Rows(
                new Table(
                        "Clear rectangles of " + name,
                        "Largest clear rectangles of "
                                + name
                                + ", measured from the left edge and the top of the trimmed cloth;"
                                + " each leaves out the ones before it",
                        RECTANGLES,
                        rows));
    }

    /** The first mark of the tape inside, so that what is measured off is there for certain. */
    private static Length start(Tape tape, double fromMm) {
        return Length.ofComputedMillimetres(fromMm).roundedUpTo(tape.mark());
    }

    private Table.Cell inside(double fromMm, double toMm) {
        Length to = Length.ofComputedMillimetres(toMm);
        return Table.Cell.of(
                Both.of(tape, t -> t.print(to.roundedDownTo(t.mark()).minus(start(t, fromMm)))));
    }

    /** What it comes to as cloth of the bolt widths of the maker's system. */
    Block lengths(List<ClothYield.EquivalentLength> lengths) {
        return new Block.Rows(
                new Table(
                        "Lengths by bolt width of " + name,
                        name + " as cloth from the bolt, cut between the selvages",
                        LENGTHS,
                        rows(lengths, tape)));
    }

    /** The same for those of the other. */
    Block otherLengths(List<ClothYield.EquivalentLength> lengths) {
        return new Block.Rows(
                new Table(
                        "Lengths by the other system's bolt widths of " + name,
                        "The same for the other system's bolt widths",
                        LENGTHS,
                        rows(lengths, tape.other())));
    }

    private List<List<Table.Cell>> rows(List<ClothYield.EquivalentLength> lengths, Tape system) {
        return lengths.stream()
                .filter(length -> length.bolt().tape() == system)
                .map(
                        length ->
                                List.of(
                                        Table.Cell.of(system.print(length.bolt().width())),
                                        inHand(length.byArea()),
                                        clearRun(length.clearRunOrZero(), system)))
                .toList();
    }

    private Table.Cell inHand(Length length) {
        return Table.Cell.of(Both.of(tape, t -> t.printInHand(length)));
    }

    /** Less than one step of what shops cut is no run that a piece could be laid on. */
    private Table.Cell clearRun(Length run, Tape system) {
        return run.isShorterThan(system.shopStep()) ? Table.Cell.of("none") : inHand(run);
    }
}
