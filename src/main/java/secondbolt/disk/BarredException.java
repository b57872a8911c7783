package secondbolt.disk;

import java.io.IOException;

/** A path at which there is no file that may be read or replaced. */
public final class BarredException extends IOException {
    private static final long serialVersionUID = 1L;

    /** What was found there. */
    public enum Bar {
        /** Nothing of that name. */
        MISSING("no such file"),
        /** A folder. */
        FOLDER("a folder"),
        /** A link, where none may be. */
        LINK("a link"),
        /** A link to what is not there, or round in a circle. */
        BROKEN_LINK("a link that leads nowhere"),
        /** A link to what lies outside of the folder. */
        LEADS_OUT("a link that leads out of the folder"),
        /** What a program could wait for or talk to. */
        DEVICE("a pipe, a socket or a device, which is not opened"),
        /** More bytes than such a file has. */
        LARGE("a file that is too large"),
        /** No right to look. */
        CLOSED("a file that cannot be read");

        private final String words;

        Bar(String words) {
            this.words = words;
        }

        /** It in words, to stand behind "found". */
        public String words() {
            return words;
        }
    }

    private final Bar bar;

    BarredException(Bar bar) {
        super(bar.words());
        this.bar = bar;
    }

    /** What was found there. */
    public Bar bar() {
        return bar;
    }
}
