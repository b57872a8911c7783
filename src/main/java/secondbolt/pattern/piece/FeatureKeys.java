package secondbolt.pattern.piece;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Spelling;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Length;

/** How notches, marks, darts and pleats are written. */
final class FeatureKeys {
    private static final int MOST = 60;

    private static final Key<String> EDGE =
            Key.required("edge", Forms.nameOf(60), "The edge it is on.", "side");
    private static final Key<Length> AT =
            Key.required(
                    "at",
                    Forms.length(LengthRange.of("0 mm", "5 m")),
                    "So far along the edge from its start; a dart's or pleat's middle.",
                    "20");
    private static final Key<String> FROM =
            Key.optional(
                    "from",
                    Forms.nameOf(60),
                    "Measured from the end where it meets this edge instead.",
                    "hem");
    private static final Key<Length> TAKES =
            Key.required(
                    "takes",
                    Forms.length(LengthRange.of("1 mm", "1 m")),
                    "How much of the edge it takes up.",
                    "3");
    private static final Key<Length> LONG =
            Key.required(
                    "long",
                    Forms.length(LengthRange.of("1 cm", "1 m")),
                    "How far it reaches into the piece.",
                    "11");
    private static final Key<String> WHAT =
            Key.required("what", Forms.text(60), "What it marks.", "bust point");
    private static final Key<AcrossAlong<Length>> PLACE =
            Key.required(
                    "at",
                    ListForm.acrossAlong(Forms.length(LengthRange.of("-5 m", "5 m"))),
                    "Where it lies.",
                    "[10, 27]");

    static final Key<List<Piece.Notch>> NOTCHES =
            Key.optional(
                    "notches",
                    list(
                            "notches",
                            MapForm.of("a notch", List.of(EDGE, AT, FROM), FeatureKeys::notch)),
                    "Notches on its edges.",
                    "[{edge: side, at: 20}]");
    static final Key<List<Piece.MarkPoint>> MARKS =
            Key.optional(
                    "marks",
                    list("marks", MapForm.of("a mark", List.of(WHAT, PLACE), FeatureKeys::mark)),
                    "Marks inside it. One named `bust point`, `waist` or `hip` says how far down"
                            + " that lies, so that a change of width can be tapered to it.",
                    "[{what: bust point, at: [10, 27]}]");
    static final Key<List<Piece.Dart>> DARTS =
            Key.optional(
                    "darts",
                    list(
                            "darts",
                            MapForm.of(
                                    "a dart", List.of(EDGE, AT, TAKES, LONG), FeatureKeys::dart)),
                    "Darts; joins count the edge without what they take up.",
                    "[{edge: side, at: 8, takes: 3, long: 11}]");
    static final Key<List<Piece.Dart>> PLEATS =
            Key.optional(
                    "pleats",
                    list(
                            "pleats",
                            MapForm.of("a pleat", List.of(EDGE, AT, TAKES), FeatureKeys::pleat)),
                    "Pleats; joins count the edge without what they take up.",
                    "[{edge: waist, at: 10, takes: 4}]");

    static final List<Key<?>> ALL = List.of(NOTCHES, MARKS, DARTS, PLEATS);

    private FeatureKeys() {}

    private static <T> Form<List<T>> list(String what, Form<T> form) {
        return ListForm.of(what, form, 0, MOST);
    }

    private static Optional<Piece.Notch> notch(Fields f) {
        return Optional.of(new Piece.Notch(f.require(EDGE), f.require(AT), f.get(FROM)));
    }

    private static Optional<Piece.MarkPoint> mark(Fields f) {
        return Optional.of(
                new Piece.MarkPoint(f.require(WHAT), OutlineKeys.point(f.require(PLACE))));
    }

    private static Optional<Piece.Dart> dart(Fields f) {
        return Optional.of(
                new Piece.Dart(f.require(EDGE), f.require(AT), f.require(TAKES), f.require(LONG)));
    }

    private static Optional<Piece.Dart> pleat(Fields f) {
        return Optional.of(
                new Piece.Dart(f.require(EDGE), f.require(AT), f.require(TAKES), Length.ZERO));
    }

    /** What is marked on a piece of this shape; mistakes if it lies on no edge of it. */
    static Optional<Piece.Features> features(Fields fields, PieceShape shape) {
        Piece.Features features =
                new Piece.Features(
                        fields.get(NOTCHES).orElse(List.of()),
                        fields.get(MARKS).orElse(List.of()),
                        fields.get(DARTS).orElse(List.of()),
                        fields.get(PLEATS).orElse(List.of()));
        boolean sound = true;
        for (Piece.Notch notch : features.notches()) {
            sound &= isOn(fields, NOTCHES, shape, notch.edge(), notch.at());
        }
        for (Piece.Dart dart : features.darts()) {
            sound &= hasEdge(fields, DARTS, shape, dart.edge());
        }
        for (Piece.Dart pleat : features.pleats()) {
            sound &= hasEdge(fields, PLEATS, shape, pleat.edge());
        }
        sound = sound && TakenUp.areRight(fields, shape, features);
        return sound ? Optional.of(features) : Optional.empty();
    }

    private static boolean hasEdge(Fields fields, Key<?> key, PieceShape shape, String edge) {
        if (shape.edgeNames().contains(edge)) {
            return true;
        }
        fields.tell(
                new Trouble(
                                fields.place(key),
                                "`" + edge + "`, which is no edge of the piece",
                                shape.edgeNames().isEmpty()
                                        ? "its length first, as `edges: {" + edge + ": …}`"
                                        : "one of " + Spelling.listed(shape.edgeNames()))
                        .ofName(edge, shape.edgeNames()));
        return false;
    }

    private static boolean isOn(
            Fields fields, Key<?> key, PieceShape shape, String edge, Length at) {
        if (!hasEdge(fields, key, shape, edge)) {
            return false;
        }
        Length length = shape.edgeLengths().get(edge);
        if (at.isLongerThan(length)) {
            fields.tell(
                    key,
                    "something past the end of " + edge,
                    "at most " + fields.tape().print(length) + " along it");
            return false;
        }
        return true;
    }
}
