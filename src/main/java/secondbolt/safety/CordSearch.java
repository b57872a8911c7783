package secondbolt.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.Closure;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.Meaning;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Subject;

/**
 * Finds all cords of a garment, in whichever way they are written: closures with ties, pieces and
 * hems called like one, and what is told under {@code cords}.
 *
 * @param told what the maker says, by name
 * @param closures as written
 * @param hems the edges that each is turned up at, by the name of the hem
 * @param pattern altered, if there is one
 */
record CordSearch(
        Map<String, ToldCord> told,
        Map<String, Closure> closures,
        Map<String, List<PieceEdge>> hems,
        Optional<Pattern> pattern) {
    List<Cord> all() {
        List<Cord> cords = new ArrayList<>();
        Set<String> named = new LinkedHashSet<>();
        closures.forEach(
                (name, closure) -> {
                    if (closure.fastening().kind() == Fastening.Kind.TIES) {
                        named.add(name);
                    }
                });
        hems.keySet().stream().filter(NameWords.CORDS::isIn).forEach(named::add);
        pieces().filter(piece -> isCalledCord(piece.name())).forEach(p -> named.add(p.name()));
        told.keySet().forEach(named::add);
        for (String name : named) {
            ToldCord says = told.getOrDefault(name, ToldCord.UNTOLD);
            if (says.isOne()) {
                cords.add(cord(name, says));
            }
        }
        return cords;
    }

    /** The pieces that go round the neck in a loop, by their names; not those told to be none. */
    List<String> neckLoops() {
        return pieces().map(Piece::name)
                .filter(name -> NameWords.LOOPS.isIn(name) && !NameWords.CORDS.isIn(name))
                .filter(name -> CordPlace.named(name).equals(Optional.of(CordPlace.NECK)))
                .filter(name -> !told.containsKey(name))
                .toList();
    }

    private Stream<Piece> pieces() {
        return pattern.stream().flatMap(p -> p.pieces().stream());
    }

    /** A piece that another cord is told to be cut from is no further cord. */
    private boolean isCalledCord(String piece) {
        return NameWords.CORDS.isIn(piece)
                && told.values().stream()
                        .noneMatch(t -> t.of().map(Placed::value).equals(Optional.of(piece)));
    }

    private Cord cord(String name, ToldCord says) {
        Optional<Piece> piece = find(says.of().map(Placed::value).orElse(name));
        Optional<CordPlace> seen = seen(name, piece);
        Optional<Length> cut = piece.map(CordSearch::longest);
        return new Cord(
                name,
                about(name, piece),
                says.at().or(() -> seen),
                says.free().or(() -> cut),
                seen.filter(place -> says.at().isEmpty()).isPresent(),
                says.free().isEmpty() && cut.isPresent(),
                seen.filter(CordPlace::isAtTheNeck)
                        .filter(place -> says.at().filter(at -> !at.isAtTheNeck()).isPresent()),
                cut);
    }

    private Optional<Piece> find(String name) {
        return pieces().filter(piece -> piece.name().equals(name)).findFirst();
    }

    private List<Subject> about(String name, Optional<Piece> piece) {
        List<Subject> about = new ArrayList<>();
        if (closures.containsKey(name)) {
            about.add(new Subject.Closure(name));
        }
        if (hems.containsKey(name)) {
            about.add(new Subject.Hem(name));
        }
        piece.ifPresent(p -> about.add(new Subject.Piece(p.name())));
        if (about.isEmpty()) {
            about.add(new Subject.Whole(name));
        }
        return about;
    }

    /** Along its longest edge; a piece on the fold opens out across it. */
    private static Length longest(Piece piece) {
        Length longest = Length.ZERO;
        for (Map.Entry<String, Length> edge : piece.shape().edgeLengths().entrySet()) {
            boolean isDoubled = piece.fold().filter(f -> !f.equals(edge.getKey())).isPresent();
            Length whole = isDoubled ? edge.getValue().times(2) : edge.getValue();
            longest = longest.orLonger(whole);
        }
        return piece.shape()
                .asTaped()
                .map(t -> t.across().orLonger(t.along()))
                .orElse(Length.ZERO)
                .orLonger(longest);
    }

    /** Where its own name, its edges and what it is sewn to say that it lies; a neck before all. */
    private Optional<CordPlace> seen(String name, Optional<Piece> piece) {
        List<CordPlace> said = new ArrayList<>(CordPlace.named(name).stream().toList());
        Optional.ofNullable(closures.get(name))
                .flatMap(closure -> closure.placket().edges())
                .ifPresent(on -> on.value().pieceEdges().forEach(e -> said.addAll(lying(e))));
        hems.getOrDefault(name, List.of()).forEach(edge -> said.addAll(lying(edge)));
        piece.ifPresent(
                p -> {
                    said.addAll(CordPlace.named(p.name()).stream().toList());
                    sewnTo(p.name()).forEach(edge -> said.addAll(lying(edge)));
                });
        return said.stream().min(Comparator.naturalOrder());
    }

    private List<PieceEdge> sewnTo(String piece) {
        return pattern.stream()
                .flatMap(p -> p.seams().stream())
                .map(Seam::edges)
                .filter(edges -> edges.stream().anyMatch(e -> e.piece().equals(piece)))
                .flatMap(Set::stream)
                .filter(edge -> !edge.piece().equals(piece))
                .toList();
    }

    private List<CordPlace> lying(PieceEdge edge) {
        return Stream.of(
                        pattern.flatMap(p -> p.meanings().edge(edge.piece(), edge.edge()))
                                .map(Meaning::serves)
                                .or(() -> Serves.edgeNamed(edge.edge()))
                                .flatMap(CordPlace::serving),
                        CordPlace.named(edge.edge()),
                        CordPlace.named(edge.piece()).filter(CordPlace::isAtTheNeck))
                .flatMap(Optional::stream)
                .toList();
    }
}
