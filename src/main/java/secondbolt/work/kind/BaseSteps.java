package secondbolt.work.kind;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.GarmentKind;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/**
 * The steps of sewing that no other topic gives, by the kind of garment.
 *
 * @param kind if told; else there is one step that sews all
 * @param pattern if written; else all parts that are usual for the kind
 * @param order steps in her own order, by which the way of the sleeves is known
 */
public record BaseSteps(Optional<GarmentKind> kind, Optional<Pattern> pattern, List<String> order) {
    /** What is there only if its pieces say so. */
    private static final Set<Part> BY_PIECES =
            EnumSet.of(Part.SLITS, Part.LINING, Part.LINING_IN, Part.TURN, Part.BIB, Part.GORES);

    private static final String FLY =
            " Work the buttonholes of a fly into its facing before that is set in (The New Dressmaker,"
                    + " 1921).";

    private static final String ALL_SEWN =
            "Every seam that is written is sewn: look for one that was left out, and press the whole.";

    /** Copies the list. */
    public BaseSteps {
        order = List.copyOf(order);
    }

    /** Where the order comes from; empty if there is no choice in it. */
    public String source() {
        return kindOrder().source();
    }

    /** The steps, in the order of the source; none if neither pattern nor kind is told. */
    public List<WorkStep> steps() {
        Optional<SewnParts> sewn = sewn();
        List<Part> there = there();
        List<WorkStep> steps = new ArrayList<>();
        if (kind.isEmpty() && pattern.isEmpty()) {
            return steps;
        }
        PartRules rules = new PartRules(SleeveWay.of(kind, order));
        for (Part part : there) {
            String words = words(part, sewn, there);
            WorkStep step =
                    WorkStep.of(part.word(), Stage.SEWING, words)
                            .minding(Hazard.NEEDLE, Hazard.IRON);
            steps.add(rules.on(part == Part.FIT_ON ? tried(step) : step, part));
        }
        steps.add(lastPress());
        return steps;
    }

    private KindOrder kindOrder() {
        List<Piece> all = pattern.map(Pattern::pieces).orElse(List.of());
        boolean isLined = all.stream().anyMatch(p -> SeamParts.isLining(p) || SeamParts.isLined(p));
        boolean hasBib =
                all.stream()
                        .flatMap(piece -> PieceWords.of(piece.name()).stream())
                        .anyMatch(part -> part == Part.BIB);
        return kind.map(k -> KindOrder.of(k, isLined, hasBib)).orElse(KindOrder.PLAIN);
    }

    private boolean isThere(Part part, Optional<SewnParts> sewn) {
        return sewn.map(s -> s.has(part == Part.TURN ? Part.LINING_IN : part))
                .orElseGet(() -> !BY_PIECES.contains(part) && !isGatheredUnsaid(part));
    }

    private boolean isGatheredUnsaid(Part part) {
        return part == Part.GATHER && kind.filter(k -> k == GarmentKind.APRON).isEmpty();
    }

    private String words(Part part, Optional<SewnParts> sewn, List<Part> there) {
        boolean isTrousers = kind.filter(k -> k == GarmentKind.TROUSERS).isPresent();
        String does =
                part == Part.SLEEVES && isChosen(there)
                        ? SleeveWay.of(kind, order).words()
                        : part.does() + (part == Part.OPENING_EDGES && isTrousers ? FLY : "");
        String what = sewn.map(s -> s.words(part)).orElse("");
        if (part == Part.ASSEMBLE && what.isEmpty() && there.size() > 1 && sewn.isPresent()) {
            return ALL_SEWN;
        }
        return what.isEmpty() ? does : does + " " + what;
    }

    private static boolean isChosen(List<Part> there) {
        return there.contains(Part.SLEEVE_SEAMS) || there.contains(Part.SIDE_SEAMS);
    }

    /** How sleeves come in, and how the other way is chosen; nothing if there is no choice. */
    public Optional<String> sleeveChoice() {
        List<Part> there = there();
        Part seams = there.contains(Part.SLEEVE_SEAMS) ? Part.SLEEVE_SEAMS : Part.SIDE_SEAMS;
        return there.contains(Part.SLEEVES) && isChosen(there)
                ? Optional.of(SleeveWay.of(kind, order).other(seams.word()))
                : Optional.empty();
    }

    private Optional<SewnParts> sewn() {
        return pattern.map(p -> SewnParts.of(p, kindOrder().parts()));
    }

    private List<Part> there() {
        Optional<SewnParts> sewn = sewn();
        return kindOrder().parts().stream()
                .filter(part -> part.isAlways() || isThere(part, sewn))
                .toList();
    }

    private static WorkStep tried(WorkStep step) {
        return step.checking("Nothing is trimmed yet that may have to be let out.");
    }

    /** Common practice, no source. */
    private static WorkStep lastPress() {
        return WorkStep.of(
                        "last press",
                        Stage.FINISHING,
                        "Press the whole on the wrong side, and look inside for pins and basting"
                                + " threads.")
                .after(Part.ASSEMBLE.word(), "What is still to be sewn is pressed again.")
                .minding(Hazard.IRON, Hazard.NEEDLE);
    }
}
