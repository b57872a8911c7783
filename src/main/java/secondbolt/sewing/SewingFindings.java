package secondbolt.sewing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.Spelling;
import secondbolt.file.value.BareLength;
import secondbolt.file.value.Quoted;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.sewing.advice.SewnCloth;
import secondbolt.sewing.plan.SewingMeans;
import secondbolt.sewing.plan.Stitch;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.sewing.thread.ThreadRatios;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What a maker should know of her stitches and of the allowances of her seams.
 *
 * @param result worked out
 * @param tape to print with
 */
record SewingFindings(SewingResult result, Tape tape) {
    private static final Subject ALL = new Subject.Whole("the sewing");
    private static final Share TWICE = Share.ofRatio(2, 1);

    /** All of it; nothing if all is well. */
    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        result.lines().joins().forEach(join -> findings.addAll(of(join)));
        findings.addAll(new FinishFindings(result, tape).all());
        straightOnKnit().ifPresent(findings::add);
        notHad().ifPresent(findings::add);
        result.plan().means().ratios().forEach((stitch, own) -> far(stitch, own, findings));
        return findings;
    }

    private List<Finding> of(JoinLine join) {
        List<Finding> findings = new ArrayList<>();
        if (join.isUneven()) {
            findings.add(uneven(join));
        }
        if (!join.lacking().isEmpty()) {
            findings.add(lacking(join));
        }
        return findings;
    }

    static Subject.Edges subject(JoinLine join) {
        return new Subject.Edges(join.seam().words(), join.seam().edges());
    }

    private Finding uneven(JoinLine join) {
        Length common = join.commonest().orElseThrow();
        List<String> widths = new ArrayList<>();
        Map<String, List<String>> byPiece = new LinkedHashMap<>();
        join.allowances()
                .forEach(
                        (edge, width) -> {
                            widths.add(edge.words() + " " + tape.print(width));
                            if (!width.equals(common)) {
                                byPiece.computeIfAbsent(edge.piece(), p -> new ArrayList<>())
                                        .add(allowance(edge, common));
                            }
                        });
        List<String> lines = new ArrayList<>();
        byPiece.forEach(
                (piece, edges) ->
                        lines.add("`allowance: {" + String.join(", ", edges) + "}` to " + piece));
        return new Finding(
                "sewing-allowances-differ",
                subject(join),
                Level.CAUTION,
                "The allowances of one seam differ: "
                        + SewingWords.listed(widths, widths.size())
                        + ". Laid edge to edge it would be sewn off its line.",
                "Before you cut, add "
                        + String.join(", ", lines)
                        + ", so that all are as wide. What is cut already is pinned line to line,"
                        + " not edge to edge.");
    }

    private String allowance(PieceEdge edge, Length width) {
        return Quoted.of(edge.edge()) + ": " + BareLength.of(tape, width);
    }

    private Finding lacking(JoinLine join) {
        List<String> edges = join.lacking().stream().map(PieceEdge::words).toList();
        return new Finding(
                "sewing-more-joined-than-cut",
                subject(join),
                Level.WARNING,
                "This join names "
                        + SewingWords.listed(edges, edges.size())
                        + " more often than the piece is cut; its thread is counted once.",
                "Count again: either `cut` of the piece is too small, or the join in `seams` names"
                        + " the edge too often.");
    }

    private Optional<Finding> straightOnKnit() {
        Set<Stitch> told = result.plan().seams().stitch().map(Set::of).orElse(Set.of());
        boolean isStiff = told.stream().anyMatch(stitch -> !stitch.gives());
        Optional<SewnCloth> knit = result.cloths().stream().filter(SewnCloth::isKnit).findFirst();
        return knit.filter(any -> isStiff)
                .map(
                        cloth ->
                                new Finding(
                                        "sewing-straight-on-knit",
                                        new Subject.Cloth(cloth.name()),
                                        Level.WARNING,
                                        cloth.name()
                                                + " stretches, and a straight stitch does not: its"
                                                + " seams snap when the garment is pulled on.",
                                        "Under `sewing` write `stitch: zigzag`, narrow and long, or"
                                                + " an overlock if you have one; seams that must"
                                                + " not stretch are taped."));
    }

    private Optional<Finding> notHad() {
        SewingMeans means = result.plan().means();
        Set<Stitch> lacking = new LinkedHashSet<>();
        result.uses().stream()
                .map(use -> use.stitch())
                .filter(stitch -> !means.has(stitch))
                .forEach(lacking::add);
        if (lacking.isEmpty()) {
            return Optional.empty();
        }
        List<String> have = new ArrayList<>();
        means.haveOrUsual().forEach(stitch -> have.add(stitch.word()));
        lacking.forEach(stitch -> have.add(stitch.word()));
        return Optional.of(
                new Finding(
                        "sewing-stitch-not-had",
                        ALL,
                        Level.WARNING,
                        "These stitches are asked for, and no machine told makes them: "
                                + Spelling.listed(lacking.stream().map(Stitch::word).toList())
                                + ".",
                        "If you have them, write `have: ["
                                + String.join(", ", have)
                                + "]` under `sewing`; else choose another stitch or finish."));
    }

    private void far(Stitch stitch, Share own, List<Finding> findings) {
        Share published = new ThreadRatios(result.plan().means()).published(stitch).value();
        boolean isFar =
                own.compareTo(published.times(TWICE)) > 0
                        || own.times(TWICE).compareTo(published) < 0;
        if (isFar) {
            findings.add(
                    new Finding(
                            "sewing-ratio-far",
                            ALL,
                            Level.CAUTION,
                            "Your trial of the "
                                    + stitch.word()
                                    + " is less than half or more than twice what is published.",
                            "Measure it again: all its threads, needle and bobbin or loopers"
                                    + " together, unpicked from 10 cm."));
        }
    }
}
