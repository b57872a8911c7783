package secondbolt.topic;

import java.util.Map;
import java.util.Optional;
import secondbolt.figure.Figure;
import secondbolt.file.Key;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Gives;

/** Something a step read: it can tell whether it would read the same again. */
interface Read {
    /**
     * Whether the same would be read now.
     *
     * @param reader the topic that read it
     * @param supposed what the reader's bench supposes
     */
    boolean isAsBefore(Topic<?> reader, WorkingOut run, Supposed supposed);

    /**
     * What stood under a key.
     *
     * @param more what the reader supposed beyond its bench
     */
    record Section(Supposed more, Key<?> key, Optional<?> value) implements Read {
        @Override
        public boolean isAsBefore(Topic<?> reader, WorkingOut run, Supposed supposed) {
            return run.written(key, more.over(supposed)).equals(value);
        }
    }

    /** The tape the project is measured with, which every step may print on. */
    record OnTape(Tape tape) implements Read {
        @Override
        public boolean isAsBefore(Topic<?> reader, WorkingOut run, Supposed supposed) {
            return run.tape() == tape;
        }
    }

    /** What another topic came to; nothing if that had mistakes. */
    record Result(Supposed more, Topic<?> topic, Optional<?> value) implements Read {
        @Override
        public boolean isAsBefore(Topic<?> reader, WorkingOut run, Supposed supposed) {
            Optional<?> now = run.outcome(topic, more.over(supposed)).result();
            return isSame(now, value);
        }

        /** The same object is compared at once, whatever it holds. */
        private static boolean isSame(Optional<?> now, Optional<?> before) {
            boolean isSameObject =
                    now.isPresent() && before.isPresent() && now.get() == before.get();
            return isSameObject || now.equals(before);
        }
    }

    /** What all topics before contribute. */
    record AllGiven(Supposed more, Gives value) implements Read {
        @Override
        public boolean isAsBefore(Topic<?> reader, WorkingOut run, Supposed supposed) {
            return run.given(reader, more.over(supposed)).equals(value);
        }
    }

    /** What a maker is told of all topics before. */
    record AllTold(Supposed more, Map<String, Figure> value) implements Read {
        @Override
        public boolean isAsBefore(Topic<?> reader, WorkingOut run, Supposed supposed) {
            return run.told(reader, more.over(supposed)).equals(value);
        }
    }
}
