package secondbolt.worksheet;

import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;

/** What a finding is about, and what a sheet shows. */
public sealed interface Subject {
    /** As a maker calls it. */
    String words();

    /** Whether what is said of this also holds of something that is shown. */
    boolean touches(Subject shown);

    /** Whether what is said of this also holds of anything among what is shown. */
    default boolean touchesAny(Set<Subject> shown) {
        return shown.stream().anyMatch(this::touches);
    }

    /**
     * The project as a whole, or what no page and no sheet shows by itself, such as the wearer.
     *
     * @param words as a maker calls it
     */
    record Whole(String words) implements Subject {
        @Override
        public boolean touches(Subject shown) {
            return true;
        }
    }

    /**
     * A cloth.
     *
     * @param words the maker's name for it
     */
    record Cloth(String words) implements Subject {
        @Override
        public boolean touches(Subject shown) {
            return equals(shown);
        }
    }

    /**
     * All cloths of one role, with what is laid on them.
     *
     * @param role what they are for
     */
    record Stock(Role role) implements Subject {
        @Override
        public String words() {
            return role.word();
        }

        @Override
        public boolean touches(Subject shown) {
            return equals(shown);
        }
    }

    /**
     * A piece of the pattern.
     *
     * @param words its name
     */
    record Piece(String words) implements Subject {
        @Override
        public boolean touches(Subject shown) {
            return equals(shown);
        }
    }

    /**
     * One edge of a piece.
     *
     * @param edge which
     */
    record Edge(PieceEdge edge) implements Subject {
        @Override
        public String words() {
            return edge.words();
        }

        @Override
        public boolean touches(Subject shown) {
            return equals(shown) || shown.equals(new Piece(edge.piece()));
        }
    }

    /**
     * Edges that belong together, such as those of a seam or of an opening.
     *
     * @param words as a maker writes or calls it
     * @param edges all of them
     */
    record Edges(String words, Set<PieceEdge> edges) implements Subject {
        /** Copies the edges. */
        public Edges {
            edges = Set.copyOf(edges);
        }

        @Override
        public boolean touches(Subject shown) {
            return equals(shown) || edges.stream().anyMatch(e -> new Edge(e).touches(shown));
        }
    }

    /**
     * A closure.
     *
     * @param words the maker's name for it
     */
    record Closure(String words) implements Subject {
        @Override
        public boolean touches(Subject shown) {
            return equals(shown);
        }
    }

    /**
     * A hem.
     *
     * @param words the maker's name for it
     */
    record Hem(String words) implements Subject {
        @Override
        public boolean touches(Subject shown) {
            return equals(shown);
        }
    }

    /**
     * What is dyed in one colour.
     *
     * @param words as a maker calls the colour
     */
    record Colour(String words) implements Subject {
        @Override
        public boolean touches(Subject shown) {
            return equals(shown);
        }
    }

    /**
     * A design.
     *
     * @param words the maker's name for it
     */
    record Design(String words) implements Subject {
        @Override
        public boolean touches(Subject shown) {
            return equals(shown);
        }
    }

    /**
     * A thing that is bought or in the house.
     *
     * @param words what it is called
     */
    record Supply(String words) implements Subject {
        @Override
        public boolean touches(Subject shown) {
            return equals(shown);
        }
    }
}
