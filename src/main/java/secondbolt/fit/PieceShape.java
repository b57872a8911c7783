package secondbolt.fit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
     */
    record Taped(Length across, Length along, Map<String, Length> edges) implements PieceShape {
        /** Copies the edges in order. */
        public Taped {
            edges = Collections.unmodifiableMap(new LinkedHashMap<>(edges));
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
}
