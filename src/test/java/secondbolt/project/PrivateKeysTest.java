package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import secondbolt.file.Key;
import secondbolt.lay.kept.LayDesk;

/** What of a project file is the maker's own affair: found from the keys themselves. */
class PrivateKeysTest {
    private static void gather(String above, List<Key<?>> keys, Set<String> kept) {
        for (Key<?> key : keys) {
            String path = above + key.name();
            if (key.isPrivate()) {
                kept.add(path);
            }
            gather(path + " > ", key.form().keys(), kept);
        }
    }

    @Test
    void areTheWearersBodyThePricesAndTheHours() {
        Set<String> kept = new TreeSet<>();
        gather("", ProjectSection.form(Topics.all(LayDesk.inMemory())).keys(), kept);
        assertEquals(
                Set.of(
                        "wearer",
                        "wearer > age",
                        "wearer > measurements",
                        "lay > new cloth > price",
                        "supplies > price",
                        "hours"),
                kept);
    }
}
