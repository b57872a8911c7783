package secondbolt.file.source;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A piece of a YAML file as it was written, before anything gives it a type. */
public sealed interface Node {
    /** Where it begins. */
    Place place();

    /** Answers with the function for the kind of node. */
    <R> R accept(Visitor<R> visitor);

    /** One answer for each kind of node. */
    interface Visitor<R> {
        /** Answers for a single value. */
        R text(Text text);

        /** Answers for a list. */
        R listing(Listing listing);

        /** Answers for keys and values. */
        R mapping(Mapping mapping);

        /** Answers for what could not be read. */
        R lost(Lost lost);
    }

    /**
     * A single value, with its letters as written.
     *
     * @param place where it begins
     * @param text its letters, without spaces at the ends
     */
    record Text(Place place, String text) implements Node {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }
    }

    /**
     * A list.
     *
     * @param place where it begins
     * @param items in order
     * @param splitByComma whether a decimal comma seems to have split one of its numbers
     */
    record Listing(Place place, List<Node> items, boolean splitByComma) implements Node {
        /** Copies the items. */
        public Listing {
            items = List.copyOf(items);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.listing(this);
        }
    }

    /** Keys and their values, in order. */
    final class Mapping implements Node {
        private final Place place;
        private final List<Pair> pairs;
        private final Map<String, Pair> byKey = new HashMap<>();

        /**
         * Copies the pairs.
         *
         * @param place where the first key stands
         * @param pairs each key once
         */
        public Mapping(Place place, List<Pair> pairs) {
            this.place = place;
            this.pairs = List.copyOf(pairs);
            this.pairs.forEach(pair -> byKey.putIfAbsent(pair.key().text(), pair));
        }

        @Override
        public Place place() {
            return place;
        }

        /** The keys with their values, in order. */
        public List<Pair> pairs() {
            return pairs;
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.mapping(this);
        }

        /** The pair with this key, if there is one. */
        public Optional<Pair> find(String key) {
            return Optional.ofNullable(byKey.get(key));
        }
    }

    /**
     * What stood here could not be read, and that is told already.
     *
     * @param place where it begins
     */
    record Lost(Place place) implements Node {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.lost(this);
        }
    }

    /**
     * A key and its value.
     *
     * @param key its name and place
     * @param value what stands behind it
     */
    record Pair(Text key, Node value) {}

    /** The text, if it is a single value. */
    default Optional<Text> asText() {
        return Optional.of(this).filter(Text.class::isInstance).map(Text.class::cast);
    }

    /** Whether it could not be read. */
    default boolean isLost() {
        return this instanceof Lost;
    }

    /** The list, if it is one. */
    default Optional<Listing> asListing() {
        return Optional.of(this).filter(Listing.class::isInstance).map(Listing.class::cast);
    }

    /** The mapping, if it is one. */
    default Optional<Mapping> asMapping() {
        return Optional.of(this).filter(Mapping.class::isInstance).map(Mapping.class::cast);
    }

    /** As it may be written in one line. */
    default String flow() {
        return new FlowText().of(this);
    }

    /** What it is, in words, for a mistake. */
    default String words() {
        return accept(
                new Visitor<String>() {
                    @Override
                    public String text(Text text) {
                        return text.text().isEmpty() ? "nothing" : "`" + text.text() + "`";
                    }

                    @Override
                    public String listing(Listing listing) {
                        return "a list of " + listing.items().size();
                    }

                    @Override
                    public String mapping(Mapping mapping) {
                        return "keys with values";
                    }

                    @Override
                    public String lost(Lost lost) {
                        return "nothing";
                    }
                });
    }
}
