package secondbolt.closure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Answer;
import secondbolt.file.source.Place;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** A closure by tape, as a test writes it. */
final class Written {
    private static final Place NOWHERE = Place.beginningOf("none");

    private final Length length;
    private Fastening fastening =
            buttons(Length.ofInches(1, 2), Length.ofInches(1, 8), Fastening.Holes.UPRIGHT);
    private Optional<Integer> count = Optional.of(2);
    private Optional<Length> largest = Optional.empty();
    private FastenerSpread.EndRange first = FastenerSpread.EndRange.of(Length.ZERO);
    private Optional<FastenerSpread.EndRange> last = Optional.empty();
    private List<PlacketSpot> meets = List.of();
    private List<PlacketSpot> bulks = List.of();
    private Overlap overlap = overlap(Length.ofMillimetres(18), Overlap.Laps.RIGHT_OVER_LEFT);
    private Machine machine = Machine.UNKNOWN;

    Written(Length length) {
        this.length = length;
    }

    static Written mm(int length) {
        return new Written(Length.ofMillimetres(length));
    }

    static Fastening buttons(Length across, Length thick, Fastening.Holes holes) {
        return new Fastening(
                Fastening.Kind.BUTTONS,
                Optional.of(
                        new Button(
                                Button.Shape.FLAT,
                                Optional.of(across),
                                Optional.of(thick),
                                Optional.empty(),
                                Button.Attached.SEWN_THROUGH)),
                Optional.empty(),
                Optional.empty(),
                holes,
                Map.of());
    }

    static Overlap overlap(Length extension, Overlap.Laps laps) {
        return new Overlap(extension, laps, Overlap.Worn.FRONT, Optional.empty(), false);
    }

    static PlacketSpot spot(int mm, String why) {
        return new PlacketSpot(Length.ofMillimetres(mm), why, Length.ofMillimetres(6));
    }

    Written of(Fastening other) {
        fastening = other;
        return this;
    }

    Written count(int many) {
        count = Optional.of(many);
        return this;
    }

    Written largestGap(int mm) {
        largest = Optional.of(Length.ofMillimetres(mm));
        return this;
    }

    Written from(Length firstAt, Length lastAt) {
        first = FastenerSpread.EndRange.of(firstAt);
        last = Optional.of(FastenerSpread.EndRange.of(lastAt));
        return this;
    }

    Written from(int firstMm, int lastMm) {
        return from(Length.ofMillimetres(firstMm), Length.ofMillimetres(lastMm));
    }

    Written firstOnly(Length at) {
        first = FastenerSpread.EndRange.of(at);
        last = Optional.empty();
        return this;
    }

    Written largestGap(Length widest) {
        largest = Optional.of(widest);
        return this;
    }

    Written firstBetween(int fromMm, int toMm) {
        first =
                new FastenerSpread.EndRange(
                        Length.ofMillimetres(fromMm), Length.ofMillimetres(toMm));
        return this;
    }

    Written meet(PlacketSpot... spots) {
        meets = List.of(spots);
        return this;
    }

    Written bulk(PlacketSpot... spots) {
        bulks = List.of(spots);
        return this;
    }

    Written overlap(Overlap other) {
        overlap = other;
        return this;
    }

    Written machine(int longestMm) {
        machine = new Machine(Optional.of(Length.ofMillimetres(longestMm)), Optional.empty());
        return this;
    }

    ClosureResult result(Tape tape) {
        Closure closure =
                new Closure(
                        new Placket.ByTape(Answer.known(length)),
                        fastening,
                        new FastenerSpread(count, largest, first, last, List.of(), List.of()),
                        overlap,
                        new Closure.Places(NOWHERE, NOWHERE, NOWHERE));
        return ClosureCalculation.work(
                new ClosureInput(
                        "front", closure, new PlacketPlan(length, meets, bulks), machine, tape),
                PlacketChange.NONE);
    }

    ClosureResult result() {
        return result(Tape.CENTIMETRE);
    }
}
