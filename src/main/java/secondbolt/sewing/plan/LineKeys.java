package secondbolt.sewing.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;

/** The keys of stitching that no join tells of. */
final class LineKeys {
    private static final int MOST_LINES = 100;
    private static final int MOST_EDGES = 60;
    private static final int MOST_ROWS = 200;

    private static final Form<List<Placed<PieceEdge>>> EDGES =
            ListForm.of(
                    "edges",
                    Forms.placed(PieceEdge.form("an edge of a piece, such as pocket.left")),
                    1,
                    MOST_EDGES);

    private static final Key<String> WHAT =
            Key.required("what", Forms.text(60), "What is stitched.", "pockets sewn on");
    private static final Key<List<Placed<PieceEdge>>> ALONG =
            Key.optional(
                    "along",
                    EDGES,
                    "The edges it runs along, as they come out after the alterations, on every copy"
                            + " that is cut; or write its length.",
                    "[pocket.left, pocket.bottom, pocket.right]");
    private static final Key<Length> LENGTH =
            Key.optional(
                    "length",
                    Forms.length(LengthRange.of("5 mm", "2000 m")),
                    "How long one row is in all, by tape; or write the edges it runs along.",
                    "120");
    private static final Key<Integer> ROWS =
            Key.optional(
                    "rows",
                    Forms.whole(0, MOST_ROWS),
                    "How many rows; one if not told, 0 where an edge needs no stitching, such as an"
                            + " old hem.",
                    "2");
    private static final Key<Stitch> STITCH =
            Key.optional(
                    "stitch",
                    Forms.choice(Stitch.all()),
                    "With which stitch; the seams' own if not told.",
                    "lockstitch");

    static final Key<List<OwnLine>> ALSO =
            Key.optional(
                    "also",
                    ListForm.of(
                            "lines of stitching",
                            MapForm.of(
                                            "a line of stitching",
                                            List.of(
                                                    WHAT,
                                                    ALONG,
                                                    LENGTH,
                                                    ROWS,
                                                    STITCH,
                                                    ThreadKeys.COLOUR),
                                            LineKeys::line)
                                    .with(Rule.one("along", "length")),
                            0,
                            MOST_LINES),
                    "Stitching that no join and no hem tells of: topstitching, pockets sewn on,"
                            + " casings, quilting.",
                    "[{what: pockets sewn on, along: [pocket.left, pocket.bottom, pocket.right]}]");

    private LineKeys() {}

    private static Optional<OwnLine> line(Fields fields) {
        boolean isAlong = fields.get(ALONG).isPresent();
        boolean isLong = fields.get(LENGTH).isPresent();
        boolean isOpen = fields.isOpen(ALONG) || fields.isOpen(LENGTH);
        if (isAlong == isLong && !(isOpen && !isAlong)) {
            fields.tell(
                    isAlong ? LENGTH : WHAT,
                    isAlong
                            ? "a line with `along` and `length`"
                            : "a line without `along` or `length`",
                    ALONG.line(fields.tape())
                            + ", the edges it runs along, or "
                            + LENGTH.line(fields.tape()));
            return Optional.empty();
        }
        return Optional.of(
                new OwnLine(
                        fields.require(WHAT),
                        fields.get(ALONG).orElse(List.of()),
                        fields.get(LENGTH),
                        fields.get(ROWS).orElse(1),
                        fields.get(STITCH),
                        fields.get(ThreadKeys.COLOUR)));
    }
}
