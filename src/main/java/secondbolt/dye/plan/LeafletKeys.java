package secondbolt.dye.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.measure.Share;

/** The keys of her packet's leaflet. */
final class LeafletKeys {
    private static final Rate NOTHING = Rate.percent("0");

    private static final Key<Rate> DYE =
            Key.optional("dye", DyeForms.rate(), "How much dye, as the leaflet says.", "2 %");
    private static final Key<Share> RATIO =
            Key.optional("ratio", DyeForms.ratio(), "How much bath to the dry cloth.", "20");
    private static final Key<Rate> SALT =
            Key.optional("salt", orNone(), "How much salt; `none` if it asks for none.", "20 g/l");
    private static final Key<Rate> SODA =
            Key.optional(
                    "soda", orNone(), "How much soda ash; `none` if it asks for none.", "10 g/l");
    private static final Key<Rate> ACID =
            Key.optional(
                    "acid",
                    orNone(),
                    "How much vinegar, or acid as the leaflet names it; `none` if it asks for none.",
                    "50 ml/l");
    private static final Key<Rate> FIXATIVE =
            Key.optional(
                    "fixative",
                    orNone(),
                    "How much fixative afterwards; `none` if it asks for none.",
                    "30 ml/l");
    private static final Key<Heat> HEAT =
            Key.optional("heat", DyeForms.heat(), "How hot the bath is.", "40 C");
    private static final Key<Lasting> TIME =
            Key.optional("time", DyeForms.lasting(), "How long the cloth is in it.", "45 min");

    static final Key<Leaflet> LEAFLET =
            Key.optional(
                    "leaflet",
                    MapForm.of(
                            "a leaflet",
                            List.of(DYE, RATIO, SALT, SODA, ACID, FIXATIVE, HEAT, TIME),
                            LeafletKeys::read),
                    "What the leaflet in your packet says; it comes before any figure here.",
                    "{dye: 2 %, salt: 20 g/l, heat: 40 C, time: 45 min}");

    private LeafletKeys() {}

    private static Form<Rate> orNone() {
        return Forms.either(DyeForms.rate(), Forms.none(NOTHING));
    }

    private static Optional<Leaflet> read(Fields fields) {
        return Optional.of(
                new Leaflet(
                        new Leaflet.Amounts(
                                fields.get(DYE),
                                fields.get(SALT),
                                fields.get(SODA),
                                fields.get(ACID),
                                fields.get(FIXATIVE)),
                        fields.get(RATIO),
                        fields.get(HEAT),
                        fields.get(TIME)));
    }
}
