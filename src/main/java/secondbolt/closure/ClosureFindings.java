package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.PlacketChange;
import secondbolt.file.value.LeftOpen;
import secondbolt.measure.Plural;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know of a closure before she cuts its holes. */
final class ClosureFindings {
    private ClosureFindings() {}

    /**
     * All of one closure.
     *
     * @param age of the wearer, if told
     */
    static List<Finding> of(ClosureResult result, Optional<Wearer.Age> age) {
        List<Finding> all = new ArrayList<>(new PlacingFindings(result).findings());
        if (result.closure().isLapped()) {
            all.addAll(new ExtensionFindings(result).findings());
        }
        if (result.closure().fastening().hasHoles()) {
            all.addAll(new HoleFindings(result).findings());
        }
        all.addAll(new ChildSafety(result, age).findings());
        followed(result).ifPresent(all::add);
        open(result).ifPresent(all::add);
        taken(result).ifPresent(all::add);
        return List.copyOf(all);
    }

    /** Something about a closure. */
    static Finding found(
            ClosureResult result, String code, Level level, String text, String remedy) {
        return new Finding(code, new Subject.Closure(result.name()), level, text, remedy);
    }

    /** What she does not know and what is worked out with meanwhile; her strip says so too. */
    private static Optional<Finding> taken(ClosureResult result) {
        return LeftOpen.taken(result.closure().open())
                .map(
                        taken ->
                                found(
                                        result,
                                        "closure-taken-meanwhile",
                                        Level.WARNING,
                                        "Not known yet, and only taken meanwhile: " + taken + ".",
                                        "Find it out before you work a hole or sew a fastener on;"
                                                + " how stands under what is open."));
    }

    /** What the alterations moved on a closure that lies on edges of the pattern. */
    private static Optional<Finding> followed(ClosureResult result) {
        PlacketChange change = result.change();
        String moved =
                change.moved().isEmpty()
                        ? needed(result)
                        : "; "
                                + fasteners(result, change.moved().size())
                                + " "
                                + Plural.runs(change.moved())
                                + " moved";
        return change.before()
                .map(
                        before ->
                                found(
                                        result,
                                        "placket-altered",
                                        Level.NOTE,
                                        "The alterations take the placket from "
                                                + result.tape().print(before)
                                                + " to "
                                                + result.tape().print(result.length())
                                                + moved
                                                + ".",
                                        "Use the printed strip; the marks on the pattern no longer"
                                                + " hold."));
    }

    private static String needed(ClosureResult result) {
        return result.change().isNeeded()
                ? "; without them its " + result.closure().fastening().kind().word() + " do not fit"
                : "";
    }

    private static String fasteners(ClosureResult result, int count) {
        Fastening.Kind kind = result.closure().fastening().kind();
        return count == 1 ? kind.one() : kind.word();
    }

    /** A placket on edges of which it is not known whether the alterations changed them. */
    private static Optional<Finding> open(ClosureResult result) {
        return result.change()
                .open()
                .map(
                        open ->
                                found(
                                        result,
                                        "placket-edge-open",
                                        Level.WARNING,
                                        "Whether the alterations change "
                                                + open.edge()
                                                + " is not known, so these places hold for the"
                                                + " length as taped only.",
                                        open.findOut()));
    }
}
