package secondbolt.file.svg;

/** What is the matter within one attribute; caught where its place in the file is known. */
final class Slip extends Exception {
    private static final long serialVersionUID = 1;

    private final int at;
    private final String right;

    /**
     * A slip.
     *
     * @param at the letter of the attribute's value, from 0
     */
    Slip(int at, String found, String right) {
        super(found);
        this.at = at;
        this.right = right;
    }

    int at() {
        return at;
    }

    String found() {
        return getMessage();
    }

    String right() {
        return right;
    }
}
