package secondbolt.pattern;

import java.util.List;
import java.util.stream.Collectors;
import secondbolt.file.value.BareLength;
import secondbolt.file.value.Quoted;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * Alterations as they are written in a file.
 *
 * @param tape that bare numbers of the file are on
 */
public record WrittenAlterations(Tape tape) {
    /** The value of a key in one line; {@code none} if there are none. Every length is exact. */
    public String of(List<Alteration> alterations) {
        return alterations.isEmpty()
                ? "none"
                : alterations.stream().map(this::of).collect(Collectors.joining(", ", "[", "]"));
    }

    private String of(Alteration alteration) {
        return alteration.accept(
                new Alteration.Visitor<String>() {
                    @Override
                    public String lengthen(Alteration.Lengthen lengthen) {
                        String pieces =
                                lengthen.pieces().entrySet().stream()
                                        .map(e -> Quoted.of(e.getKey()) + ": " + bare(e.getValue()))
                                        .collect(Collectors.joining(", "));
                        return "{"
                                + (lengthen.by().isNegative() ? "shorten: " : "lengthen: ")
                                + Quoted.of(lengthen.line())
                                + ", by: "
                                + bare(lengthen.by())
                                + (pieces.isEmpty() ? "" : ", pieces: {" + pieces + "}")
                                + found(lengthen)
                                + "}";
                    }

                    @Override
                    public String widen(Alteration.Widen widen) {
                        String edges =
                                widen.edges().stream()
                                        .map(Quoted::of)
                                        .collect(Collectors.joining(", "));
                        return "{"
                                + (widen.by().isNegative() ? "narrow: " : "widen: ")
                                + (widen.edges().size() > 1 ? "[" + edges + "]" : edges)
                                + ", by: "
                                + bare(widen.by())
                                + widen.from().map(from -> ", from: " + bare(from)).orElse("")
                                + widen.to().map(to -> ", to: " + bare(to)).orElse("")
                                + found(widen)
                                + "}";
                    }
                });
    }

    private static String found(Alteration alteration) {
        return alteration.found().map(found -> ", found: " + Quoted.of(found)).orElse("");
    }

    /** On the tape without its unit, where that says it exactly. */
    private String bare(Length length) {
        String bare = BareLength.of(tape, length.size());
        boolean isExact =
                Length.parse(bare, tape).fold(read -> read.equals(length.size()), refusal -> false);
        return isExact ? bare : length.size().written();
    }
}
