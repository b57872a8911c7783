package secondbolt.app.run;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * What is said where there is no memory left even to say something: made ready while there still
 * is, and written without taking any.
 */
public final class LastWords {
    private final FileOutputStream to = new FileOutputStream(FileDescriptor.err);
    private final byte[] words = (Memory.tooLittle() + "\n").getBytes(StandardCharsets.UTF_8);

    /**
     * Says them, and ends the program at once. Its site is as whole as that of one that is killed.
     */
    public void say(int code) {
        try {
            to.write(words);
        } catch (IOException e) {
            // Nobody listens.
        } finally {
            Runtime.getRuntime().halt(code);
        }
    }
}
