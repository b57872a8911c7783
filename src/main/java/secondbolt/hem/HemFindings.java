package secondbolt.hem;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import secondbolt.cloth.Cloth;
import secondbolt.cloth.Extent;
import secondbolt.cloth.Textile;
import secondbolt.file.Answer;
import secondbolt.garment.Role;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.TurnedEdge;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** What a maker should know of a hem before she cuts its allowance. */
final class HemFindings {
    private static final List<String> WOOLLY =
            List.of("wool", "mohair", "cashmere", "alpaca", "angora");

    /** Source: a shop's article on cloth weights: heavy is over 350 g/m². */
    private static final double HEAVY_G_PER_M2 = 350;

    /**
     * Source: T. Johnson, It's Fun to Sew a Cotton School Dress, 4-H bulletin L-87: heavy wool or
     * cotton 2 in or less.
     */
    private static final Length DEEPEST_HEAVY = Length.ofInches(2, 1);

    /** Ends that are off by less are sewn without being noticed; common practice, no source. */
    private static final Length NOTICED = Length.ofMillimetres(1);

    /** Less is not seen; common practice, no source. */
    private static final double ASKEW_RADIANS = Math.toRadians(2);

    /** Three quarters of a circle and more count as full; common practice, no source. */
    private static final double FULL_RADIANS = 1.5 * Math.PI - 1e-6;

    private final HemResult result;
    private final Map<String, Cloth> cloths;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    private HemFindings(HemResult result, Map<String, Cloth> cloths, Tape tape) {
        this.result = result;
        this.cloths = cloths;
        this.tape = tape;
    }

    static List<Finding> of(HemResult result, Map<String, Cloth> cloths, Tape tape) {
        HemFindings all = new HemFindings(result, cloths, tape);
        all.open();
        all.noRoom();
        if (result.hem().turned() != Hem.Turned.FACED) {
            all.tooFull();
            all.tooShort();
            all.ease();
            all.tooTight();
            all.corners();
            all.ends();
            all.fold();
            all.included();
            all.heavy();
        }
        all.hang();
        return List.copyOf(all.findings);
    }

    /** Edges known by tape of which it is not known whether the alterations changed them. */
    private void open() {
        for (HemEdge edge : result.edges()) {
            if (edge.piece().shape().isOpen(edge.edge().edge())) {
                tell(
                        Level.WARNING,
                        "Whether the alterations change "
                                + edge.edge()
                                + " is not known: its fold is told as it was taped.",
                        "Write which edges the moved lines of "
                                + edge.edge().piece()
                                + " cross; what to write stands with the fit.");
            }
        }
    }

    private void tell(Level level, String text, String remedy) {
        findings.add(new Finding(result.name(), level, text, remedy));
    }

    private String each(List<HemEdge> edges, Function<HemEdge, String> words) {
        return edges.stream()
                .map(edge -> edge.edge() + " " + words.apply(edge))
                .collect(Collectors.joining("; "));
    }

    private String print(Length length) {
        boolean small = length.size().isShorterThan(Length.ofMillimetres(10));
        return small ? tape.printSmall(length) : tape.print(length);
    }

    private String surplus(HemEdge edge) {
        String times = edge.times() == 1 ? "" : ", " + edge.times() + " times round";
        return print(edge.surplus().orElseThrow().size())
                + " ("
                + HemWords.percent(Math.abs(edge.fullness().orElse(0.0)))
                + times
                + ")";
    }

    private void noRoom() {
        List<HemEdge> none =
                result.edges().stream()
                        .filter(e -> e.turned().filter(t -> t.landingMm() <= 0).isPresent())
                        .toList();
        if (!none.isEmpty()) {
            tell(
                    Level.STOP,
                    "At its depth from the fold nothing is left of the piece to sew it to: "
                            + each(none, e -> "").strip()
                            + ".",
                    "Write a smaller `depth`, or `turned: faced`.");
        }
    }

    private void ease() {
        List<HemEdge> edges = result.handled(HemEdge.Handling.EASE);
        if (!edges.isEmpty()) {
            tell(
                    Level.NOTE,
                    "The turned edge is longer than the line it lands on: "
                            + each(edges, this::surplus)
                            + ".",
                    "Ease-stitch "
                            + tape.printSmall(Hem.rawEdge(tape))
                            + " from the raw edge, draw each panel up by its own surplus, and shrink"
                            + " the fullness away with steam over the pressing card.");
        }
    }

    private void tooFull() {
        List<HemEdge> edges =
                result.handled(HemEdge.Handling.TOO_FULL).stream()
                        .filter(e -> e.fullness().isPresent())
                        .toList();
        if (edges.isEmpty()) {
            return;
        }
        Length shrinks = deepest(edges, HemCalculation.SHRINKS_IN);
        tell(
                Level.WARNING,
                "The turned edge is far longer than the line it lands on: "
                        + each(edges, this::surplus)
                        + ". More than about 5 % will not shrink flat in firm cotton (common"
                        + " practice, no source).",
                "Up to "
                        + print(shrinks)
                        + " deep it can be eased in"
                        + flat(edges)
                        + (shrinks.isShorterThan(Length.ofMillimetres(2))
                                ? ""
                                : ": write such a `depth`, or a `narrow` hem")
                        + ". Or keep the depth with `turned: faced`, a facing cut to the shape of"
                        + " the edge, as for very wide circular skirts (Baldt, Clothing for Women,"
                        + " 1916)."
                        + circle()
                        + gentler(edges));
    }

    private String flat(List<HemEdge> edges) {
        Length flat = deepest(edges, HemCalculation.PRESSES_FLAT);
        return flat.isShorterThan(Length.ofMillimetres(2))
                ? ""
                : ", up to " + print(flat) + " it lies flat by itself";
    }

    private String circle() {
        return result.turnsAllRound() >= FULL_RADIANS
                ? " A full circle takes "
                        + tape.printSmall(Hem.rawEdge(tape))
                        + ", or a rolled hem (4-H bulletin L-87)."
                : "";
    }

    /** What the design itself would have to be for this depth. */
    private String gentler(List<HemEdge> edges) {
        boolean arc = edges.stream().allMatch(e -> e.turned().get().radiusMm().isPresent());
        double factor = (2 + HemCalculation.SHRINKS_IN) / HemCalculation.SHRINKS_IN;
        double needed = result.hem().depth().orElseThrow().millimetres() * factor;
        return arc
                ? " This depth itself would want a fold that curves with a radius of "
                        + tape.print(HemEdge.mm(needed))
                        + " or more."
                : "";
    }

    /**
     * The depth at which the fullness comes to a share, rounded down.
     *
     * <p>Derived: a fold of length F that turns by τ, turned up by d, has the surplus 2dτ over a
     * line of F − dτ; that is the share r of it at d = rF / (τ(2 + r)).
     */
    private Length deepest(List<HemEdge> edges, double share) {
        double least =
                edges.stream()
                        .map(e -> e.turned().orElseThrow())
                        .mapToDouble(t -> share * t.foldMm() / (t.turnsRadians() * (2 + share)))
                        .min()
                        .orElseThrow();
        return HemEdge.mm(Math.max(0, least)).roundedDownTo(tape.mark());
    }

    private void tooShort() {
        List<HemEdge> edges = result.handled(HemEdge.Handling.SHORT);
        if (!edges.isEmpty()) {
            tell(
                    Level.CAUTION,
                    "The edge is hollow, so the turned edge is shorter than the line it lands on: "
                            + each(edges, this::surplus)
                            + ".",
                    "Clip the turned-up cloth every "
                            + tape.print(
                                    tape == Tape.INCH
                                            ? Length.ofInches(1, 1)
                                            : Length.ofMillimetres(25))
                            + " or closer, to within "
                            + tape.printSmall(
                                    tape == Tape.INCH
                                            ? Length.ofInches(1, 8)
                                            : Length.ofMillimetres(3))
                            + " of the fold, so that it spreads, or write `turned: faced` and sew on"
                            + " a facing of its shape (common practice, no source).");
        }
    }

    private void tooTight() {
        List<HemEdge> tight =
                result.edges().stream()
                        .filter(e -> e.turned().filter(TurnedEdge::isTooTight).isPresent())
                        .toList();
        if (!tight.isEmpty()) {
            tell(
                    Level.WARNING,
                    "It bends more sharply than it is deep: " + each(tight, e -> "").strip() + ".",
                    "Write a smaller `depth`, or face it; no pressing card of that shape is"
                            + " printed.");
        }
    }

    private void corners() {
        List<String> out = new ArrayList<>();
        List<String> in = new ArrayList<>();
        for (HemEdge edge : result.edges()) {
            for (TurnedEdge.Corner corner :
                    edge.turned().map(TurnedEdge::corners).orElse(List.of())) {
                String where =
                        edge.edge()
                                + ", "
                                + tape.print(HemEdge.mm(corner.alongMm()))
                                + " from its start";
                (corner.turnsRadians() > 0 ? out : in).add(where);
            }
            for (HemEdge.Neighbour next : List.of(edge.ends().start(), edge.ends().end())) {
                if (next.kind() == HemEdge.Neighbour.Kind.HEM) {
                    out.add(edge.edge() + ", where it meets the hem of " + next.name());
                }
            }
        }
        if (!out.isEmpty()) {
            tell(
                    Level.NOTE,
                    "The hem turns a corner: " + String.join("; ", out) + ".",
                    "Fold a mitre there and trim what lies inside it; the lengths above count to"
                            + " the mitre.");
        }
        if (!in.isEmpty()) {
            tell(
                    Level.CAUTION,
                    "The hem has an inward corner, where the turned-up cloth does not reach round: "
                            + String.join("; ", in)
                            + ".",
                    "Clip into the corner and set in a piece of cloth, or face it.");
        }
    }

    private void ends() {
        List<HemEdge> in = new ArrayList<>();
        List<HemEdge> out = new ArrayList<>();
        for (HemEdge edge : result.edges()) {
            boolean takes =
                    !edge.takesInAtStart().isShorterThan(NOTICED)
                            || !edge.takesInAtEnd().isShorterThan(NOTICED);
            boolean lets =
                    !edge.takesInAtStart().isLongerThan(NOTICED.times(-1))
                            || !edge.takesInAtEnd().isLongerThan(NOTICED.times(-1));
            if (takes) {
                in.add(edge);
            }
            if (lets) {
                out.add(edge);
            }
        }
        if (!in.isEmpty()) {
            tell(
                    Level.NOTE,
                    "Sides lean out towards the fold, so the turned-up part is cut mirrored; beside"
                            + " a side that ran straight on it lies farther in at its edge: "
                            + each(in, e -> atEnds(e, true))
                            + ".",
                    "Cut on the printed line, and sew each side seam along it, down to the fold"
                            + " and mirrored past it: "
                            + allRound(in, true)
                            + " less all round.");
        }
        if (!out.isEmpty()) {
            tell(
                    Level.CAUTION,
                    "The piece opens at more than a right angle above the fold, as where it narrows"
                            + " towards it, so the turned-up part is cut mirrored and flares: "
                            + each(out, e -> atEnds(e, false))
                            + ".",
                    "Cut and sew the sides mirrored past the fold, as printed; if they run straight"
                            + " on, the turned hem is too tight by "
                            + allRound(out, false)
                            + " all round.");
        }
    }

    /** Drawn half, a hem that does not meet the fold squarely comes to a point there. */
    private void fold() {
        List<HemEdge> askew =
                result.edges().stream()
                        .filter(e -> e.turned().isPresent())
                        .filter(
                                e ->
                                        isAskew(e.ends().start(), e.turned().get().start())
                                                || isAskew(e.ends().end(), e.turned().get().end()))
                        .toList();
        if (!askew.isEmpty()) {
            tell(
                    Level.CAUTION,
                    "It does not meet the fold of the cloth squarely, so that the opened piece has a"
                            + " corner there: "
                            + each(askew, e -> "").strip()
                            + ".",
                    "Draw the last of its curve level to the fold, or mean the corner.");
        }
    }

    private static boolean isAskew(HemEdge.Neighbour next, TurnedEdge.End end) {
        return next.kind() == HemEdge.Neighbour.Kind.FOLD
                && Math.abs(end.leansRadians()) > ASKEW_RADIANS;
    }

    private String allRound(List<HemEdge> edges, boolean in) {
        Length all = Length.ZERO;
        for (HemEdge edge : edges) {
            for (Length takes : List.of(edge.takesInAtStart(), edge.takesInAtEnd())) {
                if (takes.isNegative() != in) {
                    all = all.plus(takes.size().times(edge.times()));
                }
            }
        }
        return print(all);
    }

    private String atEnds(HemEdge edge, boolean in) {
        List<String> words = new ArrayList<>();
        end(edge.takesInAtStart(), edge.ends().start().name(), in).ifPresent(words::add);
        end(edge.takesInAtEnd(), edge.ends().end().name(), in).ifPresent(words::add);
        return String.join(" and ", words);
    }

    private Optional<String> end(Length takes, String side, boolean in) {
        boolean counts = takes.isNegative() != in && !takes.size().isShorterThan(NOTICED);
        return counts ? Optional.of(print(takes.size()) + " at " + side) : Optional.empty();
    }

    private void included() {
        if (result.edges().stream().anyMatch(HemEdge::isIncluded)) {
            tell(
                    Level.CAUTION,
                    "The outlines include the allowances, so the fold is taken to lie "
                            + print(result.turnedUp())
                            + " inside them; whether the pattern mirrors the ends of its hem is not"
                            + " known.",
                    "Measure on the pattern that so much is left below its hem line, and fold the"
                            + " paper there: its sides must lie on themselves.");
        }
    }

    private void heavy() {
        boolean twice =
                result.hem().turned() == Hem.Turned.TWICE
                        || result.hem().turned() == Hem.Turned.NARROW;
        for (Map.Entry<String, Cloth> cloth : cloths.entrySet()) {
            if (!isCutOf(cloth.getValue())) {
                continue;
            }
            boolean woolly = isWoolly(cloth.getValue());
            boolean heavy = isHeavy(cloth.getValue());
            if ((woolly || heavy) && twice) {
                tell(
                        Level.CAUTION,
                        "Turned twice, "
                                + cloth.getKey()
                                + " makes a thick ridge: "
                                + (woolly
                                        ? "hems of wool flannel are not folded twice (Watson,"
                                                + " Textiles and Clothing, 1907)."
                                        : "it is heavy."),
                        "Bind or overcast the raw edge and turn it once: `turned: blind`.");
            }
            boolean deep = result.hem().depth().filter(DEEPEST_HEAVY::isShorterThan).isPresent();
            if (heavy && deep) {
                tell(
                        Level.NOTE,
                        cloth.getKey() + " is heavy, and the hem deep.",
                        tape.print(DEEPEST_HEAVY)
                                + " or less is usual for heavy wool or cotton (4-H bulletin"
                                + " L-87).");
            }
        }
    }

    private boolean isCutOf(Cloth cloth) {
        Role role = cloth.textile().roleOrMain();
        return result.edges().stream().anyMatch(e -> e.piece().copies(role) > 0);
    }

    private static boolean isWoolly(Cloth cloth) {
        return cloth.textile()
                .fibre()
                .flatMap(Answer::toOptional)
                .filter(f -> f.hasAny(WOOLLY))
                .isPresent();
    }

    private static boolean isHeavy(Cloth cloth) {
        Textile textile = cloth.textile();
        Optional<ClothWeight> weight =
                textile.weight()
                        .flatMap(Answer::toOptional)
                        .or(
                                () ->
                                        textile.mass()
                                                .flatMap(Answer::toOptional)
                                                .flatMap(
                                                        mass ->
                                                                cloth.extent()
                                                                        .toOptional()
                                                                        .map(Extent::area)
                                                                        .map(mass::over)));
        return weight.filter(w -> w.gramsPerSquareMetre() > HEAVY_G_PER_M2).isPresent();
    }

    private void hang() {
        if (result.hang().first()) {
            tell(
                    Level.NOTE,
                    "Let it hang "
                            + result.hang().hours()
                            + " h before the hem is marked: cloth on the bias drops.",
                    result.hem().fromFloor().isPresent()
                            ? "Then level it with the printed strip."
                            : "Then mark it level from the floor; `from floor` prints a strip to do"
                                    + " it with.");
        }
    }
}
