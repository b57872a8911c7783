package secondbolt.sewing.plan;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Spelling;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Share;

/** How {@code sewing} is written and read. */
public final class SewingSection {
    private static final int MOST_SEAMS = 200;
    private static final int MOST_TIMES = 200;

    private static final Form<Finish> FINISHES =
            Forms.either(Forms.choice(Finish.values(), Finish::word), Forms.none(Finish.RAW));

    private static final Key<List<Stitch>> HAVE =
            Key.optional(
                    "have",
                    Forms.either(
                            ListForm.of("stitches", Forms.choice(Stitch.ofMachines()), 0, 7),
                            Forms.none(List.<Stitch>of())),
                    "The stitches of your machines; `none` if you sew by hand. Taken as lockstitch"
                            + " and zigzag if not told.",
                    "[lockstitch, zigzag, overlock three]");
    private static final Key<Stitch> STITCH =
            Key.optional(
                    "stitch",
                    Forms.choice(Stitch.joining()),
                    "The stitch that joins the seams; if not told a lockstitch, on a knit a narrow"
                            + " zigzag, without a machine a backstitch.",
                    "lockstitch");
    private static final Key<Length> STITCH_LENGTH =
            Key.optional(
                    "stitch length",
                    Forms.length(LengthRange.of("0.5 mm", "12 mm")),
                    "How long a stitch is; 25.4 mm divided by the stitches in an inch.",
                    "2.5 mm");
    private static final Key<Length> THICKNESS =
            Key.optional(
                    "seam thickness",
                    Forms.length(LengthRange.of("0.1 mm", "20 mm")),
                    "How thick the layers of a seam are together, pressed: fold the cloth to eight"
                            + " layers, press, measure, and take a quarter of it.",
                    "1 mm");
    private static final Key<Finish> FINISH =
            Key.optional(
                    "finish",
                    FINISHES,
                    "What becomes of the cut edges of the seams; if not told each edge is counted"
                            + " with a zigzag over it.",
                    "zigzag");
    private static final Key<SewingPlan.Neatened> NEATENED =
            Key.optional(
                    "edges",
                    Forms.choice(SewingPlan.Neatened.values(), SewingPlan.Neatened::word),
                    "Whether both edges of a seam are neatened apart, and pressed open, or"
                            + " together; apart if not told.",
                    "apart");
    private static final Key<Answer<Fraying>> FRAYS =
            Key.optional(
                    "frays",
                    Forms.orUnknown(Forms.choice(Fraying.values(), Fraying::word)),
                    "How the cloth frays: rub a cut edge twenty times. Threads loose by more than"
                            + " 3 mm (1/8 in) are much.",
                    "little");
    private static final Key<Placed<PieceEdge>> ON =
            Key.required(
                    "on",
                    Forms.placed(PieceEdge.form("an edge of a join, such as front.side")),
                    "An edge of the join that is meant.",
                    "front.side");
    private static final Key<Integer> TIMES =
            Key.optional(
                    "times",
                    Forms.whole(0, MOST_TIMES),
                    "How often this join is sewn, where it is not as often as its pieces are cut;"
                            + " six panels that are not closed to a ring have 5 seams.",
                    "5");
    private static final Key<List<SeamException>> EXCEPT =
            Key.optional(
                    "except",
                    ListForm.of(
                            "seams",
                            MapForm.of(
                                    "a seam that differs",
                                    List.of(ON, STITCH, FINISH, TIMES),
                                    fields ->
                                            Optional.of(
                                                    new SeamException(
                                                            fields.require(ON), choice(fields)))),
                            0,
                            MOST_SEAMS),
                    "Seams that are sewn or finished otherwise than the others, or not as often as"
                            + " their pieces are cut.",
                    "[{on: front.side, finish: french}]");
    private static final Key<Map<String, BigDecimal>> RATIO =
            Key.optional(
                    "ratio",
                    NamedForm.of("stitch", Forms.number("1", "100")),
                    "How many times its seam's length a stitch takes of thread, by your own trial:"
                            + " sew 12 cm on scraps, cut 1 cm off each end, unpick what is left, and"
                            + " divide the length of all its threads by 10 cm.",
                    "{lockstitch: 2.7}");

    /** The section. */
    public static final Key<SewingPlan> KEY =
            Key.optional(
                    "sewing",
                    MapForm.of(
                            "the sewing",
                            List.of(
                                    HAVE,
                                    STITCH,
                                    STITCH_LENGTH,
                                    THICKNESS,
                                    FINISH,
                                    NEATENED,
                                    FRAYS,
                                    EXCEPT,
                                    LineKeys.ALSO,
                                    ThreadKeys.KEY,
                                    RATIO),
                            SewingSection::plan),
                    "Stitches, seam finishes and thread.",
                    "{have: [lockstitch, zigzag], finish: zigzag, frays: little}");

    private SewingSection() {}

    private static SeamChoice choice(Fields fields) {
        return new SeamChoice(fields.get(STITCH), fields.get(FINISH), fields.get(TIMES));
    }

    private static Optional<SewingPlan> plan(Fields fields) {
        Optional<Map<Stitch, Share>> ratios = ratios(fields);
        return ratios.map(
                own ->
                        new SewingPlan(
                                new SewingMeans(
                                        fields.get(HAVE),
                                        fields.get(STITCH_LENGTH),
                                        fields.get(THICKNESS),
                                        own),
                                new SeamChoice(
                                        fields.get(STITCH), fields.get(FINISH), Optional.empty()),
                                fields.get(FRAYS).orElse(Answer.unknown()),
                                fields.get(NEATENED),
                                fields.get(EXCEPT).orElse(List.of()),
                                fields.get(LineKeys.ALSO).orElse(List.of()),
                                fields.get(ThreadKeys.KEY).orElse(ThreadPlan.NOTHING)));
    }

    private static Optional<Map<Stitch, Share>> ratios(Fields fields) {
        Map<Stitch, Share> ratios = new LinkedHashMap<>();
        boolean isSound = true;
        for (Map.Entry<String, BigDecimal> one : fields.get(RATIO).orElse(Map.of()).entrySet()) {
            Stitch stitch = Stitch.all().get(one.getKey());
            if (stitch == null) {
                isSound = false;
                fields.tell(
                        fields.placeIn(RATIO, one.getKey()),
                        "`" + one.getKey() + "`, which is no stitch known here",
                        Spelling.nearest(one.getKey(), Stitch.all().keySet())
                                        .map(near -> "`" + near + "`, ")
                                        .orElse("")
                                + "one of "
                                + Spelling.quoted(Stitch.all().keySet()));
            } else {
                ratios.put(stitch, Share.ofDecimal(one.getValue().toPlainString()));
            }
        }
        return isSound ? Optional.of(ratios) : Optional.empty();
    }
}
