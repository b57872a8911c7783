package secondbolt.pattern.piece;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.Spelling;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Trouble;
import secondbolt.garment.Role;
import secondbolt.measure.Length;

/** How a piece is written. */
public final class PieceKeys {
    private static final Key<Map<Role, Piece.Cut>> CUT =
            Key.required(
                    "cut",
                    Forms.either(
                            Forms.map(CutForm.COUNT, cut -> Map.of(Role.MAIN, cut)), byCloth()),
                    "How many are cut: a number, `pair` for one and its mirror image, `2 pairs`,"
                            + " `2 alike` for two of one hand on purpose, or so many of each"
                            + " cloth.",
                    "pair");

    /** What makers say of a piece that lies on no fold. */
    private static final List<String> NONE = List.of("none", "no");

    private static final Key<String> FOLD =
            Key.optional(
                    "fold",
                    Forms.nameOf(60),
                    "The edge that lies on the fold; the piece is then drawn half. It must be known:"
                            + " half or whole is twice as wide.",
                    "centre back");
    private static final Key<Piece.Grain> GRAIN =
            Key.optional(
                    "grain",
                    Forms.choice(Piece.Grain.values(), Piece.Grain::word),
                    "How its length lies to the grain; along if not told.",
                    "along");
    private static final Key<Piece.Seen> SEEN =
            Key.optional(
                    "seen",
                    Forms.choice(Piece.Seen.values(), Piece.Seen::word),
                    "Whether it is seen in wear; outside if not told.",
                    "outside");
    private static final Key<Map<String, Length>> ALLOWANCE =
            Key.optional(
                    "allowance",
                    Forms.either(NamedForm.of("edge", lengthOrNone()), doubtful()),
                    "Seam allowances that differ from the pattern's, by edge; `none` of an edge"
                            + " that is bound, or cut where it is sewn.",
                    "{neckline: 0.6}");

    public static final Form<Piece> FORM =
            MapForm.of("a piece", keys(), fields -> new PieceReader(fields).piece())
                    .with(
                            Rule.one("outline", "rectangle", "panel", "ring", "svg", "box"),
                            Rule.when(Rule.has("edges"), Rule.has("box")));

    private PieceKeys() {}

    private static Form<Length> lengthOrNone() {
        return Forms.either(Forms.length(LengthRange.of("0 mm", "15 cm")), Forms.none(Length.ZERO));
    }

    /** No allowance anywhere, or none that differs: two cuts, so it is asked. */
    private static Form<Map<String, Length>> doubtful() {
        return Forms.refused(
                NONE,
                "`allowance: {neckline: none}`, edge by edge, where none is added; nothing where"
                        + " the pattern's own holds");
    }

    /** So many of each cloth, by the role it has. */
    private static Form<Map<Role, Piece.Cut>> byCloth() {
        Map<Role, Key<Optional<Piece.Cut>>> keys = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            keys.put(
                    role,
                    Key.optional(
                            role.word(),
                            Forms.either(
                                    Forms.map(CutForm.COUNT, Optional::of),
                                    Forms.none(Optional.<Piece.Cut>empty())),
                            "How many of " + role + ".",
                            "2"));
        }
        String[] words = keys.keySet().stream().map(Role::word).toArray(String[]::new);
        return MapForm.of(
                        "the cloths a piece is cut from",
                        List.copyOf(keys.values()),
                        fields -> {
                            Map<Role, Piece.Cut> cuts = new LinkedHashMap<>();
                            keys.forEach(
                                    (role, key) ->
                                            fields.get(key)
                                                    .flatMap(c -> c)
                                                    .ifPresent(c -> cuts.put(role, c)));
                            if (cuts.isEmpty()) {
                                fields.tell(
                                        fields.place(),
                                        "a piece that is cut of no cloth",
                                        "how many of one cloth or more, such as `main: 2`");
                                return Optional.empty();
                            }
                            return Optional.of(cuts);
                        })
                .with(Rule.some(words));
    }

    private static List<Key<?>> keys() {
        List<Key<?>> keys = new ArrayList<>(List.of(CUT, FOLD, GRAIN, SEEN, LineKeys.LINES));
        keys.addAll(ShapeKeys.ALL);
        keys.add(ALLOWANCE);
        keys.addAll(FeatureKeys.ALL);
        keys.add(Key.later("holds", "What a pocket must hold."));
        return keys;
    }

    /** Reads one piece; its name is set by the pattern. */
    private record PieceReader(Fields fields) {
        Optional<Piece> piece() {
            return ShapeKeys.shape(fields, LineKeys.crosses(fields)).flatMap(this::piece);
        }

        private Optional<Piece> piece(PieceShape shape) {
            Optional<String> fold =
                    fields.get(FOLD)
                            .filter(f -> shape.edgeNames().contains(f) || !NONE.contains(f));
            boolean edgesAreThere = isFoldKnown() && isEdge(shape, FOLD, fold.stream().toList());
            edgesAreThere &= fold.isEmpty() || isFoldable(shape, fold.get());
            edgesAreThere &= isEdge(shape, ALLOWANCE, names(fields.get(ALLOWANCE)));
            edgesAreThere &= LineKeys.areRight(fields, shape);
            Optional<Piece.Features> features = FeatureKeys.features(fields, shape);
            if (!edgesAreThere || features.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(
                    new Piece(
                            "",
                            fields.require(CUT),
                            fold,
                            fields.get(GRAIN).orElse(Piece.Grain.ALONG),
                            fields.get(SEEN).orElse(Piece.Seen.OUTSIDE),
                            LineKeys.places(fields),
                            shape,
                            fields.get(ALLOWANCE).orElse(Map.of()),
                            features.get()));
        }

        /** Cut as if it were drawn whole, a half piece would be lost. */
        private boolean isFoldKnown() {
            if (fields.isOpen(FOLD)) {
                fields.tell(
                        FOLD,
                        "`fold: unknown`",
                        "the edge that lies on the fold where half of the piece is drawn, `fold:"
                                + " none` where all of it is: hold the drawing against the garment");
            }
            return !fields.isOpen(FOLD);
        }

        /** Mirrored at a bent fold, or past it, the halves would lie on one another. */
        private boolean isFoldable(PieceShape shape, String fold) {
            Optional<FoldSide> side =
                    shape.asDrawn().flatMap(d -> d.find(fold).map(line -> new FoldSide(d, line)));
            side.filter(s -> !s.isStraight())
                    .ifPresent(
                            s ->
                                    fields.tell(
                                            FOLD,
                                            "the edge `" + fold + "` on the fold, which is bent",
                                            "a straight edge; where it is bent it is a seam, and"
                                                    + " `fold: none`"));
            side.filter(FoldSide::isStraight)
                    .flatMap(FoldSide::past)
                    .ifPresent(
                            at ->
                                    fields.tell(
                                            FOLD,
                                            String.format(
                                                    Locale.ROOT,
                                                    "a piece that reaches past its fold near"
                                                            + " [%.1f cm, %.1f cm]",
                                                    at.xMm() / 10,
                                                    at.yMm() / 10),
                                            "all of it on one side of `" + fold + "`"));
            return side.filter(s -> !s.isStraight() || s.past().isPresent()).isEmpty();
        }

        private static List<String> names(Optional<Map<String, Length>> map) {
            return map.map(m -> List.copyOf(new LinkedHashMap<>(m).keySet())).orElse(List.of());
        }

        private boolean isEdge(PieceShape shape, Key<?> key, List<String> names) {
            for (String name : names) {
                if (!shape.edgeNames().contains(name)) {
                    fields.tell(
                            new Trouble(
                                            fields.place(key),
                                            "`" + name + "`, which is no edge of the piece",
                                            shape.edgeNames().isEmpty()
                                                    ? "its length as well, as `edges: {"
                                                            + name
                                                            + ": …}`"
                                                    : "one of "
                                                            + Spelling.listed(shape.edgeNames()))
                                    .ofName(name, shape.edgeNames()));
                    return false;
                }
            }
            return true;
        }
    }
}
