package secondbolt.closure.fastening;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.worksheet.Convention;

/** How the overlap of a closure is written. */
public final class OverlapKeys {
    private static final Key<Length> EXTENSION =
            Key.optional(
                            "extension",
                            Forms.either(
                                    Forms.length(LengthRange.of("0 mm", "30 cm")),
                                    Forms.none(Length.ZERO)),
                            "From the line the fasteners lie on to the finished edge. Down a front or back"
                                    + " that line is the centre line; on a bag, a flap or a strap it goes"
                                    + " through the middle of the snap or button, and the finished edge is"
                                    + " the one that is seen, as of the bag's opening. It is added to no"
                                    + " piece: draw the piece as far as its finished edge, and say so with"
                                    + " `drawn to`. Needed for buttons and snaps, none if hooks or ties are"
                                    + " not told one.",
                            "1.8")
                    .asking(
                            "Measure on the pattern from the line marked centre to the fold or the"
                                    + " finished edge; or choose half the width of what closes it,"
                                    + " and a little more.");
    private static final Key<Overlap.DrawnTo> DRAWN_TO =
            Key.optional(
                    "drawn to",
                    Forms.choice(Overlap.DrawnTo.values(), Overlap.DrawnTo::word),
                    "How far the piece is drawn on whose edge the closure lies, with `on`: to its"
                            + " finished edge, the extension part of it; to the centre line only, so"
                            + " that there is no cloth for the extension; or to the seam of a band"
                            + " that has it. Asked where it is not told.",
                    "finished edge");
    private static final Key<Overlap.Laps> LAPS =
            Key.optional(
                            "laps",
                            Forms.choice(Overlap.Laps.values(), Overlap.Laps::word),
                            "Which side lies over, from the wearer's side; it has the holes. Needed for"
                                    + " buttons and snaps.",
                            "right over left")
                    .asking(
                            "Look at a garment the wearer likes to close: it is hers to choose. The"
                                    + " side that lies over has the holes.");
    private static final Key<Overlap.Worn> WORN =
            Key.optional(
                    "worn",
                    Forms.choice(Overlap.Worn.values(), Overlap.Worn::word),
                    "Where on the garment it is; front if not told.",
                    "front");
    private static final Key<Length> APART =
            Key.optional(
                    "rows apart",
                    Forms.length(LengthRange.of("2 cm", "40 cm")),
                    "For two rows: from one row to the other, the centre line between them.",
                    "12");
    private static final Key<Boolean> HIDDEN =
            Key.optional(
                    "hidden",
                    Forms.yesOrNo(),
                    "Whether the holes are worked in a layer below the one that is seen.",
                    "no");

    /** From the centre line to the finished edge of a shirt or a blouse. */
    private static final Convention USUAL_EXTENSION =
            Convention.common(Length.ofInches(3, 4), Length.ofMillimetres(20));

    private OverlapKeys() {}

    /** All keys that say how the sides lie over each other. */
    public static List<Key<?>> keys() {
        return List.of(EXTENSION, DRAWN_TO, LAPS, WORN, APART, HIDDEN);
    }

    private static Optional<Length> extension(Fields fields) {
        Length usual = USUAL_EXTENSION.on(fields.tape());
        return fields.orMeanwhile(
                EXTENSION,
                usual,
                fields.tape().print(usual) + " (" + USUAL_EXTENSION.source() + ")");
    }

    private static Optional<Overlap.Laps> laps(Fields fields) {
        return fields.orMeanwhile(
                LAPS,
                Overlap.Laps.RIGHT_OVER_LEFT,
                "right over left, as on most women's clothes (" + Convention.COMMON_PRACTICE + ")");
    }

    /** The overlap, unless the kind asks for keys that were not written. */
    public static Optional<Overlap> read(Fields fields, Fastening.Kind kind) {
        boolean laps = kind == Fastening.Kind.BUTTONS || kind == Fastening.Kind.SNAPS;
        boolean whole = true;
        for (Key<?> key : List.of(EXTENSION, LAPS)) {
            if (laps && fields.get(key).isEmpty() && !fields.isOpen(key)) {
                fields.tell(
                        fields.place(),
                        "a closure of " + kind.word() + " without `" + key.name() + "`",
                        key.asked(fields.tape()));
                whole = false;
            }
        }
        Overlap overlap =
                new Overlap(
                        extension(fields).orElse(Length.ZERO),
                        laps(fields).orElse(Overlap.Laps.RIGHT_OVER_LEFT),
                        fields.get(WORN).orElse(Overlap.Worn.FRONT),
                        fields.get(APART),
                        fields.get(HIDDEN).orElse(false),
                        fields.get(DRAWN_TO));
        if (whole && overlap.rowOut().isLongerThan(overlap.extension())) {
            fields.tell(
                    APART,
                    "rows so far apart that the outer one lies beyond the finished edge",
                    "less than twice the extension, or a wider extension");
            whole = false;
        }
        return whole ? Optional.of(overlap) : Optional.empty();
    }
}
