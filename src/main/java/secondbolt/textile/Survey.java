package secondbolt.textile;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How the cloth was looked over for flaws.
 *
 * @param on the day
 * @param by how
 * @param when before or after the last wet step; taken as before if not written
 */
public record Survey(Optional<LocalDate> on, By by, Optional<When> when) {
    /** How it was looked over. */
    public enum By {
        /** Against a window or a lamp, where thin places show. */
        HELD_TO_THE_LIGHT("held to the light"),
        /** Spread out and looked at. */
        LOOKED_OVER("looked over"),
        /** From memory. */
        GUESSED("guessed");

        private final String word;

        By(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Before or after the last wet step. */
    public enum When {
        /** Before it. */
        BEFORE("before the wash"),
        /** After it. */
        AFTER("after the wash");

        private final String word;

        When(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }
}
