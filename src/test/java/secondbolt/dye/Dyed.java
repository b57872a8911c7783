package secondbolt.dye;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

/** Projects with a dye, worked out. */
public final class Dyed {
    private Dyed() {}

    /** A project in centimetres. */
    public static Workings worked(String... lines) {
        return workedIn("cm", lines);
    }

    /** A project on a tape. */
    public static Workings workedIn(String units, String... lines) {
        Mistakes mistakes = new Mistakes();
        String text = "title: Dyed\nunits: " + units + "\n" + String.join("\n", lines) + "\n";
        var workings =
                new Workshop(Topics.all(LayDesk.inMemory()))
                        .work(SourceFile.of("project.yaml", text), "dyed", mistakes);
        assertEquals(List.of(), mistakes.inOrder());
        return workings.orElseThrow();
    }

    /** The worksheet of dyeing. */
    public static Worksheet sheet(Workings workings) {
        return workings.worksheets().stream()
                .filter(sheet -> sheet.name().equals("dye"))
                .findFirst()
                .orElseThrow();
    }

    /** The codes of its findings. */
    public static List<String> codes(Workings workings) {
        return sheet(workings).findings().stream().map(Finding::code).distinct().toList();
    }

    /** Its first finding of a code. */
    public static Finding finding(Workings workings, String code) {
        return sheet(workings).findings().stream()
                .filter(finding -> finding.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " among " + codes(workings)));
    }

    /** How many baths a colour has. */
    public static int baths(DyeBatch batch) {
        return batch.bathing().loads().size();
    }
}
