package secondbolt.closure;

import java.util.Optional;
import secondbolt.file.Answer;
import secondbolt.file.Placed;
import secondbolt.fit.EdgeSum;
import secondbolt.fit.FitResult;
import secondbolt.measure.Length;

/** Where a closure lies, from the finished top edge to the finished bottom edge. */
public sealed interface Placket {
    /** Its length after all alterations; nothing while it is unknown. */
    Optional<Length> length(Optional<FitResult> fit);

    /** Its length before the alterations; nothing while it is unknown. */
    Optional<Length> lengthBefore(Optional<FitResult> fit);

    /** The edges it lies on; nothing if it is measured by tape. */
    Optional<Placed<EdgeSum>> edges();

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
    }

    /**
     * On edges of the pattern, one below the other, so that it follows the alterations.
     *
     * @param on the edges and where they are written
     */
    record OnEdges(Placed<EdgeSum> on) implements Placket {
        @Override
        public Optional<Length> length(Optional<FitResult> fit) {
            return fit.map(result -> result.lengthAfter(on.value()));
        }

        @Override
        public Optional<Length> lengthBefore(Optional<FitResult> fit) {
            return fit.map(result -> result.lengthBefore(on.value()));
        }

        @Override
        public Optional<Placed<EdgeSum>> edges() {
            return Optional.of(on);
        }
    }
}
