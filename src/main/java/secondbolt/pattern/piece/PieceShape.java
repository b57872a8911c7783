package secondbolt.pattern.piece;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.EdgeLine;

/** The shape of a piece: drawn, or known by tape only. */
public sealed interface PieceShape {
    /** Answers with the function for the kind of shape. */
    <R> R accept(Visitor<R> visitor);

    /** One answer for each kind of shape. */
    interface Visitor<R> {
        /** Answers for a drawn shape. */
        R drawn(Drawn drawn);

        /** Answers for one known by tape. */
        R taped(Taped taped);
    }

    /**
     * Edge after edge, back to the start.
     *
     * @param edges in order, each beginning where the one before ends
     */
    record Drawn(List<NamedEdge> edges) implements PieceShape {
        /** Copies the edges. */
        public Drawn {
            edges = List.copyOf(edges);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.drawn(this);
        }

        /** The smallest box round it. */
        public Box box() {
            return edges.stream().map(e -> e.line().box()).reduce(Box::with).orElseThrow();
        }

        /** The edge of this name, if it has one. */
        public Optional<EdgeLine> find(String name) {
            return edges.stream()
                    .filter(e -> e.name().equals(name))
                    .map(NamedEdge::line)
                    .findFirst();
        }
    }

    /**
     * A box with some edges measured by tape.
     *
     * @param across of the box
     * @param along of the box
     * @param edges the lengths that were taped
     * @param crosses which of them a lengthen or shorten line crosses, for the lines where the
     *     maker says
     * @param open edges of which it is not known whether the alterations changed them; they keep
     *     the length that was taped
     */
    record Taped(
            Length across,
            Length along,
            Map<String, Length> edges,
            Map<String, List<String>> crosses,
            Set<String> open)
            implements PieceShape {
        /** Copies the edges in order. */
        public Taped {
            edges = Collections.unmodifiableMap(new LinkedHashMap<>(edges));
            crosses = Collections.unmodifiableMap(new LinkedHashMap<>(crosses));
            open = Collections.unmodifiableSet(new LinkedHashSet<>(open));
        }

        /** As taped, before any alteration. */
        static Taped of(
                AcrossAlong<Length> box,
                Map<String, Length> edges,
                Map<String, List<String>> crosses) {
            return new Taped(box.across(), box.along(), edges, crosses, Set.of());
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.taped(this);
        }
    }

    /** The names of its edges whose length is known, without measuring them. */
    default Set<String> edgeNames() {
        return accept(
                new Visitor<Set<String>>() {
                    @Override
                    public Set<String> drawn(Drawn drawn) {
                        Set<String> names = new LinkedHashSet<>();
                        drawn.edges().forEach(edge -> names.add(edge.name()));
                        return names;
                    }

                    @Override
                    public Set<String> taped(Taped taped) {
                        return taped.edges().keySet();
                    }
                });
    }

    /** How long each edge is along its sewing line, as drawn, once. */
    default Map<String, Length> edgeLengths() {
        return accept(
                new Visitor<Map<String, Length>>() {
                    @Override
                    public Map<String, Length> drawn(Drawn drawn) {
                        Map<String, Length> lengths = new LinkedHashMap<>();
                        for (NamedEdge edge : drawn.edges()) {
                            lengths.put(
                                    edge.name(),
                                    Length.ofComputedMillimetres(edge.line().lengthMm()));
                        }
                        return lengths;
                    }

                    @Override
                    public Map<String, Length> taped(Taped taped) {
                        return taped.edges();
                    }
                });
    }

    /** The drawn shape, if it is one. */
    default Optional<Drawn> asDrawn() {
        return accept(
                new Visitor<Optional<Drawn>>() {
                    @Override
                    public Optional<Drawn> drawn(Drawn drawn) {
                        return Optional.of(drawn);
                    }

                    @Override
                    public Optional<Drawn> taped(Taped taped) {
                        return Optional.empty();
                    }
                });
    }

    /** The shape known by tape, if it is one. */
    default Optional<Taped> asTaped() {
        return accept(
                new Visitor<Optional<Taped>>() {
                    @Override
                    public Optional<Taped> drawn(Drawn drawn) {
                        return Optional.empty();
                    }

                    @Override
                    public Optional<Taped> taped(Taped taped) {
                        return Optional.of(taped);
                    }
                });
    }

    /** Whether it is not known if the alterations changed this edge. */
    default boolean isOpen(String edge) {
        return asTaped().filter(taped -> taped.open().contains(edge)).isPresent();
    }
}
