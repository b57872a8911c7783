package secondbolt.project;

import java.util.Optional;
import secondbolt.draw.paper.Paper;
import secondbolt.measure.Tape;

/**
 * What a project file says of the project as a whole.
 *
 * @param title its name, in any language
 * @param summary a few sentences of Markdown
 * @param units the tape it is measured with
 * @param paper the paper its sheets are laid out for, unless the desk says otherwise
 */
public record Heading(String title, Optional<String> summary, Tape units, Optional<Paper> paper) {}
