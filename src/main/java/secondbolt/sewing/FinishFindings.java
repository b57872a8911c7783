package secondbolt.sewing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.sewing.advice.FinishAdvice;
import secondbolt.sewing.advice.FinishAdvice.Against;
import secondbolt.sewing.advice.FinishNeed;
import secondbolt.sewing.plan.Finish;
import secondbolt.sewing.seam.JoinLine;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/**
 * What speaks against a finish that she chose; of one that is only taken nothing is said.
 *
 * @param result worked out
 * @param tape to print with
 */
record FinishFindings(SewingResult result, Tape tape) {
    private static final int MOST_NAMED = 6;

    List<Finding> all() {
        FinishAdvice advice = new FinishAdvice(result.cloths(), result.plan().frays(), tape);
        Map<Finish, Map<Against, List<JoinLine>>> found = new EnumMap<>(Finish.class);
        for (JoinLine join : result.lines().joins()) {
            if (join.choice().finish().isEmpty() || join.line().times() == 0) {
                continue;
            }
            Finish finish = join.choice().finish().get();
            if (finish.equals(result.with().finish(join.choice()))) {
                advice.against(finish, join)
                        .forEach(
                                against ->
                                        found.computeIfAbsent(
                                                        finish, f -> new EnumMap<>(Against.class))
                                                .computeIfAbsent(against, a -> new ArrayList<>())
                                                .add(join));
            }
        }
        List<Finding> findings = new ArrayList<>();
        found.forEach(
                (finish, all) ->
                        all.forEach((against, joins) -> add(findings, finish, against, joins)));
        return findings;
    }

    private void add(List<Finding> findings, Finish finish, Against against, List<JoinLine> joins) {
        switch (against) {
            case NARROW -> findings.add(narrow(finish, joins));
            case CURVED -> findings.add(curved(joins));
            case FRAYS -> findings.add(frays(finish, joins));
            case BULKY -> findings.add(bulky(finish, joins));
            case WOOL -> findings.add(wool(finish, joins));
            case CURVE_UNKNOWN, FRAYING_UNKNOWN -> {
                // Told as open, for nothing is known to be wrong.
            }
        }
    }

    private Finding narrow(Finish finish, List<JoinLine> joins) {
        Length wanted = FinishNeed.of(finish).allowance().on(tape);
        Length least =
                joins.stream()
                        .flatMap(join -> join.narrowest().stream())
                        .min(Length::compareTo)
                        .orElseThrow();
        return told(
                "sewing-allowance-too-narrow",
                Level.WARNING,
                joins,
                "A "
                        + finish.word()
                        + " seam wants "
                        + tape.print(wanted)
                        + " on each edge; "
                        + tape.print(least)
                        + " is the least of: "
                        + names(joins)
                        + ".",
                "Where the cloth has room, allow "
                        + tape.print(wanted.minus(least))
                        + " more on each of these edges. If it cannot be had, neaten them with a"
                        + " zigzag or an overlock: "
                        + except(joins, Finish.ZIGZAG));
    }

    private Finding curved(List<JoinLine> joins) {
        return told(
                "sewing-french-on-curve",
                Level.WARNING,
                joins,
                "A French seam is for straight seams only; these are curved: " + names(joins) + ".",
                "Neaten them another way: " + except(joins, Finish.ZIGZAG));
    }

    private Finding frays(Finish finish, List<JoinLine> joins) {
        return told(
                "sewing-edge-frays",
                Level.WARNING,
                joins,
                (finish == Finish.PINKED
                                ? "Pinking does not by itself stop fraying, and your cloth frays: "
                                : "Your cloth frays, and these edges are left raw: ")
                        + names(joins)
                        + ". The allowance is lost in the wash, and then the seam.",
                finish == Finish.PINKED
                        ? "A line of stitches beside the pinked edge holds it if it frays a"
                                + " little; else neaten it: "
                                + except(joins, Finish.ZIGZAG)
                        : "Neaten those that no facing or lining encloses: "
                                + except(joins, Finish.ZIGZAG));
    }

    private Finding bulky(Finish finish, List<JoinLine> joins) {
        return told(
                "sewing-finish-bulky",
                Level.CAUTION,
                joins,
                "A "
                        + finish.word()
                        + " seam is for light cloth; yours is heavier than 150 g/m², and the edge"
                        + " makes a ridge.",
                "Press a trial on a scrap. Flatter is: " + except(joins, Finish.ZIGZAG));
    }

    private Finding wool(Finish finish, List<JoinLine> joins) {
        return told(
                "sewing-wool-folded-twice",
                Level.CAUTION,
                joins,
                "A "
                        + finish.word()
                        + " seam folds wool twice, which never presses flat (Watson, Textiles and"
                        + " Clothing, 1907).",
                "Press the seam open and catch its edges down by hand: "
                        + except(joins, Finish.CAUGHT));
    }

    /** The line to write: for all seams in general, or for those only that differ. */
    private String except(List<JoinLine> joins, Finish finish) {
        long chosen = result.lines().joins().stream().filter(j -> isChosen(j, joins)).count();
        if (joins.size() == chosen && result.plan().except().isEmpty()) {
            return "under `sewing` write `finish: " + finish.word() + "`.";
        }
        List<String> lines =
                joins.stream()
                        .map(join -> join.seam().edges().iterator().next())
                        .map(edge -> "{on: " + edge + ", finish: " + finish.word() + "}")
                        .distinct()
                        .toList();
        return "under `sewing` write `except: [" + String.join(", ", lines) + "]`.";
    }

    private static boolean isChosen(JoinLine join, List<JoinLine> joins) {
        return join.choice().finish().equals(joins.get(0).choice().finish());
    }

    private Finding told(
            String code, Level level, List<JoinLine> joins, String text, String remedy) {
        Set<PieceEdge> edges = new LinkedHashSet<>();
        joins.forEach(join -> edges.addAll(join.seam().edges()));
        return new Finding(code, new Subject.Edges(names(joins), edges), level, text, remedy);
    }

    private static String names(List<JoinLine> joins) {
        return SewingWords.listed(joins.stream().map(j -> j.seam().words()).toList(), MOST_NAMED);
    }
}
