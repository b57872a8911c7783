package secondbolt.project;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.topic.Outcome;
import secondbolt.topic.TopicName;
import secondbolt.wearer.WearerTopic;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Term;
import secondbolt.worksheet.Worksheet;

/**
 * A project worked out.
 *
 * @param folder the name of its folder, which names its pages
 * @param heading what it says of itself
 * @param outcomes of all topics by their names, in the order of working
 */
public record Workings(String folder, Heading heading, Map<String, Outcome<?>> outcomes) {
    /** Copies the outcomes. */
    public Workings {
        outcomes = Collections.unmodifiableMap(new LinkedHashMap<>(outcomes));
    }

    /** The worksheets, in the order of working. */
    public List<Worksheet> worksheets() {
        return outcomes.values().stream().flatMap(outcome -> outcome.worksheet().stream()).toList();
    }

    /** Whether it holds what is known of a body, which is nobody else's affair. */
    public boolean isPersonal() {
        return came(WearerTopic.NAME).isPresent();
    }

    /** Their sheets, in order, each with a name that no other has. */
    public List<Sheet> sheets() {
        List<Sheet> sheets = worksheets().stream().flatMap(w -> w.sheets().stream()).toList();
        List<String> names = SheetName.forEach(sheets.stream().map(Sheet::name).toList());
        List<Sheet> named = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            named.add(sheets.get(i).named(names.get(i)));
        }
        return named;
    }

    /** What a topic came to, if it had anything to work out. */
    public <R> Optional<R> came(TopicName<R> name) {
        return Optional.ofNullable(outcomes.get(name.word())).flatMap(name::in);
    }

    /** Everything found, in the order of the worksheets. */
    public List<Finding> findings() {
        return worksheets().stream().flatMap(sheet -> sheet.findings().stream()).toList();
    }

    /** What nothing it touches may be cut for, in the order of the worksheets. */
    public List<Finding> stops() {
        return findings().stream().filter(Finding::isStop).toList();
    }

    /** The words of the trade that the topics use, each once, in alphabetical order. */
    public List<Term> terms() {
        return worksheets().stream()
                .flatMap(sheet -> sheet.gives().words().stream())
                .distinct()
                .sorted(Comparator.comparing(Term::word))
                .toList();
    }
}
