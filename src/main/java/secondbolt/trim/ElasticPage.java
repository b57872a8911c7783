package secondbolt.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.block.Table.Cell;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.trim.gathered.Casing;
import secondbolt.trim.gathered.ElasticResult;
import secondbolt.trim.plan.Elastic;
import secondbolt.worksheet.Convention;

/**
 * What the page shows of an elastic.
 *
 * @param result worked out
 * @param tape to print with
 */
record ElasticPage(ElasticResult result, Tape tape) {
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Elastic: " + result.name()));
        blocks.add(new Block.Facts(facts()));
        if (!result.sides().isEmpty()) {
            blocks.add(new Block.Rows(sides()));
        }
        blocks.add(new Block.Points(how()));
        return blocks;
    }

    /** Its length, whether it passes, and its casing. */
    List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(small("Width", result.elastic().width()));
        result.loop()
                .ifPresent(loop -> facts.add(Fact.of("Round, joined and at rest", tape, loop)));
        result.cut().ifPresent(cut -> facts.add(Fact.of("Cut", tape, cut)));
        if (result.loop().isPresent()) {
            facts.add(small("Of that the overlap", result.overlap()));
        }
        result.mustReach(result.loop())
                .ifPresent(
                        share ->
                                facts.add(
                                        Fact.of(
                                                "Must stretch to pass",
                                                "by " + percentMore(share))));
        result.elastic()
                .stretched()
                .ifPresent(
                        share -> facts.add(Fact.of("Stretches, as tested", "by " + most(share))));
        result.cloth().ifPresent(cloth -> facts.addAll(cloth(cloth)));
        facts.addAll(casing());
        return facts;
    }

    private List<Fact> cloth(Length cloth) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("Edges together, after the alterations", tape, cloth));
        result.loop()
                .map(loop -> Share.left(cloth, loop))
                .ifPresent(
                        full ->
                                facts.add(
                                        Fact.of(
                                                "Cloth to elastic",
                                                Math.round(full.fraction() * 100) / 100.0
                                                        + " : 1")));
        return facts;
    }

    private List<Fact> casing() {
        Casing casing = result.casing();
        if (casing.kind() == Elastic.Casing.STRIP) {
            return List.of(
                    small(
                            "Strip sewn on, cut wide (a sewing textbook on casings)",
                            casing.stripWidth()),
                    small("and longer than the casing by", Casing.STRIP_LONGER));
        }
        return List.of(
                small(eased(Casing.NARROW_EASE, ""), casing.narrow()),
                small(eased(Casing.WIDE_EASE, ", for rough or thick cloth"), casing.wide()),
                small("Cloth beyond the fold for the narrower", casing.narrowFoldDown()),
                small("Cloth beyond the fold for the wider", casing.wideFoldDown()));
    }

    private String eased(Convention ease, String when) {
        return "Casing, elastic and " + both(ease) + when + " (" + ease.source() + ")";
    }

    /** On the maker's tape, and on the other in brackets; neither worked out from the other. */
    private String both(Convention length) {
        return tape.printSmall(length.on(tape))
                + " ("
                + tape.other().printSmall(length.on(tape.other()))
                + ")";
    }

    private Fact small(String label, Length length) {
        return new Fact(label, Both.of(tape, t -> t.printSmall(length)));
    }

    /** By how much a share is more than the whole, rounded up: {@code 41 %}. */
    static String percentMore(Share share) {
        return (int) Math.ceil((share.fraction() - 1) * 100 - 1e-9) + " %";
    }

    private static String most(Share share) {
        return (int) Math.floor((share.fraction() - 1) * 100 + 1e-9) + " %";
    }

    private Table sides() {
        List<List<Cell>> rows = new ArrayList<>();
        for (ElasticResult.Side side : result.sides()) {
            String source =
                    side.rule().words().isEmpty()
                            ? side.rule().source()
                            : side.rule().words() + ": " + side.rule().source();
            rows.add(
                    List.of(
                            Cell.of(source),
                            Cell.of(Both.of(tape, t -> range(side, Length.ZERO, t))),
                            Cell.of(Both.of(tape, t -> range(side, result.overlap(), t))),
                            Cell.of(pass(side))));
        }
        return new Table(
                "How long an elastic is",
                "The sources disagree, and no middle is right: they hold for elastics of different"
                        + " strength. Pin the very elastic round the body and decide by feel.",
                List.of("Rule", "Round, at rest", "Cut", "To pass it stretches by"),
                rows);
    }

    private static String range(ElasticResult.Side side, Length more, Tape tape) {
        String least = tape.print(side.shortest().plus(more));
        return side.shortest().equals(side.longest())
                ? least
                : least + " to " + tape.print(side.longest().plus(more));
    }

    private String pass(ElasticResult.Side side) {
        Optional<Share> must =
                result.mustReach(Optional.of(side.shortest()).filter(Length::isPositive));
        return must.map(ElasticPage::percentMore).orElse("not known");
    }

    private List<String> how() {
        List<String> how = new ArrayList<>();
        how.add(
                result.overlap().isPositive()
                        ? "Lap the ends flat, not twisted, and sew a box through both; or butt them on"
                                + " a tape, and cut it shorter by the overlap."
                        : "Butt the ends on a piece of tape and zigzag over both.");
        if (result.casing().kind() == Elastic.Casing.FOLDED) {
            how.add(
                    "Turn "
                            + both(Casing.TURN)
                            + " of the raw edge, fold the casing down, and stitch a second line"
                            + " "
                            + both(Casing.NARROW_EASE)
                            + " from the fold (a home-sewing guideline, 12.150; a sewing"
                            + " textbook). Thick cloth takes 2 to 3 mm more in the fold.");
        }
        how.add(
                "Leave "
                        + both(Casing.OPENING)
                        + " open to thread it (a sewing textbook on casings). Try it on, with a pin"
                        + " in the join, before you close that.");
        return how;
    }
}
