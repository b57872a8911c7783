package secondbolt.project;

import java.util.Comparator;
import java.util.List;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Need;
import secondbolt.worksheet.Term;
import secondbolt.worksheet.WorkStep;
import secondbolt.worksheet.Worksheet;

/**
 * A project worked out.
 *
 * @param folder the name of its folder, which names its pages
 * @param heading what it says of itself
 * @param worksheets in the order of working
 */
public record Workings(String folder, Heading heading, List<Worksheet> worksheets) {
    /** Copies the worksheets. */
    public Workings {
        worksheets = List.copyOf(worksheets);
    }

    /** Everything found, in the order of the worksheets. */
    public List<Finding> findings() {
        return worksheets.stream().flatMap(sheet -> sheet.findings().stream()).toList();
    }

    /** What nothing it touches may be cut for, in the order of the worksheets. */
    public List<Finding> stops() {
        return findings().stream().filter(Finding::isStop).toList();
    }

    /** All steps that the topics contribute, in an order in which they can be done. */
    public List<WorkStep> steps() {
        return OrderOfWork.of(
                worksheets.stream().flatMap(sheet -> sheet.gives().steps().stream()).toList());
    }

    /** All things that the topics need. */
    public List<Need> needs() {
        return worksheets.stream().flatMap(sheet -> sheet.gives().needs().stream()).toList();
    }

    /** The words of the trade that the topics use, each once, in alphabetical order. */
    public List<Term> terms() {
        return worksheets.stream()
                .flatMap(sheet -> sheet.gives().words().stream())
                .distinct()
                .sorted(Comparator.comparing(Term::word))
                .toList();
    }
}
