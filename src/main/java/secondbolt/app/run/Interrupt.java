package secondbolt.app.run;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * What Ctrl-C means: searches end with the best they have, what was asked for is made with it, and
 * then the program ends. A second Ctrl-C ends it at once.
 *
 * <p>The machine's signal is taken, for a hook at Java's end runs beside others that take away what
 * the work still needs. The class for that is one every Java has, but none that a program may name
 * without a warning, so it is looked up; where it is not there, Ctrl-C ends the program at once.
 */
public final class Interrupt {
    /** The exit code of a program that Ctrl-C ended, by the custom of shells: 128 and signal 2. */
    public static final int ENDED = 130;

    private static final String SIGNAL = "sun.misc.Signal";
    private static final String HANDLER = "sun.misc.SignalHandler";
    private static final AtomicBoolean ASKED = new AtomicBoolean();

    private Interrupt() {}

    /**
     * Takes the signal of Ctrl-C from now on.
     *
     * @param first what is done when it is pressed the first time, such as saying so
     */
    public static void install(Runnable first) {
        try {
            Class<?> signal = Class.forName(SIGNAL);
            Class<?> handler = Class.forName(HANDLER);
            InvocationHandler pressed =
                    (proxy, method, args) -> {
                        pressed(first);
                        return null;
                    };
            Object own =
                    Proxy.newProxyInstance(
                            Interrupt.class.getClassLoader(), new Class<?>[] {handler}, pressed);
            signal.getMethod("handle", signal, handler)
                    .invoke(null, signal.getConstructor(String.class).newInstance("INT"), own);
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            // Then Ctrl-C means what it means to every program.
        }
    }

    private static void pressed(Runnable first) {
        if (ASKED.getAndSet(true)) {
            Runtime.getRuntime().halt(ENDED);
        }
        first.run();
    }

    /** Whether it was pressed. */
    public static boolean isAsked() {
        return ASKED.get();
    }
}
