package secondbolt.topic;

import java.util.Map;
import java.util.Optional;
import secondbolt.figure.Figure;
import secondbolt.file.Key;
import secondbolt.file.source.Place;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Gives;

/** What a step of working out may read. The engine notes what is read. */
public interface Bench {
    /** The tape the project is measured with. */
    Tape tape();

    /** What stands under a key of the project file, if it is written. */
    <T> Optional<T> written(Key<T> key);

    /**
     * Where a key's value stands, for a mistake in it; the file's beginning if it is not written.
     */
    Place place(Key<?> key);

    /**
     * What a topic that stands before this one came to; nothing if there was nothing to work out.
     */
    <R> Optional<R> came(TopicName<R> topic);

    /**
     * What a maker is told of when it moves, of all topics that stand before this one and are
     * supposed: the figures by what she calls them, in the order of working.
     */
    Map<String, Figure> told();

    /**
     * What all topics that stand before this one contribute to others: steps of work, things
     * needed, words. Of one that is held back by a mistake there is nothing.
     */
    Gives given();

    /**
     * The same bench, supposing that another value stood under a key. A topic may ask it for
     * itself, unless it would then ask the same again without end; where the supposition leads to a
     * mistake, a topic came to nothing.
     */
    <T> Bench supposing(Key<T> key, T value);
}
