package secondbolt.fit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.closure.placket.DrawnLaps;
import secondbolt.fit.giving.FitGiving;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.TapedGaps;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.fit.size.SizePage;
import secondbolt.fit.size.SizeResult;
import secondbolt.measure.Tape;
import secondbolt.pattern.Seam;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Worksheet;

/**
 * The pattern, altered and checked, and the wearer beside it.
 *
 * @param result the pattern
 * @param made what its pieces measure
 * @param openings each beside what must pass it
 * @param size the wearer beside the pattern's sizes
 * @param tape to print with
 */
public record FitWorksheet(
        FitResult result,
        MadeMeasures made,
        List<OpeningCheck> openings,
        SizeResult size,
        Tape tape) {
    /** Copies the openings. */
    public FitWorksheet {
        openings = List.copyOf(openings);
    }

    /**
     * The page of a pattern.
     *
     * @param wearer if told
     * @param laps what lies double where it closes
     */
    public static FitWorksheet of(
            FitResult result, Optional<Wearer> wearer, DrawnLaps laps, Tape tape) {
        MadeMeasures made = MadeMeasures.of(result, laps);
        return new FitWorksheet(
                result,
                made,
                OpeningCheck.of(result, wearer),
                FitSize.of(result, made, wearer, tape),
                tape);
    }

    /** Its page and figures; it has no sheet of its own. */
    public Worksheet worksheet() {
        return Worksheet.of("fit", "Fit and seams", this::notes)
                .showing(this::blocks)
                .telling(() -> FitFigures.of(result, made, size))
                .giving(FitGiving.of(result, alterations(), size, tape));
    }

    private List<String> alterations() {
        FitPage page = new FitPage(result.pattern(), tape);
        return result.altered().stream().map(page::words).toList();
    }

    private List<Block> blocks() {
        FitPage page = new FitPage(result.pattern(), tape);
        List<Block> blocks = new ArrayList<>(SizePage.blocks(size, tape));
        blocks.addAll(page.made(made));
        result.altered().forEach(altered -> blocks.addAll(page.alteration(altered)));
        blocks.addAll(page.seams(result.seams()));
        blocks.addAll(page.openings(openings));
        return blocks;
    }

    private Notes notes() {
        MeaningGaps meanings = new MeaningGaps(result, made, size);
        TapedGaps taped = TapedGaps.of(result, tape);
        List<Finding> findings = new ArrayList<>(FitFindings.of(result, made, openings, tape));
        findings.addAll(size.findings());
        List<Assumed> assumed = new ArrayList<>(size.assumed());
        assumed.addAll(meanings.assumed());
        assumed.addAll(new AlterationFindings(result, tape).assumed());
        assumed.addAll(taped.assumed());
        meeting().ifPresent(assumed::add);
        assumed.addAll(tolerances());
        OpeningCheck.drawnIn(result).ifPresent(assumed::add);
        List<Open> open = new ArrayList<>(taped.open());
        open.addAll(meanings.open());
        openings.forEach(check -> check.unknown(tape).ifPresent(open::add));
        open.addAll(size.open());
        return new Notes(findings, assumed, open);
    }

    /** What is measured round, though no join closes it. */
    private Optional<Assumed> meeting() {
        Set<String> edges = new LinkedHashSet<>();
        made.girthsOfTheBody().forEach((measure, girth) -> edges.addAll(girth.meeting()));
        return edges.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Assumed(
                                "how the pieces close all round",
                                "edge to edge at " + String.join(", ", edges),
                                "no join says what is sewn there; what laps over would have to be"
                                        + " taken off"));
    }

    private List<Assumed> tolerances() {
        List<Assumed> assumed = new ArrayList<>();
        List<Seam> seams = result.pattern().seams();
        if (!seams.isEmpty()) {
            assumed.add(
                    new Assumed(
                            "how closely a seam must meet",
                            SeamCheck.MEETS_IN_WORDS.get(tape),
                            SeamCheck.MEETS.source()));
        }
        if (seams.stream().anyMatch(Seam::isGathered)) {
            assumed.add(
                    new Assumed(
                            "how far a gathered side may be off",
                            "a twentieth of its length, which the gathers take up",
                            Convention.COMMON_PRACTICE));
        }
        return assumed;
    }
}
