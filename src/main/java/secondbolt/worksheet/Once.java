package secondbolt.worksheet;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/**
 * Something worked out when it is first asked for, and never again.
 *
 * @param <T> what it is
 */
public final class Once<T> implements Supplier<T> {
    private final AtomicReference<T> value = new AtomicReference<>();
    private final Supplier<T> work;

    /**
     * Puts the work off.
     *
     * @param work pure, and never null
     */
    public Once(Supplier<T> work) {
        this.work = work;
    }

    @Override
    public T get() {
        T known = value.get();
        if (known != null) {
            return known;
        }
        synchronized (value) {
            if (value.get() == null) {
                value.set(work.get());
            }
            return value.get();
        }
    }
}
