package secondbolt.fit.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import secondbolt.file.source.Place;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.fit.alter.EdgeWay;
import secondbolt.fit.alter.FoldObstacle;
import secondbolt.fit.alter.LengthenField;
import secondbolt.fit.alter.PieceAlteration;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/** Finds what keeps a pattern from being altered or its seams from being checked. */
public final class FitCheck {
    private final Pattern pattern;
    private final Tape tape;
    private final List<Trouble> troubles = new ArrayList<>();

    private FitCheck(Pattern pattern, Tape tape) {
        this.pattern = pattern;
        this.tape = tape;
    }

    /** All mistakes; none if the pattern can be worked out. */
    public static List<Trouble> of(Pattern pattern, List<Alteration> alterations, Tape tape) {
        FitCheck check = new FitCheck(pattern, tape);
        pattern.seams().forEach(seam -> seam.sides().forEach(check::edgesAreThere));
        pattern.openings().forEach(opening -> check.edgesAreThere(opening.edges()));
        alterations.forEach(check::applies);
        if (check.troubles.isEmpty()) {
            check.foldsHaveRoom(alterations);
        }
        return List.copyOf(check.troubles);
    }

    /** What keeps a sum of edges from being measured; none if all of them are there. */
    public static List<Trouble> of(Pattern pattern, Placed<EdgeSum> sum, Tape tape) {
        FitCheck check = new FitCheck(pattern, tape);
        check.edgesAreThere(sum);
        return List.copyOf(check.troubles);
    }

    private void edgesAreThere(Placed<EdgeSum> sum) {
        for (EdgeSum.Term term : sum.value().terms()) {
            if (pattern.find(term.piece()).isEmpty()) {
                troubles.add(
                        new Trouble(
                                        sum.place(),
                                        "`" + term + "`, which names no piece of the pattern",
                                        "one of its pieces: " + list(names()))
                                .ofName(term.piece(), names()));
            } else if (!pattern.find(term.piece()).get().hasEdge(term.edge().edge())) {
                Set<String> edges = pattern.find(term.piece()).get().shape().edgeNames();
                troubles.add(
                        new Trouble(
                                        sum.place(),
                                        "`" + term + "`, which is no edge of " + term.piece(),
                                        "one of its edges: " + list(edges))
                                .ofName(term.edge().edge(), edges));
            }
        }
    }

    private Set<String> names() {
        Set<String> names = new TreeSet<>();
        pattern.pieces().forEach(piece -> names.add(piece.name()));
        return names;
    }

    private void applies(Alteration alteration) {
        alteration.accept(
                new Alteration.Visitor<Boolean>() {
                    @Override
                    public Boolean lengthen(Alteration.Lengthen lengthen) {
                        lineIsThere(lengthen);
                        return true;
                    }

                    @Override
                    public Boolean widen(Alteration.Widen widen) {
                        edgeIsThere(widen);
                        return true;
                    }
                });
    }

    private void lineIsThere(Alteration.Lengthen lengthen) {
        Set<String> lines = new TreeSet<>();
        pattern.pieces().forEach(piece -> lines.addAll(piece.lines().keySet()));
        if (!lines.contains(lengthen.line())) {
            troubles.add(
                    new Trouble(
                                    lengthen.place(),
                                    "`" + lengthen.line() + "`, a line that no piece carries",
                                    lines.isEmpty()
                                            ? "a line first drawn on its pieces, as `lines: {"
                                                    + lengthen.line()
                                                    + ": 42}`"
                                            : "one of the lines that pieces carry: " + list(lines))
                            .ofName(lengthen.line(), lines));
        }
        for (String name : lengthen.pieces().keySet()) {
            boolean carries =
                    pattern.find(name)
                            .filter(p -> p.lines().containsKey(lengthen.line()))
                            .isPresent();
            if (!carries) {
                troubles.add(
                        new Trouble(
                                        lengthen.place(),
                                        "`"
                                                + name
                                                + "`, which is no piece that carries "
                                                + lengthen.line(),
                                        "a piece with that line")
                                .ofName(name, names()));
            }
        }
    }

    private void edgeIsThere(Alteration.Widen widen) {
        for (String edge : widen.edges()) {
            if (pattern.pieces().stream().noneMatch(piece -> piece.hasEdge(edge))) {
                Set<String> edges = new TreeSet<>();
                pattern.pieces().forEach(p -> edges.addAll(p.shape().edgeNames()));
                troubles.add(
                        new Trouble(
                                        widen.place(),
                                        "`" + edge + "`, an edge that no piece has",
                                        "one of the pieces' edges: " + list(edges))
                                .ofName(edge, edges));
            }
        }
        if (widen.from().isPresent()
                && widen.to().isPresent()
                && !widen.to().get().isLongerThan(widen.from().get())) {
            tell(widen.place(), "`to` that is not below `from`", "a larger `to`");
        }
        if (widen.from().isPresent() || widen.to().isPresent()) {
            pattern.pieces().forEach(piece -> tapersDown(widen, piece));
        }
    }

    /** A taper runs down the piece, so an edge that lies across it cannot take one. */
    private void tapersDown(Alteration.Widen widen, Piece piece) {
        piece.shape()
                .asDrawn()
                .ifPresent(
                        drawn -> {
                            EdgeWay ways = new EdgeWay(drawn);
                            for (int i = 0; i < drawn.edges().size(); i++) {
                                String edge = drawn.edges().get(i).name();
                                if (widen.edges().contains(edge) && !ways.runsDown(i)) {
                                    tell(
                                            widen.place(),
                                            "a taper on "
                                                    + piece.name()
                                                    + "."
                                                    + edge
                                                    + ", which does not run down the piece",
                                            "the whole width, without `from` and `to`");
                                }
                            }
                        });
    }

    /** A fold must not swallow a corner, a notch, a mark, a dart or another line. */
    private void foldsHaveRoom(List<Alteration> alterations) {
        List<Alteration.Lengthen> lengthens = lengthens(alterations);
        for (Piece piece : pattern.pieces()) {
            LengthenField field = PieceAlteration.field(piece, lengthens);
            for (LengthenField.Cut cut : field.cuts()) {
                List<FoldObstacle> obstacles =
                        cut.byMm() == 0 ? List.of() : FoldObstacle.of(piece, field, cut);
                if (!obstacles.isEmpty()) {
                    foldHasNoRoom(piece, field, cut, obstacles, lengthens);
                }
            }
        }
    }

    private static List<Alteration.Lengthen> lengthens(List<Alteration> alterations) {
        return alterations.stream()
                .filter(Alteration.Lengthen.class::isInstance)
                .map(Alteration.Lengthen.class::cast)
                .toList();
    }

    /** One mistake, whatever lies in the way, for they all ask the same of her. */
    private void foldHasNoRoom(
            Piece piece,
            LengthenField field,
            LengthenField.Cut cut,
            List<FoldObstacle> obstacles,
            List<Alteration.Lengthen> lengthens) {
        Place place =
                lengthens.stream()
                        .filter(l -> l.line().equals(cut.name()))
                        .map(Alteration.Lengthen::place)
                        .reduce((first, second) -> second)
                        .orElseThrow();
        Optional<Length> most =
                cut.byMm() < 0
                        ? FoldObstacle.mostFolded(piece, field, cut, tape.mark())
                        : Optional.empty();
        Length by = Length.ofComputedMillimetres(Math.abs(cut.byMm()));
        tell(
                place,
                (cut.byMm() < 0 ? "a fold of " : "a cut for ")
                        + tape.print(by)
                        + " at "
                        + cut.name()
                        + " of "
                        + piece.name()
                        + " that goes through "
                        + String.join(", ", obstacles.stream().map(FoldObstacle::what).toList()),
                most.map(m -> "a fold of at most " + tape.print(m) + " there, or the line")
                                .orElse("the line")
                        + " where there is room");
    }

    private void tell(Place place, String found, String right) {
        troubles.add(new Trouble(place, found, right));
    }

    private static String list(Set<String> names) {
        return String.join(", ", names);
    }
}
