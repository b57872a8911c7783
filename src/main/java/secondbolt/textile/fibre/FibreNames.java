package secondbolt.textile.fibre;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import secondbolt.file.Spelling;

/** Fibres by what makers write. */
public final class FibreNames {
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[ ,/+-]");
    private static final List<String> ALL =
            Stream.of(FibreKind.values()).flatMap(kind -> kind.names().stream()).toList();
    private static final List<String> WORDS =
            Stream.of(FibreKind.values()).map(FibreKind::word).toList();

    private FibreNames() {}

    /** The fibre that is called so, in one of a few languages, whatever its capitals. */
    public static Optional<FibreKind> find(String name) {
        return Stream.of(FibreKind.values()).filter(kind -> kind.isCalled(name)).findFirst();
    }

    /** What would be right in place of a name that is not known. */
    public static String right(String name) {
        Optional<String> meant =
                Spelling.nearest(name, ALL).or(() -> within(name)).map(n -> "`" + n + "`, or ");
        return meant.orElse("")
                + "one of "
                + Spelling.quoted(WORDS)
                + ", or `unknown`; what a label does not name is `"
                + FibreKind.OTHER.word()
                + "`";
    }

    /** The one fibre that is named among other words, as in "organic cotton". */
    private static Optional<String> within(String name) {
        List<FibreKind> named =
                Arrays.stream(BETWEEN_WORDS.split(name, 20))
                        .flatMap(word -> find(word).stream())
                        .distinct()
                        .toList();
        return named.size() == 1 ? Optional.of(named.get(0).word()) : Optional.empty();
    }
}
