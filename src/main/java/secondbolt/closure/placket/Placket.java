package secondbolt.closure.placket;

import java.util.List;
import java.util.Optional;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.file.value.Answer;
import secondbolt.file.value.Placed;
import secondbolt.fit.result.EdgeRow;
import secondbolt.fit.result.FitResult;
import secondbolt.hem.plan.TurnedUp;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;

/** Where a closure lies, from the finished top edge to the finished bottom edge. */
public sealed interface Placket {
    /** Its length after all alterations; nothing while it is unknown. */
    Optional<Length> length(Optional<FitResult> fit);

    /** Its length before the alterations; nothing while it is unknown. */
    Optional<Length> lengthBefore(Optional<FitResult> fit);

    /** The edges it lies on; nothing if it is measured by tape. */
    Optional<Placed<EdgeSum>> edges();

    /** Where the seams between its edges cross it, from the top. */
    List<Length> joins(Optional<FitResult> fit);

    /** The hems it ends in, which are bulk there. */
    List<PlacketSpot> hemmedEnds(Optional<FitResult> fit);

    /** The same placket on a pattern on which this is turned up. */
    Placket with(List<TurnedUp> turned);

    /**
     * Where a place on it comes after the alterations, from the top.
     *
     * @return nothing if it is level with a mark that none of its pieces has
     */
    Optional<Length> place(FastenerSpread.At at, Optional<FitResult> fit);

    /** Whether an edge it lies on is itself turned up by a hem, as the mouth of a bag is. */
    boolean isOnAHem();

    /**
     * Measured by tape.
     *
     * @param measured its length, if known
     */
    record ByTape(Answer<Length> measured) implements Placket {
        @Override
        public Optional<Length> length(Optional<FitResult> fit) {
            return measured.toOptional();
        }

        @Override
        public Optional<Length> lengthBefore(Optional<FitResult> fit) {
            return measured.toOptional();
        }

        @Override
        public Optional<Placed<EdgeSum>> edges() {
            return Optional.empty();
        }

        @Override
        public List<Length> joins(Optional<FitResult> fit) {
            return List.of();
        }

        @Override
        public Optional<Length> place(FastenerSpread.At at, Optional<FitResult> fit) {
            return at.printed();
        }

        /** Nothing is known of what a tape ends at. */
        @Override
        public List<PlacketSpot> hemmedEnds(Optional<FitResult> fit) {
            return List.of();
        }

        @Override
        public boolean isOnAHem() {
            return false;
        }

        @Override
        public Placket with(List<TurnedUp> turned) {
            return this;
        }
    }

    /**
     * On edges of the pattern, one below the other, so that it follows the alterations.
     *
     * @param on the edges and where they are written
     * @param turnedUp the hems of the pattern
     */
    record OnEdges(Placed<EdgeSum> on, List<TurnedUp> turnedUp) implements Placket {
        /** Copies the hems. */
        public OnEdges {
            turnedUp = List.copyOf(turnedUp);
        }

        private Optional<EdgeRow> row(Optional<FitResult> fit) {
            return fit.map(result -> new EdgeRow(result, on.value()));
        }

        @Override
        public Optional<Length> length(Optional<FitResult> fit) {
            return row(fit).map(EdgeRow::length);
        }

        @Override
        public Optional<Length> lengthBefore(Optional<FitResult> fit) {
            return row(fit).map(EdgeRow::lengthBefore);
        }

        @Override
        public Optional<Placed<EdgeSum>> edges() {
            return Optional.of(on);
        }

        @Override
        public List<Length> joins(Optional<FitResult> fit) {
            return row(fit).map(EdgeRow::joins).orElse(List.of());
        }

        @Override
        public List<PlacketSpot> hemmedEnds(Optional<FitResult> fit) {
            return fit.map(
                            f ->
                                    HemmedEnds.atTheEnds(
                                            on.value(), f, f.lengthAfter(on.value()), turnedUp))
                    .orElse(List.of());
        }

        @Override
        public boolean isOnAHem() {
            return turnedUp.stream().anyMatch(up -> on.value().pieceEdges().contains(up.edge()));
        }

        @Override
        public Placket with(List<TurnedUp> turned) {
            return new OnEdges(on, turned);
        }

        @Override
        public Optional<Length> place(FastenerSpread.At at, Optional<FitResult> fit) {
            return row(fit).flatMap(
                            row ->
                                    at.mark()
                                            .map(m -> row.level(m.piece(), m.edge()))
                                            .orElseGet(() -> at.printed().map(row::carried)));
        }
    }
}
