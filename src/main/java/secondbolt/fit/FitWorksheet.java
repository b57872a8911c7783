package secondbolt.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.draw.Drawing;
import secondbolt.figure.Figures;
import secondbolt.fit.size.SizeResult;
import secondbolt.fit.size.Wearer;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/** The pattern, altered and checked. */
public final class FitWorksheet {
    private final FitResult result;
    private final OpeningCheck openings;
    private final SizeResult size;
    private final Tape tape;

    private FitWorksheet(FitResult result, OpeningCheck openings, SizeResult size, Tape tape) {
        this.result = result;
        this.openings = openings;
        this.size = size;
        this.tape = tape;
    }

    /**
     * The page of a pattern.
     *
     * @param wearer if told
     */
    public static FitWorksheet of(FitResult result, Optional<Wearer> wearer, Tape tape) {
        return new FitWorksheet(
                result,
                new OpeningCheck(result, wearer, tape),
                FitSize.of(result, wearer, tape),
                tape);
    }

    /** Its page, sheets and figures. */
    public Worksheet worksheet() {
        return Worksheet.of("fit", "Fit and seams", new Notes(findings(), assumed(), open()))
                .showing(() -> List.of(new Block.Own("fit", view(), pictures())))
                .printing(this::sheets)
                .telling(this::figures);
    }

    Object view() {
        return new FitView(
                result.pattern().rights().word(),
                sized(),
                result.alterations().stream().map(this::view).toList(),
                result.seams().stream().map(this::view).toList(),
                result.pattern().openings().stream().map(this::view).toList());
    }

    private FitView.Sized sized() {
        return new FitView.Sized(
                size.size().orElse(""),
                size.measurements().stream().map(this::view).toList(),
                size.suggestions().stream()
                        .map(s -> new FitView.Suggested(s.text(), s.yaml().orElse("")))
                        .toList(),
                size.redraw());
    }

    private FitView.Measured view(SizeResult.Measurement measurement) {
        return new FitView.Measured(
                measurement.name().word(),
                both(measurement.body()),
                both(measurement.pattern()),
                both(measurement.finished()),
                both(measurement.ease()),
                measurement.nearest().orElse(""));
    }

    private FitView.Both both(Optional<Length> length) {
        return length.map(this::both).orElse(new FitView.Both("", ""));
    }

    private FitView.Altered view(Alteration alteration) {
        List<FitView.Change> changes =
                result.followers().stream()
                        .filter(f -> f.alteration().equals(alteration))
                        .filter(f -> !tape.print(f.before()).equals(tape.print(f.after())))
                        .map(
                                f ->
                                        new FitView.Change(
                                                f.edge().toString(),
                                                both(f.before()),
                                                both(f.after())))
                        .toList();
        return new FitView.Altered(
                words(alteration), alteration.found().orElse(""), changes, open(alteration));
    }

    /** The taped edges of which it is not known whether this alteration changes them. */
    private List<String> open(Alteration alteration) {
        List<Alteration.Lengthen> lengthens =
                FitCalculation.lengthens(result.pattern(), List.of(alteration));
        List<String> open = new ArrayList<>();
        for (Piece piece : result.pattern().pieces()) {
            for (TapedLine line :
                    TapedLine.moved(piece, lengthens, result.pattern().meanings()).values()) {
                line.open().forEach(edge -> open.add(new PieceEdge(piece.name(), edge).toString()));
            }
        }
        return open;
    }

    private String words(Alteration alteration) {
        return alteration.accept(
                new Alteration.Visitor<String>() {
                    @Override
                    public String lengthen(Alteration.Lengthen lengthen) {
                        return lengthen.words() + " by " + tape.print(lengthen.by().size());
                    }

                    @Override
                    public String widen(Alteration.Widen widen) {
                        return widen.words()
                                + " by "
                                + tape.print(widen.by().size())
                                + " in all round the body";
                    }
                });
    }

    private FitView.Joined view(SeamCheck check) {
        Seam seam = check.seam();
        return new FitView.Joined(
                seam.first().value().toString(),
                side(seam.first().value(), check.after().first()),
                seam.second().value().toString(),
                side(seam.second().value(), check.after().second()),
                meant(seam),
                !check.isKnown() ? "not known" : check.meets() ? "meets" : "does not meet");
    }

    private FitView.Both side(EdgeSum edges, Length length) {
        return result.open(edges).isEmpty() ? both(length) : new FitView.Both("not known", "");
    }

    private String meant(Seam seam) {
        List<String> meant = new ArrayList<>();
        if (seam.ease().isPositive()) {
            meant.add("ease " + tape.print(seam.ease()));
        }
        if (seam.isGathered()) {
            meant.add("gathered " + seam.gather().toPlainString() + " to 1");
        }
        return String.join(", ", meant);
    }

    private FitView.Opens view(Opening opening) {
        Length opens =
                new Lengths(result.pattern(), result.pieces())
                        .of(opening.edges().value())
                        .plus(opening.slit().times(2));
        return new FitView.Opens(
                opening.what(), side(opening.edges().value(), opens), opening.over().word());
    }

    private FitView.Both both(Length length) {
        return new FitView.Both(tape.print(length), tape.other().print(length));
    }

    Map<String, Drawing> pictures() {
        return Map.of();
    }

    List<Sheet> sheets() {
        return List.of();
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(FitFindings.of(result, tape));
        findings.addAll(openings.findings());
        findings.addAll(size.findings());
        return findings;
    }

    List<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>(size.assumed());
        assumed.addAll(MeaningGaps.of(result, size).assumed());
        assumed.addAll(TapedGaps.of(result, tape).assumed());
        if (!result.pattern().seams().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "how closely a seam must meet",
                            tape == Tape.INCH ? "a sixteenth of an inch" : "1 mm",
                            "common practice, no source"));
        }
        if (result.pattern().seams().stream().anyMatch(s -> s.isGathered())) {
            assumed.add(
                    new Assumed(
                            "how far a gathered side may be off",
                            "a twentieth of its length, which the gathers take up",
                            "common practice, no source"));
        }
        return assumed;
    }

    List<Open> open() {
        List<Open> open = new ArrayList<>(TapedGaps.of(result, tape).open());
        open.addAll(MeaningGaps.of(result, size).open());
        open.addAll(openings.open());
        open.addAll(size.open());
        return open;
    }

    Figures figures() {
        Figures pieces = new Figures();
        for (Piece piece : result.pieces()) {
            pieces.inside(piece.name(), figures(piece));
        }
        return size.addTo(new Figures())
                .inside("pieces", pieces)
                .list("seams", result.seams().stream().map(FitWorksheet::figures).toList())
                .list("followers", result.followers().stream().map(FitWorksheet::figures).toList());
    }

    private Figures figures(Piece piece) {
        Figures figures = new Figures();
        Optional<PieceShape.Drawn> drawn = piece.shape().asDrawn();
        if (drawn.isPresent()) {
            figures.points("outline", ShapeKeys.points(drawn.get()));
        }
        Map<String, Length> before = new LinkedHashMap<>();
        result.pattern().find(piece.name()).ifPresent(p -> before.putAll(p.shape().edgeLengths()));
        Map<String, Length> known = new LinkedHashMap<>(piece.shape().edgeLengths());
        known.keySet().removeIf(piece.shape()::isOpen);
        return figures.lengths("edges", known).lengths("edges_before", before);
    }

    private static Figures figures(SeamCheck check) {
        if (!check.isKnown()) {
            return new Figures().text("join", check.seam().words()).text("meets", "unknown");
        }
        return new Figures()
                .text("join", check.seam().words())
                .lengths("lengths", List.of(check.after().first(), check.after().second()))
                .length("difference", check.after().difference())
                .length("allowed", check.allowed())
                .claim("meets", check.meets());
    }

    private static Figures figures(FitResult.Follower follower) {
        return new Figures()
                .text("alteration", follower.alteration().words())
                .text("what", follower.edge().toString())
                .length("before", follower.before())
                .length("after", follower.after());
    }
}
