package secondbolt.draw.paper;

import secondbolt.draw.Drawing;

/**
 * One page to print.
 *
 * @param widthMm of the paper, across the page as it is read
 * @param heightMm of the paper, along the page as it is read
 * @param scaleAcross by how much more than true everything is drawn across; 1 for a true printer
 * @param scaleAlong the same along
 * @param drawing what is on it, in true millimetres from the page's left top corner
 */
public record Page(
        double widthMm, double heightMm, double scaleAcross, double scaleAlong, Drawing drawing) {
    /** Checks sizes and scales. */
    public Page {
        if (!(widthMm > 0 && heightMm > 0 && scaleAcross > 0 && scaleAlong > 0)) {
            throw new IllegalArgumentException(
                    "page sizes and scales must be above 0, were "
                            + widthMm
                            + ", "
                            + heightMm
                            + ", "
                            + scaleAcross
                            + ", "
                            + scaleAlong);
        }
    }
}
