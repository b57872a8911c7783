package secondbolt.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.sewing.thread.FastenerThread;
import secondbolt.sewing.thread.SeamStrength;
import secondbolt.sewing.thread.ThreadRatios;
import secondbolt.sewing.thread.ThreadTotal;
import secondbolt.sewing.thread.ThreadUse;
import secondbolt.worksheet.Sentence;

/**
 * What the page shows of the sewing.
 *
 * @param result worked out
 * @param tape to print with
 */
record SewingPage(SewingResult result, Tape tape) {
    private static final String COUNTED =
            "Measured along the sewing lines after the alterations. A join is sewn as often as its"
                    + " pieces are cut: of a pair twice, of a piece on the fold on both halves. What"
                    + " is gathered or eased in is as long as what it is sewn to. More layers of an"
                    + " edge than its joins take, as of a facing, are counted as sewn down once.";

    List<Block> blocks() {
        SewingTables tables = new SewingTables(result, tape);
        List<Block> blocks = new ArrayList<>();
        List<Fact> facts = facts();
        if (!facts.isEmpty()) {
            blocks.add(new Block.Facts(facts));
        }
        if (!result.uses().isEmpty()) {
            blocks.add(new Block.Heading("Lines and their thread"));
            blocks.add(new Block.Prose(COUNTED));
            blocks.add(new Block.Rows(tables.lines()));
            blocks.add(new Block.Rows(tables.ratios()));
        }
        if (!result.lines().joins().isEmpty()) {
            blocks.add(new Block.Heading("How the edges can be finished"));
            blocks.add(new Block.Rows(tables.finishes()));
        }
        blocks.add(new Block.Heading("Needle"));
        blocks.add(new Block.Rows(new NeedleTable(result.cloths()).table()));
        blocks.add(new Block.Points(points()));
        return blocks;
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        result.totals().forEach(total -> facts.add(fact(total)));
        int needlefuls =
                result.uses().stream()
                        .map(ThreadUse::needlefuls)
                        .flatMap(Optional::stream)
                        .mapToInt(Integer::intValue)
                        .sum();
        if (needlefuls > 0) {
            facts.add(Fact.of("By hand", Plural.of(needlefuls, "needleful")));
        }
        if (!result.lines().untold().isEmpty()) {
            facts.add(
                    Fact.of(
                            "Edges that no join and no hem tells of, not counted",
                            tape,
                            result.lines().untoldLength()));
        }
        return facts;
    }

    private Fact fact(ThreadTotal total) {
        String own = amounts(total, tape) + ": " + SewingWords.count(total, tape);
        return new Fact(
                Sentence.capital(SewingWords.item(total, result.plan().thread())),
                new Both(own, amounts(total, tape.other())));
    }

    private static String amounts(ThreadTotal total, Tape on) {
        return on.printShop(total.net())
                + " sewn in, "
                + on.printShop(total.gross())
                + " with "
                + total.waste().percent(1)
                + " for ends and trials";
    }

    private List<String> points() {
        return Stream.of(
                        fasteners(),
                        leftOut(),
                        dyed(),
                        Stream.of(
                                "Waste: sources ask for 5 % (garment-industry notes), 10 to 15 %"
                                        + " (article on measuring thread use), 15 to 20 % (thread"
                                        + " maker's technical bulletin) and 20 % (thread use of a"
                                        + " woven shirt, 2015). At home, with trials and bobbin"
                                        + " ends, 20 % is taken if nothing is told.",
                                strength(),
                                "The thread should break before the cloth (textile article, 2017)."
                                        + " On worn cloth take a finer thread or fewer stitches,"
                                        + " never a stronger thread: a seam can be sewn again, a"
                                        + " torn cloth cannot.",
                                "Every allowance of one seam must be equally wide (sewing"
                                        + " glossary); what a facing, a lining or a band encloses"
                                        + " needs no finish."))
                .flatMap(points -> points)
                .toList();
    }

    private Stream<String> fasteners() {
        FastenerThread fasteners = result.fasteners();
        return fasteners.thread().isPositive()
                ? Stream.of(
                        "Counted for the closures: "
                                + Plural.of(fasteners.holes(), "buttonhole")
                                + " by machine at "
                                + tape.print(FastenerThread.HOLE)
                                + " and "
                                + Plural.of(fasteners.buttons(), "button")
                                + " at "
                                + tape.print(FastenerThread.BUTTON)
                                + ", together "
                                + tape.printShop(fasteners.thread())
                                + " (thread use of a woven shirt, 2015).")
                : Stream.empty();
    }

    private Stream<String> leftOut() {
        return result.fasteners().leavesOut()
                ? Stream.of(
                        "Not counted, for no figure was found: "
                                + Plural.of(
                                        result.fasteners().holesByHand(),
                                        "buttonhole by hand",
                                        "buttonholes by hand")
                                + ", "
                                + Plural.of(
                                        result.fasteners().others(),
                                        "snap, hook or tie",
                                        "snaps, hooks or ties")
                                + " sewn on.")
                : Stream.empty();
    }

    private Stream<String> dyed() {
        return switch (result.dyed()) {
            case NEVER -> Stream.empty();
            case BEFORE ->
                    Stream.of(
                            "Polyester thread takes none of the dyes for cotton, wool or silk: buy it"
                                    + " after the dye bath, to the dry cloth. Cotton thread takes the"
                                    + " dye of cotton, often in another depth.");
            case SEWN ->
                    Stream.of(
                            "It is dyed with its seams in: polyester thread stays pale in every one of"
                                    + " them. Sew with thread of the fibre that takes the dye, which"
                                    + " often comes out in another depth.");
        };
    }

    private String strength() {
        ThreadRatios ratios = new ThreadRatios(result.plan().means());
        return "A lockstitch seam of "
                + tape.printSmall(ratios.machine())
                + " stitches is as strong as "
                + Math.round(SeamStrength.lockstitch(ratios.machine()).fraction())
                + " of its threads to the inch; the weaker of needle and bobbin thread counts"
                + " (thread maker's booklet). Shorter stitches make it stronger, and leave more"
                + " holes to unpick.";
    }
}
