package secondbolt.worksheet;

import java.util.List;
import java.util.Set;
import secondbolt.block.Block;
import secondbolt.draw.Drawing;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;

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
        PICTURE,
        /** The maker's own paper, words only, in the order of the blocks. */
        WORDS
    }

    /** Copies the blocks and what it shows. */
    public Sheet {
        shows = Set.copyOf(shows);
        blocks = List.copyOf(blocks);
    }

    /**
     * A sheet of words, tables and boxes to tick, without a drawing: its blocks in their order, on
     * as many pages as they need.
     */
    public static Sheet ofWords(String name, String title, Set<Subject> shows, List<Block> blocks) {
        Drawing nothing = new Sketch().drawing(title, new Box(0, 0, 1, 1));
        return new Sheet(name, title, shows, nothing, blocks, Size.WORDS);
    }

    /** The same sheet under another name. */
    public Sheet named(String other) {
        return new Sheet(other, title, shows, drawing, blocks, size);
    }
}
