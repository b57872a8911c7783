package secondbolt.fault;

import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A failure of the program itself, with what it was at: the topic, the piece, the sheet. Nothing a
 * file holds should ever lead to one; where it does all the same, the rest of the work goes on.
 */
public final class Fault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> at;

    private Fault(List<String> at, Throwable cause) {
        super(String.join(", ", at), cause);
        this.at = List.copyOf(at);
    }

    /**
     * Does a piece of work; if it fails, what was at work is told with the failure.
     *
     * @param name of what is at work, as a maker knows it, such as that of a piece
     * @throws Fault if the work threw anything, or went deeper than the machine can follow; what
     *     the machine refuses, such as a full disk, is thrown as it is
     */
    public static <T> T during(String name, Supplier<T> work) {
        try {
            return work.get();
        } catch (UncheckedIOException e) {
            throw e;
        } catch (RuntimeException | StackOverflowError e) {
            throw of(name, e);
        }
    }

    /**
     * The failure, with one more name before those it has already. What was thrown goes to the log
     * of this class, for developers: who runs the program sees nothing of it unless she asks Java.
     */
    public static Fault of(String name, Throwable failure) {
        List<String> names = new ArrayList<>(List.of(name));
        if (failure instanceof Fault inner) {
            names.addAll(inner.at);
            return new Fault(names, inner.getCause());
        }
        System.getLogger(Fault.class.getName()).log(System.Logger.Level.DEBUG, name, failure);
        return new Fault(names, failure);
    }

    /** What was at work, the widest first. */
    public List<String> at() {
        return at;
    }
}
