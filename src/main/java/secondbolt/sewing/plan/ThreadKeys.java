package secondbolt.sewing.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Share;

/** The keys of the thread. */
final class ThreadKeys {
    private static final Key<ThreadFibre> FIBRE =
            Key.optional(
                    "of",
                    Forms.choice(ThreadFibre.values(), ThreadFibre::word),
                    "What it is made of; taken as polyester if not told, which stays pale in most"
                            + " dye baths.",
                    "polyester");
    static final Key<String> COLOUR =
            Key.optional(
                    "colour", Forms.text(40), "Its colour, so that each is bought apart.", "slate");
    private static final Key<String> LINING_COLOUR =
            Key.optional(
                    "lining colour",
                    Forms.text(40),
                    "The colour of the lining's thread, if it is another.",
                    "cream");
    private static final Key<Length> SPOOL =
            Key.optional(
                    "spool",
                    Forms.length(LengthRange.of("5 m", "20000 m")),
                    "How much is on a spool, with its unit; 100 m or 100 yd if not told.",
                    "100 m");
    private static final Key<Length> CONE =
            Key.optional(
                    "cone",
                    Forms.length(LengthRange.of("5 m", "20000 m")),
                    "How much is on each cone or spool of an overlock machine; 1000 m or 1000 yd"
                            + " if not told.",
                    "1000 m");
    private static final Key<Share> WASTE =
            Key.optional(
                    "waste",
                    Forms.share(),
                    "What is added for ends, bobbins, trials and unpicking; 20 % if not told, where"
                            + " sources ask for 5 % to 20 %.",
                    "20 %");

    static final Key<ThreadPlan> KEY =
            Key.optional(
                    "thread",
                    MapForm.of(
                            "a thread",
                            List.of(FIBRE, COLOUR, LINING_COLOUR, SPOOL, CONE, WASTE),
                            ThreadKeys::thread),
                    "The thread.",
                    "{of: polyester, colour: slate, spool: 100 m}");

    private ThreadKeys() {}

    private static Optional<ThreadPlan> thread(Fields fields) {
        return Optional.of(
                new ThreadPlan(
                        fields.get(FIBRE),
                        fields.get(COLOUR),
                        fields.get(LINING_COLOUR),
                        fields.get(SPOOL),
                        fields.get(CONE),
                        fields.get(WASTE)));
    }
}
