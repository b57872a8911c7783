package secondbolt.app;

import java.util.List;
import java.util.Locale;
import secondbolt.project.Workings;
import secondbolt.worksheet.Finding;

/** The findings a maker must hear of at once, as lines. */
final class FindingLines {
    private FindingLines() {}

    /** Warnings and stops of a project; notes and cautions stand on its page. */
    static List<String> of(Workings workings) {
        return workings.findings().stream()
                .filter(finding -> finding.level().compareTo(Finding.Level.WARNING) >= 0)
                .map(finding -> line(workings.folder(), finding))
                .toList();
    }

    private static String line(String folder, Finding finding) {
        String level =
                finding.level() == Finding.Level.STOP
                        ? "DO NOT CUT"
                        : finding.level().name().toLowerCase(Locale.ROOT);
        return folder
                + ": "
                + level
                + ": "
                + finding.about().words()
                + ": "
                + finding.text()
                + (finding.remedy().isEmpty() ? "" : " " + finding.remedy());
    }

    /** Whether nothing may be cut. */
    static boolean stops(Workings workings) {
        return workings.findings().stream().anyMatch(f -> f.level() == Finding.Level.STOP);
    }
}
