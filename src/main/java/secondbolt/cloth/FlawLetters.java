package secondbolt.cloth;

/** The letters that name flaws in the picture and in the table. */
final class FlawLetters {
    private static final int LETTERS = 26;

    private FlawLetters() {}

    /** A, B … Z, AA, AB …, counted from zero. */
    static String letter(int index) {
        String last = Character.toString('A' + index % LETTERS);
        return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
    }
}
