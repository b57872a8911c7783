package secondbolt.fit.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.measure.Tape;

/** What the page shows of the wearer beside the pattern. */
public final class SizePage {
    private final Tape tape;

    private SizePage(Tape tape) {
        this.tape = tape;
    }

    /**
     * The measurements, what is redrawn and what could be altered; what there is nothing of, not.
     */
    public static List<Block> blocks(SizeResult size, Tape tape) {
        SizePage page = new SizePage(tape);
        List<Block> blocks = new ArrayList<>();
        if (!size.measurements().isEmpty()) {
            blocks.add(new Block.Heading(size.size().map(s -> "Size: " + s).orElse("Size")));
            blocks.add(new Block.Rows(page.table(size.measurements())));
            onPieces(size.measurements()).ifPresent(blocks::add);
        }
        if (!size.redraw().isEmpty()) {
            blocks.add(new Block.Points(size.redraw()));
        }
        if (!size.suggestions().isEmpty()) {
            blocks.add(new Block.Heading("What could be altered"));
            blocks.add(
                    new Block.Prose(
                            "Suggestions from the difference between the wearer and the size; you"
                                    + " decide."
                                    + (size.suggestions().stream()
                                                    .anyMatch(s -> s.yaml().isPresent())
                                            ? " A line to paste goes under `alterations:`."
                                            : "")));
            blocks.add(
                    new Block.Points(
                            size.suggestions().stream().map(SizePage::suggestion).toList()));
        }
        return blocks;
    }

    private static Optional<Block> onPieces(List<SizeResult.Measurement> measurements) {
        List<String> names =
                measurements.stream()
                        .filter(SizeResult.Measurement::onPieces)
                        .map(m -> m.name().word())
                        .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Block.Prose(
                                "Finished is measured on the pieces, as nothing is told of it: "
                                        + String.join(", ", names)
                                        + "."));
    }

    private Table table(List<SizeResult.Measurement> measurements) {
        return new Table(
                "The wearer beside the pattern",
                "The wearer beside the pattern, with what the alterations add",
                List.of(
                        "Measurement",
                        "Body",
                        "Pattern is for",
                        "Finished",
                        "Ease",
                        "Nearest size"),
                measurements.stream().map(this::row).toList());
    }

    private List<Table.Cell> row(SizeResult.Measurement measurement) {
        return List.of(
                Table.Cell.of(measurement.name().word()),
                Table.Cell.of(Both.of(tape, measurement.body(), "")),
                Table.Cell.of(Both.of(tape, measurement.pattern(), "")),
                Table.Cell.of(Both.of(tape, measurement.finished(), "")),
                Table.Cell.of(Both.of(tape, measurement.ease(), "")),
                Table.Cell.of(measurement.nearest().orElse("")));
    }

    private static String suggestion(SizeResult.Suggestion suggestion) {
        return suggestion.text() + suggestion.yaml().map(line -> " `" + line + "`").orElse("");
    }
}
