package secondbolt.bleach.plan;

import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;
import secondbolt.measure.Volume;

/** How a volume is written. */
final class VolumeForm {
    private VolumeForm() {}

    /** A volume from the least to the most, both as a maker writes them. */
    static Form<Volume> of(String least, String most) {
        Volume from = parse(least).orElseThrow();
        Volume to = parse(most).orElseThrow();
        return Forms.parsed(
                "a volume from " + least + " to " + most + ", such as 12 l or 2 gal",
                text -> parse(text).filter(v -> v.compareTo(from) >= 0 && v.compareTo(to) <= 0));
    }

    private static Optional<Volume> parse(String text) {
        return Volume.parse(text).fold(volume -> Optional.of(volume), refusal -> Optional.empty());
    }
}
