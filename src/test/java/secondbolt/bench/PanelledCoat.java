package secondbolt.bench;

import java.util.Locale;

/**
 * The project file of a coat in thirty drawn pieces: fourteen panels round the body, each in two
 * with a seam at the waist, and a sleeve in two. Every edge is curved, the seams are declared all
 * round, and three alterations pass through them.
 */
final class PanelledCoat {
    /** How many pieces it has. */
    static final int PIECES = 30;

    private static final int PANELS = 14;

    /** The widened edges lie here and half way round, where the sides of a coat are. */
    private static final int SIDE = 3;

    private final StringBuilder text = new StringBuilder();

    private PanelledCoat() {}

    /** The file. */
    static String yaml() {
        PanelledCoat coat = new PanelledCoat();
        coat.line("title: Panelled coat");
        coat.line("units: cm");
        coat.line("pattern:");
        coat.line("  rights: mine");
        coat.line("  seam allowance: {of: 1.5, included: false}");
        coat.pieces();
        coat.seams();
        coat.line("alterations:");
        coat.line("  - {lengthen: body, by: 2}");
        coat.line("  - {widen: side, by: 4, from: 18, to: 36}");
        coat.line("  - {lengthen: sleeve, by: 2.5}");
        return coat.text.toString();
    }

    private void line(String form, Object... values) {
        text.append(String.format(Locale.ROOT, form, values)).append('\n');
    }

    private void pieces() {
        line("  pieces:");
        for (int i = 0; i < PANELS; i++) {
            upper(i);
            lower(i);
        }
        sleeve("upper", 22, 4);
        sleeve("under", 16, 4);
    }

    private void upper(int number) {
        line("    upper %d:", number);
        line("      cut: 1");
        line("      lines: {body: 24}");
        line("      outline:");
        line("        - {start: [0, 1]}");
        line("        - {edge: top, to: [9, 1], through: [[3, 0.2], [6, 0.2]]}");
        line("        - {edge: right, to: [7.6, 44], through: [[9.4, 12], [8.5, 22], [7.7, 35]]}");
        line("        - {edge: waist, to: [1.4, 44], through: [[4.5, 44.4]]}");
        line("        - {edge: left, to: start, through: [[1.3, 35], [0.5, 22], [-0.4, 12]]}");
        line("      notches: [{edge: right, at: 15}, {edge: left, at: 28}]");
    }

    private void lower(int number) {
        line("    lower %d:", number);
        line("      cut: 1");
        line("      outline:");
        line("        - {start: [1.4, 0]}");
        line("        - {edge: waist, to: [7.6, 0], through: [[4.5, 0.4]]}");
        line(
                "        - {edge: %s, to: [13, 62], through: [[8.8, 12], [10, 25], [11.7, 45]]}",
                right(number));
        line("        - {edge: hem, to: [-4, 62], through: [[9, 63.2], [4.5, 63.6], [0, 63.2]]}");
        line(
                "        - {edge: %s, to: start, through: [[-2.7, 45], [-1, 25], [0.2, 12]]}",
                left(number));
        line(
                "      notches: [{edge: %s, at: 20}, {edge: %s, at: 40}]",
                right(number), left(number));
    }

    private static String right(int number) {
        return isBesideASide(number) ? "side" : "right";
    }

    private static String left(int number) {
        return isBesideASide(before(number)) ? "side" : "left";
    }

    /** Both halves of the coat have their side behind the same panel. */
    private static boolean isBesideASide(int number) {
        return number % (PANELS / 2) == SIDE;
    }

    private static int before(int number) {
        return (number + PANELS - 1) % PANELS;
    }

    private void sleeve(String name, int acrossCm, int hollowCm) {
        line("    %s sleeve:", name);
        line("      cut: pair");
        line("      lines: {sleeve: 26}");
        line("      outline:");
        line("        - {start: [0, 9]}");
        line(
                "        - {edge: cap, to: [%d, 9], through: [[%d, %d], [%d, 0], [%d, %d]]}",
                acrossCm, acrossCm / 5, hollowCm, acrossCm / 2, acrossCm - acrossCm / 5, hollowCm);
        line(
                "        - {edge: front, to: [%d, 58], through: [[%d, 34]]}",
                acrossCm - 3, acrossCm - 1);
        line("        - {edge: wrist, to: [3, 58], through: [[%d, 58.3]]}", acrossCm / 2);
        line("        - {edge: back, to: start, through: [[1, 34]]}");
    }

    private void seams() {
        line("  seams:");
        for (int i = 0; i < PANELS; i++) {
            int next = (i + 1) % PANELS;
            line("    - [upper %d.right, upper %d.left]", i, next);
            line("    - [lower %d.%s, lower %d.%s]", i, right(i), next, left(next));
            line("    - [upper %d.waist, lower %d.waist]", i, i);
        }
        line("    - [upper sleeve.front, under sleeve.front]");
        line("    - [upper sleeve.back, under sleeve.back]");
    }
}
