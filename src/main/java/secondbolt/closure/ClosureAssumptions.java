package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Machine;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;

/**
 * What is taken of holes where nothing is told.
 *
 * @param tape the maker's
 */
record ClosureAssumptions(Tape tape) {
    /**
     * What is assumed of one closure.
     *
     * @param name the maker's name for it
     * @param closure as written
     * @param result worked out, if its length is known
     */
    List<Assumed> of(String name, Closure closure, Optional<ClosureResult> result) {
        Fastening fastening = closure.fastening();
        List<Assumed> assumed = new ArrayList<>();
        if (!fastening.hasHoles()) {
            return assumed;
        }
        assumed.add(beginning(name, fastening.holes()));
        if (fastening.ease().isEmpty()) {
            assumed.add(ease(name));
        }
        if (fastening.button().orElseThrow().isTakenAsHalfABall()) {
            assumed.add(
                    new Assumed(
                            name + ": height of the domed button",
                            "half its diameter",
                            "half a ball, the highest dome; write `thick` or `girth`"));
        }
        result.filter(r -> !r.plan().bulks().isEmpty())
                .filter(r -> r.input().machine().footRoom().isEmpty())
                .ifPresent(r -> assumed.add(footRoom(r)));
        return assumed;
    }

    private Assumed beginning(String name, Fastening.Holes holes) {
        String reach = tape.printSmall(holes.reach().on(tape));
        return switch (holes) {
            case UPRIGHT ->
                    new Assumed(
                            name + ": where an upright hole begins",
                            reach + " above the button's centre, running down",
                            holes.reach().source());
            case LEVEL ->
                    new Assumed(
                            name + ": where a level hole begins",
                            reach + " past the centre line toward the edge, running inward",
                            holes.reach().source());
        };
    }

    private Assumed ease(String name) {
        return new Assumed(
                name + ": working ease of the holes",
                "none",
                "for thick cloth "
                        + tape.printSmall(Fastening.USUAL_EASE.on(tape))
                        + " more is usual ("
                        + Fastening.USUAL_EASE.source()
                        + "); a trial decides");
    }

    private Assumed footRoom(ClosureResult result) {
        return new Assumed(
                result.name() + ": what the buttonhole foot needs beyond a hole",
                tape.printSmall(result.input().machine().footRoom(tape)),
                Machine.USUAL_FOOT_ROOM.source()
                        + "; try it against a seam and write `machine: {foot room: …}`");
    }
}
