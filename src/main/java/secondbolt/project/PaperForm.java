package secondbolt.project;

import java.util.LinkedHashMap;
import java.util.Map;
import secondbolt.draw.paper.Paper;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** How paper is written: by its name, or by its sides. */
public final class PaperForm {
    /** A name such as {@code a4}, or {@code [across, along]}. */
    public static final Form<Paper> FORM = Forms.either(named(), bySides());

    private PaperForm() {}

    private static Form<Paper> named() {
        Map<String, Paper> papers = new LinkedHashMap<>();
        Paper.names().forEach(name -> papers.put(name, Paper.named(name).orElseThrow()));
        return Forms.choice(papers);
    }

    private static Form<Paper> bySides() {
        Form<AcrossAlong<Length>> sides =
                Forms.checked(
                        ListForm.acrossAlong(Forms.length(LengthRange.of("1 mm", "10 m"))),
                        s -> Paper.leaveRoom(s.across(), s.along()),
                        "paper of 14.7 cm to 5 m (5 13/16 in to 196 3/4 in) each way: the test square and the"
                                + " printer's margins must have room");
        return Forms.map(sides, s -> Paper.custom(s.across(), s.along(), Tape.CENTIMETRE));
    }
}
