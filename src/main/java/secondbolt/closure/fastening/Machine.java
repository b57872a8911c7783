package secondbolt.closure.fastening;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/**
 * What the maker's sewing machine can do.
 *
 * @param longestHole the longest buttonhole it stitches, if told
 * @param footRoom what its buttonhole foot needs beyond both ends of a hole to lie level, if told
 */
public record Machine(Optional<Length> longestHole, Optional<Length> footRoom) {
    /** Nothing told. */
    public static final Machine UNKNOWN = new Machine(Optional.empty(), Optional.empty());

    /** What the foot needs where nothing is told. */
    public static final Convention USUAL_FOOT_ROOM =
            Convention.common(Length.ofInches(3, 16), Length.ofMillimetres(5));

    private static final Key<Length> LONGEST =
            Key.optional(
                    "longest hole",
                    Forms.length(LengthRange.of("5 mm", "80 mm")),
                    "The longest buttonhole it stitches by itself.",
                    "28 mm");
    private static final Key<Length> FOOT =
            Key.optional(
                    "foot room",
                    Forms.length(LengthRange.of("0 mm", "40 mm")),
                    "What its buttonhole foot needs beyond both ends of a hole to lie level.",
                    "5 mm");

    /** The section. */
    public static final Key<Machine> KEY =
            Key.optional(
                    "machine",
                    MapForm.of("a machine", List.of(LONGEST, FOOT), Machine::read),
                    "What the sewing machine can do.",
                    "{longest hole: 28 mm}");

    private static Optional<Machine> read(Fields fields) {
        return Optional.of(new Machine(fields.get(LONGEST), fields.get(FOOT)));
    }

    /** The foot's room: told, or what is usual. */
    public Length footRoom(Tape tape) {
        return footRoom.orElse(USUAL_FOOT_ROOM.on(tape));
    }

    /** Whether it stitches a hole of this length, as far as is known. */
    public boolean stitches(Length hole) {
        return longestHole.filter(hole::isLongerThan).isEmpty();
    }
}
