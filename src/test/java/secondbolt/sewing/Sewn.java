package secondbolt.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.worksheet.Worksheet;

/** Projects written in a test as in their file, worked out as far as their sewing. */
final class Sewn {
    private Sewn() {}

    /** What the sewing of a project comes to, which must be without a mistake. */
    static Optional<SewingResult> result(String units, String... lines) {
        return work(units, lines).came(SewingTopic.NAME);
    }

    /** The sewing of a project as it is shown; nothing if it has none. */
    static Optional<Worksheet> sheet(String units, String... lines) {
        return work(units, lines).worksheets().stream()
                .filter(sheet -> sheet.name().equals("sewing"))
                .findFirst();
    }

    private static Workings work(String units, String... lines) {
        List<String> all = new ArrayList<>(List.of("title: Trial", "units: " + units));
        all.addAll(List.of(lines));
        Mistakes mistakes = new Mistakes();
        SourceFile file = SourceFile.of("project.yaml", String.join("\n", all) + "\n");
        return new Workshop(Topics.all(LayDesk.inMemory()))
                .work(file, Optional.empty(), "trial", mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }
}
