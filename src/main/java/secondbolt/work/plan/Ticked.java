package secondbolt.work.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A step that the maker has done.
 *
 * @param step its name
 * @param on the day, if told
 */
public record Ticked(String step, Optional<LocalDate> on) {}
