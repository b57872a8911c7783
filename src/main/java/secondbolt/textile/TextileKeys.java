package secondbolt.textile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.garment.Role;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.textile.extent.Alternatives;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.fibre.FibreNames;

/** The keys that say what kind of cloth it is. */
final class TextileKeys {
    private static final LengthRange REPEATS = LengthRange.of("1 mm", "2 m");

    static final Key<Role> ROLE =
            Key.optional(
                    "role",
                    Role.FORM,
                    "What it is for; main if not told. Several cloths of one role are one stock.",
                    "main");
    static final Key<Answer<Map<String, Share>>> FIBRE =
            Key.optional(
                    "fibre",
                    Forms.orUnknown(
                            Forms.either(
                                    Forms.map(Forms.text(60), name -> Map.of(name, Share.WHOLE)),
                                    NamedForm.of("fibre", Forms.share()))),
                    "What it is made of, as its label says; a blend by its shares. Dye, heat and"
                            + " wash go by it.",
                    "{cotton: 65 %, polyester: 35 %}");
    static final Key<Textile.KnownBy> KNOWN_BY =
            Key.optional(
                    "known by",
                    Forms.choice(Textile.KnownBy.values(), Textile.KnownBy::word),
                    "How the fibre is known.",
                    "label");
    static final Key<Answer<ClothWeight>> WEIGHT =
            Key.optional(
                    "weight",
                    Forms.orUnknown(Forms.clothWeight()),
                    "How heavy it is by area; or write its mass, and this follows.",
                    "165 g/m2");
    static final Key<Answer<Mass>> MASS =
            Key.optional(
                    "mass",
                    Forms.orUnknown(Forms.mass()),
                    "What the whole cloth weighs dry, untrimmed; or write its weight, and this"
                            + " follows.",
                    "656 g");
    static final Key<Textile.Nap> NAP =
            Key.optional(
                    "nap",
                    Forms.choice(naps()),
                    "Whether pieces may be turned upside down: they may if not told; if unknown"
                            + " they are laid one way, and it is asked.",
                    "none");
    private static final Key<Length> ALONG =
            Key.optional("along", Forms.length(REPEATS), "Lengthwise, from one to the next.", "12");
    private static final Key<Length> ACROSS =
            Key.optional("across", Forms.length(REPEATS), "Crosswise, from one to the next.", "12");
    private static final Key<AcrossAlong<Length>> BEGINS =
            Key.optional(
                    "begins",
                    ListForm.acrossAlong(Forms.length(LengthRange.of("0 mm", "20 m"))),
                    "Where one of them begins, from the left edge and from the top of the cloth as"
                            + " measured; needed where pieces of several cloths shall match.",
                    "[3.5, 8]");
    static final Key<Textile.Repeat> REPEAT =
            Key.optional(
                    "repeat",
                    Forms.either(
                            MapForm.of(
                                    "a repeat",
                                    List.of(ALONG, ACROSS, BEGINS),
                                    fields ->
                                            Optional.of(
                                                    new Textile.Repeat(
                                                            fields.get(ALONG),
                                                            fields.get(ACROSS),
                                                            fields.get(BEGINS)))),
                            Forms.none(Textile.Repeat.NONE)),
                    "The stripes or checks to match, on the cloth as measured; `lay` says which"
                            + " seams match.",
                    "{along: 12, across: 12}");

    private static final Key<Optional<Share>> STRETCH_ACROSS =
            Key.optional("across", stretchOneWay(), "Crosswise; `none` if it does not.", "40 %");
    private static final Key<Optional<Share>> STRETCH_ALONG =
            Key.optional("along", stretchOneWay(), "Lengthwise; `none` if it does not.", "10 %");
    static final Key<Answer<Stretch>> STRETCH =
            Key.optional(
                    "stretch",
                    Forms.either(
                            Forms.orUnknown(
                                    MapForm.of(
                                            "a stretch",
                                            List.of(STRETCH_ACROSS, STRETCH_ALONG),
                                            fields ->
                                                    Optional.of(
                                                            new Stretch(
                                                                    fields.get(STRETCH_ACROSS)
                                                                            .flatMap(s -> s),
                                                                    fields.get(STRETCH_ALONG)
                                                                            .flatMap(s -> s))))),
                            Forms.none(Answer.known(Stretch.NONE))),
                    "How far a knit stretches under your hand: fold it, mark 10 cm or 5 in, pull"
                            + " until it resists, and measure what they become; 14 cm or 7 in are"
                            + " 40 %. Leave it out for a woven cloth.",
                    "{across: 40 %, along: 10 %}");

    private TextileKeys() {}

    @SuppressWarnings("OptionalMapToOptional") // read, and then none: not the same as not read
    private static Form<Optional<Share>> stretchOneWay() {
        Form<Optional<Share>> told =
                Forms.parsed(
                        "a stretch such as 40 %, up to 300 %, or `none`",
                        text ->
                                Share.parse(text)
                                        .fold(
                                                share -> Optional.of(share),
                                                refusal -> Optional.<Share>empty())
                                        .filter(s -> s.fraction() >= 0 && s.fraction() <= 3)
                                        .map(TextileKeys::unlessNone));
        return Forms.either(told, Forms.none(Optional.<Share>empty()));
    }

    /** Nothing for a share of nothing. */
    private static Optional<Share> unlessNone(Share share) {
        return share.fraction() > 0 ? Optional.of(share) : Optional.empty();
    }

    /** The words for a nap, and what people say when they are asked whether there is one. */
    private static Map<String, Textile.Nap> naps() {
        Map<String, Textile.Nap> naps = new LinkedHashMap<>();
        for (Textile.Nap nap : Textile.Nap.values()) {
            naps.put(nap.word(), nap);
        }
        naps.put("no", Textile.Nap.NONE);
        naps.put("yes", Textile.Nap.ONE_WAY);
        return naps;
    }

    static Optional<Textile> read(Fields fields) {
        Optional<Map<String, Share>> shares = fields.get(FIBRE).flatMap(Answer::toOptional);
        Optional<Fibre> fibre = shares.flatMap(named -> fibre(named, fields));
        if (shares.isPresent() && fibre.isEmpty()) {
            return Optional.empty();
        }
        Optional<Key<?>> heaviness = Alternatives.of(WEIGHT, MASS).chosen(fields);
        if (heaviness.isEmpty()) {
            return Optional.empty();
        }
        boolean byMass = heaviness.get().equals(MASS);
        return Optional.of(
                new Textile(
                        fields.get(ROLE),
                        fields.get(FIBRE)
                                .map(a -> fibre.map(Answer::known).orElse(Answer.unknown())),
                        fields.get(KNOWN_BY),
                        byMass ? Optional.empty() : fields.get(WEIGHT),
                        byMass ? fields.get(MASS) : Optional.empty(),
                        fields.get(NAP),
                        fields.get(REPEAT).orElse(Textile.Repeat.NONE),
                        fields.get(STRETCH)));
    }

    /** The fibres that are named; each that is not known is told. */
    private static Optional<Fibre> fibre(Map<String, Share> named, Fields fields) {
        Map<FibreKind, Share> shares = new LinkedHashMap<>();
        boolean isSound = addsUp(named, fields);
        for (Map.Entry<String, Share> one : named.entrySet()) {
            Optional<FibreKind> kind = FibreNames.find(one.getKey());
            kind.ifPresent(k -> shares.merge(k, one.getValue(), Share::plus));
            if (kind.isEmpty()) {
                isSound = false;
                fields.tell(
                        fields.placeIn(FIBRE, one.getKey()),
                        "`" + one.getKey() + "`, which is no fibre known here",
                        FibreNames.right(one.getKey()));
            }
        }
        return isSound ? Optional.of(new Fibre(shares)) : Optional.empty();
    }

    private static boolean addsUp(Map<String, Share> shares, Fields fields) {
        Share sum = shares.values().stream().reduce(Share::plus).orElse(Share.WHOLE);
        if (sum.equals(Share.WHOLE)) {
            return true;
        }
        fields.tell(
                FIBRE,
                "shares that add up to " + sum.percent(2),
                "shares of all fibres on the label, adding up to 100 %");
        return false;
    }
}
