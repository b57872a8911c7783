package secondbolt.worksheet;

import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.draw.Drawing;

/**
 * A sheet that is printed true to scale.
 *
 * @param name lower-case words with hyphens, as {@link SheetName} makes them; it names the file and
 *     is what the maker asks for, once no other sheet of the project has it
 * @param title its heading
 * @param shows everything on it that a finding can be about
 * @param drawing in millimetres of true size; of a picture, as large as it is printed
 * @param blocks what it says, in order
 * @param size what it is printed on unless the maker asks for other paper
 */
public record Sheet(
        String name,
        String title,
        Set<Subject> shows,
        Drawing drawing,
        List<Block> blocks,
        Size size) {
    /** What a sheet is printed on. */
    public enum Size {
        /** The maker's own paper, in tiles if it must be. */
        HOME,
        /** One large page from a plotter. */
        LARGE,
        /** The maker's own paper, one page if it has room: a picture that is not true to size. */
        PICTURE
    }

    /** Copies the blocks and what it shows. */
    public Sheet {
        shows = Set.copyOf(shows);
        blocks = List.copyOf(blocks);
    }

    /** The same sheet under another name. */
    public Sheet named(String other) {
        return new Sheet(other, title, shows, drawing, blocks, size);
    }
}
