package secondbolt.lay.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.garment.Role;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.plan.Placing;
import secondbolt.lay.stock.CuttingProgress;
import secondbolt.lay.stock.Trial;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Outline;
import secondbolt.shape.Region;
import secondbolt.textile.Textile;
import secondbolt.textile.extent.Flaw;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** Whether the pieces cut of one cloth can lie where they are said to have been cut. */
final class CutPlaces {
    /**
     * How far a piece may reach over another or over an edge before it is told: places are written
     * to the marks of a tape, and the chalk line has a width. Common practice, no source.
     */
    private static final double SLACK_MM = 1;

    private final CuttingProgress progress;
    private final ClothResult cloth;
    private final ClothYield yielded;
    private final List<Place> places = new ArrayList<>();
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    /**
     * A piece where it was cut.
     *
     * @param cut as written
     * @param piece one copy of it
     * @param whole what it took of the cloth
     * @param within the same less the slack all round
     */
    private record Place(Placing cut, LayPiece piece, Region whole, Region within) {}

    CutPlaces(CuttingProgress progress, ClothResult cloth, List<Placing> cuts, Tape tape) {
        this.progress = progress;
        this.cloth = cloth;
        this.yielded = cloth.finished().orElseThrow();
        this.tape = tape;
        for (Placing cut : cuts) {
            Optional<LayPiece> piece =
                    progress.copies().stream()
                            .filter(p -> p.piece().name().equals(cut.piece().value()))
                            .findFirst();
            Optional<Outline> outline = progress.outline(cut);
            if (piece.isPresent() && outline.isPresent()) {
                Region whole = Region.of(outline.get());
                places.add(new Place(cut, piece.get(), whole, less(whole)));
            }
        }
    }

    /** All that is wrong, each piece told once for each kind. */
    List<Finding> findings() {
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                overlap(places.get(i), places.get(j));
            }
        }
        places.forEach(this::edge);
        places.stream().filter(place -> !place.cut().isSpoilt()).forEach(this::onCloth);
        return List.copyOf(findings);
    }

    private void add(String code, Level level, String text, String remedy) {
        findings.add(new Finding(code, cloth.subject(), level, text, remedy));
    }

    private void overlap(Place one, Place two) {
        boolean meet = !one.within().intersection(two.within()).isEmpty();
        if (meet && !isCutFrom(one, two) && !isCutFrom(two, one)) {
            add(
                    "cut-pieces-overlap",
                    Level.STOP,
                    words(one) + " and " + words(two) + " were cut over each other.",
                    "That cannot be: measure `at` and `turn` of both again, or take a line away"
                            + " that is written twice. Until then nobody knows what is left of the"
                            + " cloth.");
        }
    }

    /** Whether the one was cut from the other, which was spoilt. */
    private static boolean isCutFrom(Place one, Place spoilt) {
        return spoilt.cut().isSpoilt() && one.within().minus(spoilt.whole()).isEmpty();
    }

    private void edge(Place place) {
        if (!place.within().minus(yielded.whole()).isEmpty()) {
            add(
                    "cut-beyond-edge",
                    Level.STOP,
                    words(place) + " reaches beyond the edge of the trimmed and washed cloth.",
                    "Measure `at` and `turn` again, from the left edge and the top of the trimmed"
                            + " and washed cloth; if it was cut there, `trim` or the size of the"
                            + " cloth is otherwise than written.");
        }
    }

    private void onCloth(Place place) {
        for (Flaw flaw : cloth.cloth().condition().flaws()) {
            Region lies = Region.of(yielded.placing().drawnIn(flaw.patch()));
            if (forbids(flaw, place.piece()) && !place.within().intersection(lies).isEmpty()) {
                add(
                        "cut-on-flaw",
                        Level.WARNING,
                        words(place) + " was cut over a flaw or feature: " + flaw.what() + ".",
                        "Look at it in the light. If it cannot stay, write `spoilt: yes` with the"
                                + " piece, and it is planned anew; if the place is wrong, measure"
                                + " `at` again.");
            }
        }
        turned(place);
    }

    /** Whether a piece should have kept off. */
    private static boolean forbids(Flaw flaw, LayPiece piece) {
        return switch (flaw.kind()) {
            case UNSOUND -> true;
            case HIDDEN_USE -> !piece.isHidden();
            case FEATURE ->
                    flaw.keptFor()
                            .filter(kept -> kept.value().piece().equals(piece.piece().name()))
                            .isEmpty();
        };
    }

    private void turned(Place place) {
        Role role = cloth.cloth().textile().roleOrMain();
        Trial trial = Trial.asWritten(progress.plan(), role, List.of(place.piece()));
        int turn = place.cut().lies().turnDegrees();
        boolean isOneWay = cloth.cloth().textile().napOrNone() == Textile.Nap.ONE_WAY;
        if (!trial.turns(place.piece(), false).contains(turn)) {
            add(
                    "cut-off-grain",
                    Level.WARNING,
                    words(place)
                            + " was turned by "
                            + turn
                            + " degrees, which its grain ("
                            + progress.plan().grain(place.piece().piece()).word()
                            + ") does not allow.",
                    "If it was cut so, hang it up and look how it drapes before you go on; if not,"
                            + " correct `turn`.");
        } else if (isOneWay && !trial.turns(place.piece(), true).contains(turn)) {
            add(
                    "cut-against-nap",
                    Level.WARNING,
                    words(place)
                            + " was turned by "
                            + turn
                            + " degrees on a cloth that runs one way; the rest is planned with its"
                            + " top the other way, and will shade otherwise.",
                    "Hold it beside the rest in the light. If it shows, write `spoilt: yes` with"
                            + " it, and it is planned anew; if it lay the right way, correct `turn`.");
        }
    }

    private String words(Place place) {
        Placing cut = place.cut();
        return cut.piece().value()
                + " ("
                + length(cut.at().xMm())
                + " from the left, "
                + length(cut.at().yMm())
                + " from the top)";
    }

    private String length(double mm) {
        return tape.print(Length.ofComputedMillimetres(mm));
    }

    /** A region less the slack on every side. */
    private static Region less(Region region) {
        return region.intersection(region.moved(SLACK_MM, 0))
                .intersection(region.moved(-SLACK_MM, 0))
                .intersection(region.moved(0, SLACK_MM))
                .intersection(region.moved(0, -SLACK_MM));
    }
}
