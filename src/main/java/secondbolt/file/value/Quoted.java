package secondbolt.file.value;

import secondbolt.file.source.FlowText;

/** A name of the maker's own as it stands in a line of the file that is advised. */
public final class Quoted {
    private Quoted() {}

    /**
     * The name, between quotation marks where YAML would read something else, as with a comma
     * between braces.
     */
    public static String of(String name) {
        return FlowText.quoted(name);
    }
}
