package secondbolt.topic;

import secondbolt.file.Key;
import secondbolt.file.form.Forms;

/** What a project says of itself in a maker's own words, for whichever topic listens to them. */
public final class Introduction {
    /** Its name. */
    public static final Key<String> TITLE =
            Key.required("title", Forms.text(120), "The project's name.", "Porch shirt");

    /** A few sentences. */
    public static final Key<String> SUMMARY =
            Key.optional(
                    "summary",
                    Forms.lines(4000),
                    "What becomes of what, in a few sentences; Markdown.",
                    "Two cotton curtains become a shirt.");

    private Introduction() {}
}
