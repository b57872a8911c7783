package secondbolt.project;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/**
 * One thing that a maker is told to write into her file.
 *
 * @param code the finding's code; for the rest, whether it is open, assumed or to be pasted
 * @param about what a finding is about
 * @param said all that is said with it, by which it is known again when the file is changed
 * @param line what stands between backticks
 */
record Advice(String code, Optional<Subject> about, String said, String line) {
    static final String OPEN = "open";
    static final String ASSUMED = "assumed";
    static final String BLOCK = "block";

    private static final Pattern LINE = Pattern.compile("`([^`]+)`");

    /** Everything that the pages of a project tell her to write. */
    static List<Advice> of(Workings workings) {
        List<Advice> advice = new ArrayList<>();
        for (Worksheet sheet : workings.worksheets()) {
            sheet.findings()
                    .forEach(
                            f ->
                                    add(
                                            advice,
                                            f.code(),
                                            Optional.of(f.about()),
                                            f.text() + " " + f.remedy()));
            sheet.open()
                    .forEach(
                            o ->
                                    add(
                                            advice,
                                            OPEN,
                                            Optional.empty(),
                                            o.what() + ": " + o.blocks() + ". " + o.findOut()));
            sheet.assumed()
                    .forEach(
                            a ->
                                    add(
                                            advice,
                                            ASSUMED,
                                            Optional.empty(),
                                            a.what() + ": " + a.value() + ". " + a.source()));
            sheet.blocks().forEach(b -> add(advice, BLOCK, Optional.empty(), String.valueOf(b)));
        }
        return advice;
    }

    private static void add(
            List<Advice> advice, String code, Optional<Subject> about, String said) {
        Matcher matcher = LINE.matcher(said);
        Set<String> lines = new LinkedHashSet<>();
        while (matcher.find()) {
            lines.add(matcher.group(1));
        }
        lines.forEach(line -> advice.add(new Advice(code, about, said, line)));
    }

    /** Whether the line is to be added "to" what is called so. */
    boolean isTold(String name) {
        return said.contains(line + "` to " + name + ",") || said.contains("Look at " + name + ":");
    }

    /** Whether a project still says the same. */
    boolean isStillSaid(Workings workings) {
        return of(workings).stream()
                .anyMatch(a -> a.code.equals(code) && a.about.equals(about) && a.said.equals(said));
    }

    /** The codes of all findings of a project. */
    static List<String> codes(Workings workings) {
        return workings.findings().stream().map(Finding::code).distinct().toList();
    }

    @Override
    public String toString() {
        return "`" + line + "` of " + code + about.map(a -> " about " + a).orElse("") + ": " + said;
    }
}
