package secondbolt.file;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.fault.Fault;
import secondbolt.file.source.Node;
import secondbolt.file.source.Place;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.LeftOpen;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Tape;

/** The values read from one mapping, by key. */
public final class Fields {
    private final Node.Mapping mapping;
    private final Reading reading;
    private final List<String> path;
    private final Map<String, Object> values = new HashMap<>();
    private final Set<String> open = new HashSet<>();

    /** The fields of a mapping, none of them read so far. */
    public Fields(Node.Mapping mapping, Reading reading) {
        this.mapping = mapping;
        this.reading = reading;
        this.path = reading.path();
    }

    /**
     * Reads a key's value and keeps it; what is wrong with it is told. {@code none} under a key
     * that may be left out leaves it out; {@code unknown} leaves it open.
     */
    public <T> void read(Key<T> key, Node value) {
        if (key.isOpen(value, reading)) {
            open.add(key.name());
            reading.leaveOpen(key, path, "");
        } else if (!key.isNone(value)) {
            try {
                Fault.during(key.name(), () -> key.read(value, reading))
                        .ifPresent(read -> values.put(key.name(), read));
            } catch (Fault e) {
                reading.tell(Trouble.ofProgram(value.place(), String.join(", ", e.at())));
            }
        }
    }

    /**
     * Adds what stands under a key in another file that belongs to this one.
     *
     * @param file the other one, whose lines are shown with mistakes in it
     */
    public <T> void add(Key<T> key, T value, SourceFile file) {
        values.put(key.name(), value);
        reading.showAlso(file);
    }

    /** The value of a key, if it was written. */
    @SuppressWarnings("unchecked") // put under this key by the form of this key alone
    public <T> Optional<T> get(Key<T> key) {
        return Optional.ofNullable((T) values.get(key.name()));
    }

    /**
     * The value of a required key.
     *
     * @throws IllegalStateException if the key was not written
     */
    public <T> T require(Key<T> key) {
        return get(key).orElseThrow(() -> new IllegalStateException(key.name() + " was not read"));
    }

    /** The value of a required key with its place. */
    public <T> Placed<T> requirePlaced(Key<T> key) {
        return new Placed<>(require(key), place(key));
    }

    /** Whether {@code unknown} stands under a key that has no answer of its own to it. */
    public boolean isOpen(Key<?> key) {
        return open.contains(key.name());
    }

    /**
     * The value of a key, or what is taken for it until she knows; nothing if it is left out.
     *
     * @param meanwhile the value to take
     * @param words the same as the maker shall read it, with where it comes from
     */
    public <T> Optional<T> orMeanwhile(Key<T> key, T meanwhile, String words) {
        return isOpen(key) ? meanwhile(key, meanwhile, words) : get(key);
    }

    /** What is taken for an open key, of whatever kind it is, until she knows. */
    public <T> Optional<T> meanwhile(Key<?> key, T value, String words) {
        reading.leaveOpen(key, path, words);
        return Optional.of(value);
    }

    /** All that is left open in this mapping and inside it. */
    public List<LeftOpen> leftOpen() {
        return reading.leftOpen(path);
    }

    /** The value of a key with its place, if it was written. */
    public <T> Optional<Placed<T>> getPlaced(Key<T> key) {
        return get(key).map(value -> new Placed<>(value, place(key)));
    }

    /** Where a key's value stands; where the mapping begins if it was not written. */
    public Place place(Key<?> key) {
        return mapping.find(key.name()).map(p -> p.value().place()).orElse(mapping.place());
    }

    /**
     * Where a name of the maker's own stands in a key's value; the value's place if it does not.
     */
    public Place placeIn(Key<?> key, String name) {
        return mapping.find(key.name())
                .flatMap(pair -> pair.value().asMapping())
                .flatMap(named -> named.find(name))
                .map(pair -> pair.key().place())
                .orElse(place(key));
    }

    /** The letters that stand under a name of the maker's own in a key's value, if any do. */
    public Optional<String> lettersIn(Key<?> key, String name) {
        return mapping.find(key.name())
                .flatMap(pair -> pair.value().asMapping())
                .flatMap(named -> named.find(name))
                .flatMap(pair -> pair.value().asText())
                .map(Node.Text::text);
    }

    /** The letters of each item of a list under a key, but of those that are lists themselves. */
    public List<String> letters(Key<?> key) {
        return mapping.find(key.name()).flatMap(pair -> pair.value().asListing()).stream()
                .flatMap(list -> list.items().stream())
                .flatMap(item -> item.asText().stream())
                .map(Node.Text::text)
                .toList();
    }

    /** Where the mapping begins. */
    public Place place() {
        return mapping.place();
    }

    /** The tape a mistake found by a topic prints its lengths on. */
    public Tape tape() {
        return reading.tape();
    }

    /** Whether the file says which tape that is. */
    public boolean isTapeTold() {
        return reading.isTapeTold();
    }

    /** Tells a mistake that a topic found in the value of a key. */
    public void tell(Key<?> key, String found, String right) {
        reading.tell(place(key), found, right);
    }

    /** Tells what a topic found while the file is read, a mistake or a fault of its own. */
    public void tell(Trouble trouble) {
        reading.tell(trouble);
    }

    /** Tells all that topics found in a file that was read. */
    public void tellAll(List<Trouble> troubles) {
        troubles.forEach(reading::tell);
        reading.settle();
    }

    /** Tells a mistake that a topic found somewhere inside. */
    public void tell(Place place, String found, String right) {
        reading.tell(place, found, right);
    }
}
