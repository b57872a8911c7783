package secondbolt.safety;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.ClosureSection;
import secondbolt.file.Key;
import secondbolt.file.Spelling;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.fit.FitTopic;
import secondbolt.garment.PieceEdge;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.plan.HemSection;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.PatternSection;
import secondbolt.pattern.piece.Piece;
import secondbolt.topic.Bench;
import secondbolt.topic.Introduction;
import secondbolt.topic.Outcome;
import secondbolt.topic.Topic;
import secondbolt.topic.TopicName;
import secondbolt.wearer.WearerTopic;
import secondbolt.worksheet.Worksheet;

/** Cords and nightwear of children. It comes to the cords; what they are worn by is the page's. */
public final class SafetyTopic implements Topic<SafetyResult> {
    /** Its name. */
    public static final TopicName<SafetyResult> NAME = new TopicName<>("safety");

    @Override
    public TopicName<SafetyResult> name() {
        return NAME;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(CordSection.KEY, CordSection.NIGHTWEAR);
    }

    @Override
    public boolean isSupposed() {
        return false;
    }

    @Override
    public Outcome<SafetyResult> work(Bench bench) {
        Map<String, ToldCord> told = bench.written(CordSection.KEY).orElse(Map.of());
        Map<String, Closure> closures = bench.written(ClosureSection.KEY).orElse(Map.of());
        Map<String, Hem> hems = bench.written(HemSection.KEY).orElse(Map.of());
        Optional<Pattern> pattern = pattern(bench);
        List<Trouble> troubles = troubles(told, pattern);
        if (!troubles.isEmpty()) {
            return Outcome.wrong(troubles);
        }
        WearerAge wearer = WearerAge.of(bench.came(WearerTopic.NAME));
        boolean isAGarment = pattern.isPresent() || !closures.isEmpty();
        boolean isCalledNightwear =
                names(pattern, closures, hems.keySet()).anyMatch(NameWords.NIGHTWEAR::isIn);
        CordSearch search = new CordSearch(told, closures, edges(hems), pattern);
        List<Cord> cords = search.all();
        SafetyResult result =
                new SafetyResult(
                        cords,
                        search.neckLoops(),
                        cords.isEmpty() ? spokenOf(bench, pattern) : Optional.empty(),
                        new Nightwear(
                                bench.written(CordSection.NIGHTWEAR),
                                isCalledNightwear,
                                wearer,
                                bench.tape()));
        SafetyWorksheet sheet =
                new SafetyWorksheet(result, new CordRule(wearer, bench.tape()), isAGarment);
        Optional<Worksheet> worksheet = sheet.worksheet(bench.tape());
        return worksheet.map(w -> Outcome.of(result, w)).orElseGet(() -> Outcome.of(result));
    }

    private static Optional<Pattern> pattern(Bench bench) {
        Optional<Pattern> written = bench.written(PatternSection.KEY);
        return bench.came(FitTopic.NAME)
                .map(fit -> fit.pattern().with(fit.pieces()))
                .or(() -> written);
    }

    private static Map<String, List<PieceEdge>> edges(Map<String, Hem> hems) {
        Map<String, List<PieceEdge>> edges = new LinkedHashMap<>();
        hems.forEach((name, hem) -> edges.put(name, hem.on().stream().map(Placed::value).toList()));
        return edges;
    }

    /** What her own words name, unless `cords` says what there is. */
    private static Optional<String> spokenOf(Bench bench, Optional<Pattern> pattern) {
        if (bench.written(CordSection.KEY).isPresent()) {
            return Optional.empty();
        }
        return Stream.of(
                        bench.written(Introduction.TITLE).stream(),
                        bench.written(Introduction.SUMMARY).stream(),
                        pattern.stream()
                                .flatMap(p -> p.pieces().stream())
                                .flatMap(piece -> piece.features().marks().stream())
                                .map(Piece.MarkPoint::what))
                .flatMap(all -> all)
                .flatMap(said -> NameWords.SPOKEN.first(said).stream())
                .findFirst();
    }

    private static Stream<String> names(
            Optional<Pattern> pattern, Map<String, Closure> closures, Set<String> hems) {
        return Stream.of(
                        pattern.stream().flatMap(p -> p.pieces().stream()).map(Piece::name),
                        closures.keySet().stream(),
                        hems.stream())
                .flatMap(all -> all);
    }

    /** A cord must be cut from a piece that is there. */
    private static List<Trouble> troubles(Map<String, ToldCord> told, Optional<Pattern> pattern) {
        List<String> pieces =
                pattern.stream().flatMap(p -> p.pieces().stream()).map(Piece::name).toList();
        List<Trouble> troubles = new ArrayList<>();
        for (ToldCord cord : told.values()) {
            Optional<Placed<String>> of = cord.of().filter(o -> !pieces.contains(o.value()));
            of.ifPresent(
                    o ->
                            troubles.add(
                                    new Trouble(
                                                    o.place(),
                                                    "`" + o.value() + "`, which is no piece",
                                                    pieces.isEmpty()
                                                            ? "a cord without `of`, or `pattern` as well"
                                                            : "one of " + Spelling.listed(pieces))
                                            .ofName(o.value(), pieces)));
        }
        return troubles;
    }
}
