package secondbolt.topic;

import java.util.List;
import secondbolt.file.value.Trouble;

/** A step asked for a result that a mistake in the project file keeps from being worked out. */
final class HeldBack extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Trouble> troubles;

    HeldBack(List<Trouble> troubles) {
        super("held back by a mistake", null, false, false);
        this.troubles = troubles;
    }

    List<Trouble> troubles() {
        return troubles;
    }
}
