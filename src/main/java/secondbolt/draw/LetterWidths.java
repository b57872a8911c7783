package secondbolt.draw;

/**
 * How wide letters are, in thousandths of the type size.
 *
 * <p>Source: the advance widths of Source Sans 3, Regular and Semibold, for the letters of ASCII.
 * For all others a width that the mean of their script does not pass in the fonts that write them.
 */
final class LetterWidths {
    private static final int FIRST = ' ';

    private static final int[] REGULAR = {
        200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350, 497, 497,
        497, 497, 497, 497, 497, 497, 497, 497, 249, 249, 497, 497, 497, 425, 847, 544, 588, 571,
        615, 527, 494, 617, 652, 263, 480, 579, 486, 727, 647, 664, 566, 664, 569, 534, 536, 645,
        515, 786, 513, 476, 539, 303, 350, 303, 497, 500, 542, 504, 553, 456, 555, 496, 292, 504,
        544, 246, 247, 495, 255, 829, 547, 542, 555, 555, 347, 419, 338, 544, 467, 719, 446, 467,
        425, 303, 241, 303, 497
    };

    private static final int[] BOLD = {
        200, 315, 482, 513, 513, 841, 639, 275, 324, 324, 438, 513, 275, 322, 275, 344, 513, 513,
        513, 513, 513, 513, 513, 513, 513, 513, 275, 275, 513, 513, 513, 444, 875, 558, 597, 576,
        625, 538, 510, 628, 663, 282, 494, 597, 502, 745, 657, 674, 582, 674, 592, 545, 546, 655,
        536, 800, 541, 501, 540, 324, 344, 324, 513, 500, 549, 516, 563, 462, 564, 507, 317, 520,
        558, 262, 263, 522, 271, 843, 560, 549, 564, 564, 373, 431, 361, 556, 495, 748, 481, 495,
        443, 324, 255, 324, 513
    };

    private static final int MIDDLE_DOT = 0xB7;
    private static final int MIDDLE_DOT_WIDTH = 280;
    private static final int ALPHABETIC = 700;

    /** From here on to the next alphabets of ours no font has the letters; sheets show squares. */
    private static final int UNWRITTEN_FROM = 0x900;

    private static final int UNWRITTEN_TO = 0x1E00;
    private static final int RIGHT_TO_LEFT = 800;
    private static final int SIGN = 970;
    private static final int SQUARE = 1000;

    private LetterWidths() {}

    static int of(int codePoint, Lettering.Face face) {
        int[] table =
                switch (face) {
                    case REGULAR -> REGULAR;
                    case BOLD -> BOLD;
                };
        int at = codePoint - FIRST;
        return at >= 0 && at < table.length ? table[at] : other(codePoint);
    }

    private static int other(int codePoint) {
        if (codePoint >= UNWRITTEN_FROM && codePoint < UNWRITTEN_TO) {
            return SQUARE;
        }
        int type = Character.getType(codePoint);
        if (type == Character.NON_SPACING_MARK || type == Character.FORMAT) {
            return 0;
        }
        if (codePoint == MIDDLE_DOT) {
            return MIDDLE_DOT_WIDTH;
        }
        if (type == Character.OTHER_NUMBER) {
            return SIGN;
        }
        return ofBlock(codePoint);
    }

    private static int ofBlock(int codePoint) {
        if (codePoint < 0x590) {
            return ALPHABETIC;
        }
        if (codePoint < UNWRITTEN_FROM) {
            return RIGHT_TO_LEFT;
        }
        if (codePoint < 0x2000) {
            return ALPHABETIC;
        }
        return codePoint < 0x2E80 ? SIGN : SQUARE;
    }
}
