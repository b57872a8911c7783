package secondbolt.work.plan;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Placed;
import secondbolt.garment.GarmentKind;

/** The keys {@code garment} and {@code work} of the project file, and how they are read. */
public final class WorkSection {
    private static final int MOST_STEPS = 200;

    /** More than a garment has steps that could change places. */
    private static final int MOST_ORDERED = 80;

    /** What is made. */
    public static final Key<GarmentKind> GARMENT =
            Key.optional(
                            "garment",
                            Forms.choice(GarmentKind.values(), GarmentKind::word),
                            "What it becomes: which order of work applies.",
                            "shirt")
                    .asking("Choose the kind that is sewn most like it, or `other`.");

    private static final Key<String> DO =
            Key.required("do", Forms.text(200), "What to do.", "Topstitch the yoke.");
    private static final Key<String> NAME =
            Key.optional(
                            "name",
                            name(),
                            "A name of its own, by which others follow it and it is ticked; what to do,"
                                    + " without its full stop, if not told.",
                            "yoke")
                    .asking("A word or two that no other step has.");
    private static final Key<List<Placed<String>>> AFTER =
            Key.optional("after", steps(), "The step it follows, or several.", "assemble")
                    .asking("Look in the order on the page for what it needs.");
    private static final Key<List<Placed<String>>> BEFORE =
            Key.optional("before", steps(), "The step that follows it, or several.", "last press")
                    .asking("Look in the order on the page for what needs it.");
    private static final Key<Duration> WAIT =
            Key.optional(
                            "wait",
                            Forms.parsed(RestWords.RIGHT, RestWords::parse),
                            "How long must pass after it before what follows.",
                            "24 h")
                    .asking("Try it on a scrap, and look when it is dry, cold or at rest.");
    private static final Key<List<Placed<OwnStep>>> OWN =
            Key.optional(
                    "own",
                    ListForm.of("steps of your own", Forms.placed(own()), 0, MOST_STEPS),
                    "Steps of your own, put in where they belong.",
                    "[{after: assemble, do: Topstitch the yoke.}]");
    private static final Key<List<Placed<Ticked>>> DONE =
            Key.optional(
                            "done",
                            done(),
                            "The names of the steps that are done, each with its day if you like.",
                            "{prewash: 2026-11-02}")
                    .asking("Look at the cloth and the pieces: what is done can be seen.");
    private static final Key<List<Placed<String>>> ORDER =
            Key.optional(
                    "order",
                    Forms.either(
                            ListForm.of(
                                    "names of steps, the first first",
                                    Forms.placed(name()),
                                    2,
                                    MOST_ORDERED),
                            Forms.none(List.of())),
                    "Some steps in an order of your own; if it would spoil the cloth you are told.",
                    "[collar, cuffs]");
    private static final Key<LocalDate> BEGINS =
            Key.optional("begins", day(), "The day you begin or go on.", "2026-11-28")
                    .asking("Leave it out: the days are then counted from day 1.");

    /** The section. */
    public static final Key<WorkPlan> KEY =
            Key.optional(
                    "work",
                    MapForm.of(
                            "the work",
                            List.of(OWN, DONE, ORDER, BEGINS),
                            fields -> Optional.of(plan(fields))),
                    "Steps of your own, what is done, and when you begin.",
                    "{own: [{after: assemble, do: Topstitch the yoke.}], done: [prewash]}");

    private WorkSection() {}

    private static Form<String> name() {
        return Forms.nameOf(OwnStep.LONGEST_NAME);
    }

    /** Of a calendar that anyone sews by. */
    private static Form<LocalDate> day() {
        return Forms.checked(
                Forms.date(),
                day -> day.getYear() >= 1900 && day.getYear() < 2200,
                "a day such as 2026-11-28");
    }

    private static Form<List<Placed<String>>> steps() {
        return Forms.either(
                ListForm.of("names of steps", Forms.placed(name()), 1, MOST_STEPS),
                Forms.map(Forms.placed(name()), List::of));
    }

    private static Form<OwnStep> own() {
        return MapForm.of(
                        "a step of your own",
                        List.of(DO, NAME, AFTER, BEFORE, WAIT),
                        WorkSection::own)
                .with(Rule.some("after", "before"));
    }

    private static Optional<OwnStep> own(Fields fields) {
        List<Placed<String>> after = fields.get(AFTER).orElse(List.of());
        List<Placed<String>> before = fields.get(BEFORE).orElse(List.of());
        boolean isOpen = fields.isOpen(AFTER) || fields.isOpen(BEFORE);
        if (after.isEmpty() && before.isEmpty() && !isOpen) {
            fields.tell(
                    fields.place(),
                    "a step of your own that neither follows nor comes before another",
                    "`after: assemble`, with the name of the step that it follows");
            return Optional.empty();
        }
        return Optional.of(
                new OwnStep(fields.require(DO), fields.get(NAME), after, before, fields.get(WAIT)));
    }

    private static Form<List<Placed<Ticked>>> done() {
        Form<List<Placed<Ticked>>> dated =
                Forms.map(
                        Forms.placed(
                                NamedForm.atMost(
                                        MOST_STEPS, "step that is done", Forms.orUnknown(day()))),
                        WorkSection::onDays);
        Form<List<Placed<Ticked>>> undated =
                Forms.map(
                        ListForm.of("names of steps", Forms.placed(name()), 0, MOST_STEPS),
                        names -> names.stream().map(WorkSection::ticked).toList());
        return Forms.either(dated, undated);
    }

    private static Placed<Ticked> ticked(Placed<String> name) {
        return new Placed<>(new Ticked(name.value(), Optional.empty()), name.place());
    }

    private static List<Placed<Ticked>> onDays(Placed<Map<String, Answer<LocalDate>>> dated) {
        return dated.value().entrySet().stream()
                .map(day -> new Ticked(day.getKey(), day.getValue().toOptional()))
                .map(ticked -> new Placed<>(ticked, dated.place()))
                .toList();
    }

    private static WorkPlan plan(Fields fields) {
        return new WorkPlan(
                fields.get(OWN).orElse(List.of()),
                fields.get(DONE).orElse(List.of()).stream()
                        .map(ticked -> atItsName(fields, ticked))
                        .toList(),
                fields.get(ORDER).orElse(List.of()),
                fields.get(BEGINS));
    }

    /** Where its name stands, of those that are written with their days. */
    private static Placed<Ticked> atItsName(Fields fields, Placed<Ticked> ticked) {
        String step = ticked.value().step();
        return fields.lettersIn(DONE, step).isPresent()
                ? new Placed<>(ticked.value(), fields.placeIn(DONE, step))
                : ticked;
    }
}
