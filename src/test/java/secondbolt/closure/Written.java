package secondbolt.closure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.fastening.Button;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Machine;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.Placket;
import secondbolt.closure.placket.PlacketPlan;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.row.ClosureCalculation;
import secondbolt.closure.row.ClosureInput;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.PlacketChange;
import secondbolt.file.source.Place;
import secondbolt.file.value.Answer;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** A closure by tape, as a test writes it. */
public final class Written {
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

    public Written(Length length) {
        this.length = length;
    }

    public static Written mm(int length) {
        return new Written(Length.ofMillimetres(length));
    }

    public static Fastening buttons(Length across, Length thick, Fastening.Holes holes) {
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

    public static Overlap overlap(Length extension, Overlap.Laps laps) {
        return new Overlap(
                extension, laps, Overlap.Worn.FRONT, Optional.empty(), false, Optional.empty());
    }

    public static PlacketSpot spot(int mm, String why) {
        return new PlacketSpot(Length.ofMillimetres(mm), why, Length.ofMillimetres(6));
    }

    public Written of(Fastening other) {
        fastening = other;
        return this;
    }

    public Written count(int many) {
        count = Optional.of(many);
        return this;
    }

    public Written uncounted() {
        count = Optional.empty();
        return this;
    }

    public Written largestGap(int mm) {
        largest = Optional.of(Length.ofMillimetres(mm));
        return this;
    }

    public Written from(Length firstAt, Length lastAt) {
        first = FastenerSpread.EndRange.of(firstAt);
        last = Optional.of(FastenerSpread.EndRange.of(lastAt));
        return this;
    }

    public Written from(int firstMm, int lastMm) {
        return from(Length.ofMillimetres(firstMm), Length.ofMillimetres(lastMm));
    }

    public Written firstOnly(Length at) {
        first = FastenerSpread.EndRange.of(at);
        last = Optional.empty();
        return this;
    }

    public Written largestGap(Length widest) {
        largest = Optional.of(widest);
        return this;
    }

    public Written firstBetween(int fromMm, int toMm) {
        first =
                new FastenerSpread.EndRange(
                        Length.ofMillimetres(fromMm), Length.ofMillimetres(toMm));
        return this;
    }

    public Written meet(PlacketSpot... spots) {
        meets = List.of(spots);
        return this;
    }

    public Written bulk(PlacketSpot... spots) {
        bulks = List.of(spots);
        return this;
    }

    public Written overlap(Overlap other) {
        overlap = other;
        return this;
    }

    public Written machine(int longestMm) {
        machine = new Machine(Optional.of(Length.ofMillimetres(longestMm)), Optional.empty());
        return this;
    }

    public ClosureResult result(Tape tape) {
        Closure closure =
                new Closure(
                        new Placket.ByTape(Answer.known(length)),
                        fastening,
                        new FastenerSpread(count, largest, first, last, List.of(), List.of()),
                        overlap,
                        new Closure.Places(NOWHERE, NOWHERE, NOWHERE),
                        List.of());
        return ClosureCalculation.work(
                new ClosureInput(
                        "front", closure, new PlacketPlan(length, meets, bulks), machine, tape),
                PlacketChange.NONE);
    }

    public ClosureResult result() {
        return result(Tape.CENTIMETRE);
    }
}
